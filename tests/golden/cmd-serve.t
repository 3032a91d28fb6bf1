# The page and the questions on this machine; tests/serve holds what it answers.
$ quoin serve --help
The page in a browser and the questions, served on this computer
Usage: quoin serve [OPTIONS] [FOLDER]

Positionals:
  FOLDER TEXT                 the folder with price books and inquiries, up to two folders deep (if not given, the examples that came with the program)

Options:
  -h,--help                   Print this help message and exit
  --open                      open the page in a browser
  --port INT=8571             the port; 0 takes any free one
  --listen TEXT               listen on this address instead of this computer's own; an access code is then needed

Example:
  quoin serve --open

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin serve data/none --port 0 --open
2> quoin: data/none: found no such file or folder
2>   expected a folder with price books that can be read
2>   check the name and the folder
2>   [file-missing]
= 1
$ quoin serve --listen 203.0.113.7
2> quoin: found 203.0.113.7 port 8571: Cannot assign requested address
2>   expected an address of this computer and a free port
2>   --port 0 takes any free port, --port N another one
2>   [cannot-listen]
= 1
$ quoin serve --port 70000
2> quoin serve: --port: Value 70000 not in range 0 to 65535
2>   'quoin serve --help' explains it with an example
= 2
