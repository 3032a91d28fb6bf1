# What the price book notes for the desk alone: it is told where it is asked for, and in nothing else.
$ quoin tour ../../examples/oxbarrow-meadow/buyers/six-programs.json --office-notes | digest
The home, area by area
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
...

416 rows #e8e88ed3
= 0
$ quoin site ../../examples/oxbarrow-meadow/buyers/six-programs.json --office-notes | digest
Lots and plans
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
...

91 rows #0454c539
= 0
