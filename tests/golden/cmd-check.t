# Files that are sound are named; what is wrong with the others follows, all of it at once.
$ quoin check data/book.json data/buyer.json data/rates/programs/short.json data/rates/sheets/day.json data/rates/places/here.json --rates data/rates
data/book.json: price book, no problems found
data/buyer.json: inquiry, no problems found
data/rates/programs/short.json: loan program, no problems found
data/rates/sheets/day.json: rate sheet, no problems found
data/rates/places/here.json: place, no problems found
= 0
$ quoin check data/no-such-book.json
2> quoin: data/no-such-book.json: found no such file or folder
2>   expected a file that can be read
2>   check the name and the folder
2>   [file-missing]
= 1
$ quoin check data/bok.json
2> quoin: data/bok.json: found no such file or folder
2>   expected a file that can be read
2>   did you mean "book.json"?
2>   [file-missing]
= 1
# Tables that end within 90 days of a day are named, with what follows them.
$ quoin check ../../rates/programs/fha.json ../../rates/programs/va.json --as-of 2026-11-26
../../rates/programs/fha.json: loan program, no problems found
  fha: the program's loan limit, in effect through December 31, 2026. After that day, it stays
    in use and every answer says so, until the next one is added.
../../rates/programs/va.json: loan program, no problems found
= 0
$ quoin check ../../rates/programs/fha.json --as-of 2026-10-02
../../rates/programs/fha.json: loan program, no problems found
= 0
$ quoin check ../../rates/programs/fha.json --as-of 2027-02-01 --json
{
  "files": [
    {
      "file": "../../rates/programs/fha.json",
      "kind": "program",
      "sound": true,
      "problems": [],
      "ending": [
        {
          "of": "fha",
          "list": "loan_limit",
          "name": "",
          "until": "2027-01-01",
          "after": "continues"
        }
      ]
    }
  ]
}
= 0
# An inquiry's own day, and all that answers it.
$ quoin check ../../examples/oxbarrow-meadow/buyers/six-programs.json
../../examples/oxbarrow-meadow/buyers/six-programs.json: inquiry, no problems found
  conventional: the program's loan limit, in effect through December 31, 2026. After that day,
    it stays in use and every answer says so, until the next one is added.
  fha: the program's loan limit, in effect through December 31, 2026. After that day, it stays
    in use and every answer says so, until the next one is added.
= 0
