# What the price book notes for the desk alone: it is told where it is asked for, and in nothing else.
$ quoin tour ../../examples/oxbarrow-meadow/buyers/six-programs.json --office-notes | digest
$ quoin site ../../examples/oxbarrow-meadow/buyers/six-programs.json --office-notes | digest
