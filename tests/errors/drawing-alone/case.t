# A drawing by itself: what it is held to stands in its price book.
$ quoin check cabin.json
