# Files that are sound are named; what is wrong with the others follows, all of it at once.
$ quoin check data/book.json data/buyer.json data/rates/programs/short.json data/rates/sheets/day.json data/rates/places/here.json --rates data/rates
data/book.json: price book, sound
data/buyer.json: inquiry, sound
data/rates/programs/short.json: loan program, sound
data/rates/sheets/day.json: rate sheet, sound
data/rates/places/here.json: place, sound
= 0
$ quoin check data/no-such-book.json
2> quoin: data/no-such-book.json: found no such file
2>   expected a file that can be read
2>   check the name and the folder
2>   [file-missing]
= 1
$ quoin check data/bok.json
2> quoin: data/bok.json: found no such file
2>   expected a file that can be read
2>   did you mean "book.json"?
2>   [file-missing]
= 1
# Tables that end within 90 days of a day are named, with what follows them.
$ quoin check ../../rates/programs/fha.json ../../rates/programs/va.json --as-of 2026-11-26
../../rates/programs/fha.json: loan program, sound
  fha: loan_limit is in force through 31 December 2026; from then on it is used all the same,
    and every answer says so, until the data have the next one
../../rates/programs/va.json: loan program, sound
= 0
$ quoin check ../../rates/programs/fha.json --as-of 2026-10-02
../../rates/programs/fha.json: loan program, sound
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
../../examples/oxbarrow-meadow/buyers/six-programs.json: inquiry, sound
  conventional: loan_limit is in force through 31 December 2026; from then on it is used all the
    same, and every answer says so, until the data have the next one
  fha: loan_limit is in force through 31 December 2026; from then on it is used all the same,
    and every answer says so, until the data have the next one
= 0
