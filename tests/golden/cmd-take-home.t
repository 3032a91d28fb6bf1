# What a buyer takes home of the desk; tests/apps/take_home.cpp holds what is written.
$ quoin take-home --help
One file for a buyer's phone: the sheet, and the page with this home and these loans
Usage: quoin take-home [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --with TEXT:{score,income,debts,cash} ...
                              what goes along of the buyer's money: score, income, debts, cash
  --force                     replace a file with that name even if quoin did not write it
[Option Group: what is written]
   
  [Exactly 1 of the following options is required]
  Options:
    -o,--output TEXT            one file to open on any phone, FILE.html
    --desk TEXT                 the same as files of a folder, which must not exist yet, or be empty

Example:
  quoin take-home buyer.json -o home.html --with income

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0

# Only where nothing is.
$ quoin take-home data/buyer.json --desk data --with score --rates data/rates
2> quoin: data: found a file that cannot be written: Directory not empty
2>   expected a file name in a folder where you may write
2>   check that the folder exists and that you may write to it
2>   [file-unwritable]
= 1
$ quoin take-home data/none.json --desk new --rates data/rates
2> quoin: data/none.json: found no such file or folder
2>   expected an inquiry that can be read
2>   did you mean "book.json"?
2>   [file-missing]
= 1
$ quoin take-home data/buyer.json --desk new --with hopes --rates data/rates
2> quoin take-home: --with: hopes not in {score,income,debts,cash}
2>   'quoin take-home --help' explains it with an example
= 2
$ quoin take-home data/buyer.json --rates data/rates
2> quoin take-home: Exactly 1 option from [-o,--output,--desk] is required
2>   'quoin take-home --help' explains it with an example
= 2
