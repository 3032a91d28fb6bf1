# Help names the commands; each explains itself with an example.
$ quoin --help
quoin prices a new home (plan, elevation, lot, options) and carries that price, exact to the cent,
through every loan program a buyer might use.
Usage: quoin [OPTIONS] SUBCOMMAND

Options:
  -h,--help                   Print this help message and exit
  --version                   Display program version information and exit
  --json                      answer in JSON
  --rates TEXT                folder of programs/, sheets/ and places/ (else $QUOIN_RATES, else the data that came with the program)
  --language TEXT             answer in this language: en (English) or es (español)

Subcommands:
  quote                       The priced home line by line, and the month of each loan
  adds                        What each option adds: price, month, cash, years; alone and stacked
  compare                     The scenarios side by side on the same home
  cash                        What cash a loan takes: costs, prepaids, escrow, credits, and when
  credit                      What a builder's money does: off the price, costs, points, a buydown
  shift                       What can move before the closing: the rate, the price, the appraisal
  recheck                     Each figure with its formula, inputs, rounding, rule, date and source
  afford                      The highest price that income, debts, cash and the programs allow
  later                       An option from the builder, financed or in cash, or after closing
  shown                       What the furnished model shows, against what is included and chosen
  schedule                    A loan month by month, with mortgage insurance and extra principal
  tour                        The home area by area: what comes with it, what a touch adds a month
  fit                         Which wishes fit within a month and the cash: the most worth, proven
  site                        The lots and plans, and what another one would change
  programs                    The loan programs and rates that the inquiry can use
  payment                     The quick answer with no files
  apr                         The APR of plain advances and payments
  check                       Validates price books, rates, places, programs and inquiries
  list                        Plans, lots or options of a price book
  terms                       What the words mean, with the regulations that name them
  sheet                       What the buyer takes home: one HTML file to print
  serve                       The page and the questions on this machine, in a browser

Exit codes: 0 done, 1 the input is wrong, 2 wrong use, 3 a fault of the program, 130 stopped.
'quoin COMMAND --help' explains a command with an example.

= 0
$ quoin quote --help
The priced home line by line, and the month of each loan
Usage: quoin quote [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin quote buyer.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin adds --help
What each option adds: price, month, cash, years; alone and stacked
Usage: quoin adds [OPTIONS] INQUIRY [OPTION...]

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file
  OPTION TEXT ...             options to ask about, as ID, ID:LEVEL or ID=NUMBER; all of them if none

Options:
  -h,--help                   Print this help message and exit
  --by-part                   the month by part, cash and years for each option

Example:
  quoin adds buyer.json deck kitchen-counters:quartz can-lights=6

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin cash --help
What cash a loan takes: costs, prepaids, escrow, credits, and when
Usage: quoin cash [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT REQUIRED    the scenario's name in the inquiry
  --appraised TEXT            if it appraises at this, in dollars

Example:
  quoin cash buyer.json --scenario "FHA, 3.5% down" --appraised 455000

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin apr --help
The APR of plain advances and payments
Usage: quoin apr [OPTIONS] FILE

Positionals:
  FILE TEXT REQUIRED          the problem, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin apr problem.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin compare --help
The scenarios side by side on the same home
Usage: quoin compare [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin compare buyer.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin shown --help
What the furnished model shows, against what is included and chosen
Usage: quoin shown [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin shown buyer.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin schedule --help
A loan month by month, with mortgage insurance and extra principal
Usage: quoin schedule [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT REQUIRED    the scenario's name in the inquiry
  --extra TEXT                extra principal each month, in dollars
  --index TEXT ... Excludes: --worst-case
                              adjustable rates: the index at each change, in percent; the last stays
  --worst-case Excludes: --index
                              adjustable rates: every change as high as the caps let it be
  --csv                       comma-separated values, for a spreadsheet

Example:
  quoin schedule buyer.json --scenario "FHA, 3.5% down" --extra 150

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin payment --help
The quick answer with no files
Usage: quoin payment [OPTIONS]

Options:
  -h,--help                   Print this help message and exit
  --loan TEXT REQUIRED        the loan, in dollars
  --rate TEXT REQUIRED        the yearly note rate, in percent
[Option Group: term]
   
  [Exactly 1 of the following options is required]
  Options:
    --years TEXT                the term in years, 1 to 40
    --months TEXT               the term in months, 1 to 480

Example:
  quoin payment --loan 250000 --rate 6.5 --years 30

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin check --help
Validates price books, rates, places, programs and inquiries
Usage: quoin check [OPTIONS] FILE...

Positionals:
  FILE TEXT ... REQUIRED      files to check

Options:
  -h,--help                   Print this help message and exit
  --as-of TEXT                name the tables that end within 90 days of this one; an inquiry's own day, or today, if not given

Example:
  quoin check pricebook.json buyers/*.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin list --help
Plans, lots or options of a price book
Usage: quoin list [OPTIONS] WHAT PRICEBOOK

Positionals:
  WHAT TEXT:{plans,lots,options} REQUIRED
                              plans, lots or options
  PRICEBOOK TEXT REQUIRED     the price book, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --csv                       comma-separated values, for a spreadsheet

Example:
  quoin list options pricebook.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin --version
quoin 0.1.0
= 0
$ quoin
2> quoin: A subcommand is required
2>   'quoin --help' lists the commands
= 2
$ quoin quot buyer.json
2> quoin: no command "quot"
2>   did you mean "quote"?
2>   'quoin --help' lists the commands
= 2
$ quoin payment --loan 100
2> quoin payment: --rate is required
2>   'quoin payment --help' explains it with an example
= 2
$ quoin payment --loan 100 --rate 5 --years 3 --months 4
2> quoin payment: Exactly 1 option from [--years,--months] is required and 2 were given
2>   'quoin payment --help' explains it with an example
= 2
$ quoin quote data/buyer.json --speed 9
2> quoin quote: The following arguments were not expected: 9 --speed
2>   'quoin quote --help' explains it with an example
= 2
$ quoin tour --help
The home area by area: what comes with it, what a touch adds a month
Usage: quoin tour [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             the way to pay that the figures are under; the inquiry's first if not given

Example:
  quoin tour buyer.json --scenario "FHA, 3.5% down"

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin site --help
The lots and plans, and what another one would change
Usage: quoin site [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             the way to pay that the figures are under; the inquiry's first if not given

Example:
  quoin site buyer.json --scenario "FHA, 3.5% down"

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin programs --help
The loan programs and rates that the inquiry can use
Usage: quoin programs [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin programs buyer.json

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0

$ quoin credit --help
What a builder's money does: off the price, costs, points, a buydown
Usage: quoin credit [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --amount TEXT REQUIRED      the builder's money, in dollars
  --scenario TEXT             one scenario alone; all of them if none
  --years TEXT                years to look for the least cost over; 7 if none
  --instead                   in place of the incentives that the inquiry uses, not on top of them

Example:
  quoin credit buyer.json --amount 10000 --years 5

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
$ quoin shift --help
What can move before the closing: the rate, the price, the appraisal
Usage: quoin shift [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             one scenario alone; all of them if none
  --steps TEXT                steps of the rate each way; 4 if none
  --step TEXT                 percentage points of a step; 0.125 if none

Example:
  quoin shift buyer.json --scenario "FHA, 3.5% down" --steps 6

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
