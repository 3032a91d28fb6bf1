# Lines of a given width: loans side by side stand in groups, names are wrapped, no figure is cut.
$ quoin quote --rates data/rates data/buyer.json --width 40
= 0
# Options with more loans than a line has room for: each figure stands under its option.
$ quoin adds --rates data/rates data/buyer.json --width 60
= 0
$ quoin payment --loan 250000 --rate 6.5 --years 30 --width 40
= 0
$ quoin list options data/book.json --width 40
= 0
$ quoin terms --width 160 | digest
= 0
$ quoin payment --loan 250000 --rate 6.5 --years 30 --width 39
= 0
