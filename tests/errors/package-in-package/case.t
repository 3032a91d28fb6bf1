# A package that has a package as a part.
$ quoin check book.json
2> quoin: book.json:13:79: found the package "warm" as a part
2>   13 |     {"id": "all", "name": "All", "area": "inside", "price": "5000", "parts": ["warm"]}
2>      |                                                                               ^^^^^^
2>   at /options/2/parts/0
2>   expected parts that are not packages
2>   list that package's own parts
2>   [package-in-package]
= 1
