# Help names the commands; each explains itself with an example.
$ quoin --help
quoin prices a new home (plan, elevation, lot, options) and carries that price, exact to the cent,
through every loan program a buyer might use.
Usage: quoin [OPTIONS] SUBCOMMAND

Options:
  -h,--help                   Print this help message and exit
  --version                   Display program version information and exit
  --json                      answer in JSON
  --rates TEXT                folder with programs/, sheets/ and places/ (if not given, $QUOIN_RATES or the data that came with the program)
  --language TEXT             answer in this language: en (English) or es (español)
  --width INT                 lines of text so many columns wide, 40 to 200; if not given, as wide as the terminal, or 100 where there is none

Subcommands:
  quote                       The home price line by line, and the monthly payment with each loan
  adds                        What options add to the price and monthly payment, alone and together
  compare                     Loans side by side for one home
  cash                        The cash a loan needs, and when: costs, prepaids, escrow and credits
  credit                      What money from the builder can do: price, costs, points or a buydown
  shift                       What can change before closing: the rate, the price, the appraisal
  recheck                     Each figure with its formula, inputs, rounding, rule, date and source
  afford                      The highest price that income, debts, cash and loan programs allow
  later                       An option now, financed or in cash, or later, after closing
  shown                       What you see in the model home: included, chosen or extra
  schedule                    A loan month by month, with mortgage insurance and extra principal
  tour                        The home area by area: what comes with it, what an option adds
  fit                         Which wishes fit your limits and are worth the most, with proof
  site                        Lots and plans, and what another one would change
  rooms                       The floor plan as chosen: each room with its size
  programs                    Loan programs and their rates for this inquiry
  payment                     Principal and interest for any loan, with no files
  apr                         The APR for a list of advances and payments
  check                       Checks price books, rate sheets, places, programs and inquiries
  list                        The plans, lots or options in a price book
  terms                       What the words mean, with the regulations that name them
  sheet                       A sheet for the buyer to take home: one HTML file to print
  take-home                   One file for a buyer's phone: the sheet, and the page with this home and these loans
  serve                       The page in a browser and the questions, served on this computer

Exit codes: 0 done, 1 the input is wrong, 2 the command is wrong, 3 a fault of the program, 130 stopped.
'quoin COMMAND --help' explains a command with an example.

= 0
$ quoin quote --help
The home price line by line, and the monthly payment with each loan
Usage: quoin quote [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin quote buyer.json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin adds --help
What options add to the price and monthly payment, alone and together
Usage: quoin adds [OPTIONS] INQUIRY [OPTION...]

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file
  OPTION TEXT ...             options to look at, as ID, ID:LEVEL or ID=NUMBER; all options if not given

Options:
  -h,--help                   Print this help message and exit
  --by-part                   each option by part of the monthly payment, with cash and cost over the years
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin adds buyer.json deck kitchen-counters:quartz can-lights=6

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin cash --help
The cash a loan needs, and when: costs, prepaids, escrow and credits
Usage: quoin cash [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT REQUIRED    the loan's name in the inquiry
  --appraised TEXT            what the home appraises for, in dollars
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin cash buyer.json --scenario "FHA, 3.5% down" --appraised 455000

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin apr --help
The APR for a list of advances and payments
Usage: quoin apr [OPTIONS] FILE

Positionals:
  FILE TEXT REQUIRED          the problem, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin apr problem.json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin compare --help
Loans side by side for one home
Usage: quoin compare [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             the loan that the years are held against (JSON), by its name; the first if not given
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin compare buyer.json --scenario "FHA, 3.5% down" --json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin shown --help
What you see in the model home: included, chosen or extra
Usage: quoin shown [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin shown buyer.json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin schedule --help
A loan month by month, with mortgage insurance and extra principal
Usage: quoin schedule [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT REQUIRED    the loan's name in the inquiry
  --extra TEXT                extra principal each month, in dollars
  --index TEXT ... Excludes: --worst-case
                              adjustable rate: the index at each change, in percent; the last one stays
  --worst-case Excludes: --index
                              adjustable rate: every change as large as the caps allow
  --csv                       comma-separated values, for a spreadsheet

Example:
  quoin schedule buyer.json --scenario "FHA, 3.5% down" --extra 150

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin payment --help
Principal and interest for any loan, with no files
Usage: quoin payment [OPTIONS]

Options:
  -h,--help                   Print this help message and exit
  --loan TEXT REQUIRED        the loan amount, in dollars
  --rate TEXT REQUIRED        the yearly interest rate, in percent
[Option Group: term]
   
  [Exactly 1 of the following options is required]
  Options:
    --years TEXT                the loan term in years, 1 to 40
    --months TEXT               the loan term in months, 1 to 480

Example:
  quoin payment --loan 250000 --rate 6.5 --years 30

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin check --help
Checks price books, rate sheets, places, programs and inquiries
Usage: quoin check [OPTIONS] FILE...

Positionals:
  FILE TEXT ... REQUIRED      files to check

Options:
  -h,--help                   Print this help message and exit
  --as-of TEXT                list the tables that end within 90 days of this day; if not given, of the inquiry's own day or today

Example:
  quoin check pricebook.json buyers/*.json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin list --help
The plans, lots or options in a price book
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

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

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
2> quoin quote: no option "--speed"
2>   'quoin quote --help' explains it with an example
= 2
$ quoin quote data/buyer.json --langauge es
2> quoin quote: no option "--langauge"
2>   did you mean "--language"?
2>   'quoin quote --help' explains it with an example
= 2
$ quoin quote data/buyer.json --brief --json
2> quoin quote: an answer has one form: use one of --json, --csv and --brief
2>   'quoin quote --help' explains it with an example
= 2
$ quoin schedule data/buyer.json --scenario first --csv --json
2> quoin schedule: an answer has one form: use one of --json, --csv and --brief
2>   'quoin schedule --help' explains it with an example
= 2
$ quoin tour --help
The home area by area: what comes with it, what an option adds
Usage: quoin tour [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             the loan to figure with, by its name; the first in the inquiry if not given
  --area TEXT ...             an area of the home, by its id; all of them if not given
  --office-notes              with the office notes of the price book, which are not for the buyer

Example:
  quoin tour buyer.json --scenario "FHA, 3.5% down"

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin rooms --help
The floor plan as chosen: each room with its size
Usage: quoin rooms [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin rooms buyer.json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin site --help
Lots and plans, and what another one would change
Usage: quoin site [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             the loan to figure with, by its name; the first in the inquiry if not given
  --office-notes              with the office notes of the price book, which are not for the buyer

Example:
  quoin site buyer.json --scenario "FHA, 3.5% down"

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin programs --help
Loan programs and their rates for this inquiry
Usage: quoin programs [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin programs buyer.json

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0

$ quoin credit --help
What money from the builder can do: price, costs, points or a buydown
Usage: quoin credit [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --amount TEXT REQUIRED      the money from the builder, in dollars
  --scenario TEXT             one loan, by its name in the inquiry; all loans if not given
  --years TEXT                find the lowest cost over this many years; 7 if not given
  --instead                   instead of the incentives that the inquiry uses, not on top of them
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin credit buyer.json --amount 10000 --years 5

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin shift --help
What can change before closing: the rate, the price, the appraisal
Usage: quoin shift [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT             one loan, by its name in the inquiry; all loans if not given
  --steps TEXT                rate steps up and down; 4 if not given
  --step TEXT                 the size of a step in percentage points; 0.125 if not given
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin shift buyer.json --scenario "FHA, 3.5% down" --steps 6

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
