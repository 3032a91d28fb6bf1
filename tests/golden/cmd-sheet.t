# What the buyer takes home; tests/sheet holds what is written.
$ quoin sheet --help
A sheet for the buyer to take home: one HTML file to print
Usage: quoin sheet [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  -o,--output TEXT REQUIRED   the file to write, FILE.html
  --scenario TEXT             the loan in front, by its name, with its due dates; the first that can be had if not given
  --force                     replace a file with that name even if quoin did not write it

Example:
  quoin sheet buyer.json -o sheet.html

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin sheet data/buyer.json -o data/buyer.json --rates data/rates
2> quoin: found --output data/buyer.json
2>   expected a name that ends in .html
2>   [payment-input]
= 1
$ quoin sheet data/buyer.json --output sheet.html --scenario "A thrd" --rates data/rates
2> quoin: found no loan named "A thrd"
2>   expected one of "Ten percent down", "A third down"
2>   [scenario-unknown]
= 1

# Not even with --force, since the ending is asked for first.
$ quoin sheet data/buyer.json -o data/buyer.json --force --rates data/rates
2> quoin: found --output data/buyer.json
2>   expected a name that ends in .html
2>   [payment-input]
= 1
