// Payments printed in the commentary of Regulation Z that no sample form shows.
#include <shown.hpp>

#include <quoin/loan/level_payment.hpp>

using namespace quoin;

namespace {

Rate rate(const char* percent) { return Rate::percent(Decimal::parse(percent).value()).value(); }

Money in_dollars(Money amount) { return to_dollars(amount, Rounding::half_away); }

} // namespace

TEST_CASE("Minimum payments of the loan with negative amortization") {
    // Commentary to 12 CFR 1026.43 (final rule 2013-00736): 200,000 over 30 years, the first
    // payment as at 1.5%, each year's 7.5% over the last.
    Money payment = level_payment(Money::dollars(200'000), rate("1.5"), Months(360));
    for (const std::int64_t printed : {690, 742, 798, 857, 922}) {
        CHECK(in_dollars(payment) == Money::dollars(printed));
        payment += percent_of(payment, Percent(*Decimal::parse("7.5")), Rounding::half_away);
    }
}

TEST_CASE("A unit cost in an advertisement: 48 payments of 27.83 per 1,000") {
    // Comment to 12 CFR 1026.24(d)(2). No rate is printed; 27.83 implies 14.9985%, so 15%.
    CHECK(level_payment(Money::dollars(1'000), rate("15"), Months(48)) == Money::parse("27.83"));
}
