# A plain problem of advances and payments: here Appendix J(c)(1)(ii), printed there as 11.82 %.
$ quoin apr ../../examples/apr/long-first-period.json
  APR              11.816508%
  amount advanced   $6,000.00
  total paid        $7,200.00
  finance charge    $1,200.00

Figured by the actuarial method of 12 CFR 1026, Appendix J, from the amounts that were given. This
is an estimate, not a federal disclosure.
= 0
$ quoin apr ../../examples/apr/long-first-period.json --json
{
  "question": "apr",
  "apr": "11.816508",
  "advanced": "6000.00",
  "paid": "7200.00",
  "finance_charge": "1200.00",
  "cautions": [
    {
      "code": "actuarial_method",
      "about": [],
      "words": "Figured by the actuarial method of 12 CFR 1026, Appendix J, from the amounts that were given. This is an estimate, not a federal disclosure."
    }
  ]
}
= 0
