// The APR of a monthly loan, held to exact fractions: the payments are worth the amount financed at
// the rate given, and no longer at the next millionth of a percent.
#include <shown.hpp>

#include <span>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/level_payment.hpp>

#include "oracle.hpp"
#include "seeded.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;
using oracle::Fraction;
using oracle::Whole;

namespace {

/// Payments less the amount financed at a rate, times something above zero. Month by month from the
/// last payment back, as Appendix J(b)(8) writes it, with no fixed point and no rounding.
Whole surplus(Money financed, std::span<const Money> payments, FirstPeriod first,
              std::int64_t millionths) {
    const Whole base = 1'200'000'000;
    const Whole grown = base + millionths;
    Whole top = 0;
    Whole bottom = 1;
    const auto month_back = [&] {
        top *= base;
        bottom *= grown;
    };
    for (auto payment = payments.rbegin(); payment != payments.rend(); ++payment) {
        if (payment != payments.rbegin()) month_back();
        top += bottom * payment->count();
    }
    for (int month = 0; month < first.months; ++month) month_back();
    return top * 30 * base - bottom * financed.count() * (30 * base + first.odd_days * millionths);
}

void check_enclosed(Money financed, std::span<const Money> payments, FirstPeriod first) {
    CAPTURE(financed, payments.size(), first.months, first.odd_days);
    const auto apr = annual_percentage_rate(financed, payments, first);
    const std::int64_t most = Rate::max_millionths;
    const bool has_rate = surplus(financed, payments, first, 0) >= 0 &&
                          surplus(financed, payments, first, most + 1) < 0;
    REQUIRE(apr.has_value() == has_rate);
    if (!has_rate) return;
    CAPTURE(*apr);
    CHECK(surplus(financed, payments, first, apr->millionths()) >= 0);
    CHECK(surplus(financed, payments, first, apr->millionths() + 1) < 0);
}

/// Level payments with a premium that falls once a year, and another amount at either end.
std::vector<Money> drawn_payments(Seeded& seeded, const LoanTerms& terms) {
    const Money level = level_payment(terms.loan, terms.rate, terms.term);
    Money premium = Money::cents(seeded.between(0, level.count() / 4));
    std::vector<Money> payments;
    for (int month = 0; month < terms.term.count(); ++month) {
        if (month % 12 == 0) premium = part_of(premium * 9, 10, Rounding::half_away);
        payments.push_back(level + premium);
    }
    payments.front() += Money::cents(seeded.between(0, level.count()));
    payments.back() += Money::cents(seeded.between(0, level.count()));
    return payments;
}

} // namespace

TEST_CASE("APR of drawn loans: enclosed between neighbouring millionths, by exact fractions") {
    Seeded seeded(20'261'125);
    for (int i = 0; i < 150; ++i) {
        const LoanTerms terms = seeded.terms();
        const auto payments = drawn_payments(seeded, terms);
        const Money charges = Money::cents(seeded.between(0, terms.loan.count() / 20));
        const FirstPeriod first{static_cast<int>(seeded.between(0, 3)),
                                static_cast<int>(seeded.between(0, 30))};
        check_enclosed(terms.loan - charges, payments, first);
    }
}

TEST_CASE("APR of any payments at all, many of them zero, or no rate") {
    Seeded seeded(7);
    for (int i = 0; i < 300; ++i) {
        std::vector<Money> payments;
        for (auto left = seeded.between(0, 40); left > 0; --left) {
            payments.push_back(Money::cents(std::max<std::int64_t>(0, seeded.between(-500, 900))));
        }
        const FirstPeriod first{static_cast<int>(seeded.between(0, 500)),
                                static_cast<int>(seeded.between(0, 29))};
        check_enclosed(Money::cents(seeded.between(1, 12'000)), payments, first);
    }
}

TEST_CASE("A rate that falls on a millionth exactly is found, and a cent less falls short of it") {
    // Interest only at 12% for n months, then the loan: worth exactly the loan at 12%.
    for (const int months : {1, 2, 12, 359, 480}) {
        CAPTURE(months);
        std::vector<Money> payments(static_cast<std::size_t>(months), Money::dollars(2'000));
        payments.back() += Money::dollars(200'000);
        const Money loan = Money::dollars(200'000);
        CHECK(annual_percentage_rate(loan, payments) == rate("12"));
        CHECK(annual_percentage_rate(loan + Money::cents(1), payments)->millionths() < 12'000'000);
    }
    // Half a month at 12%, simple: 1,000 is paid back by 1,005, and with a month more by 1,015.05.
    CHECK(annual_percentage_rate(money("1000"), std::vector{money("1005")}, {0, 15}) == rate("12"));
    CHECK(annual_percentage_rate(money("1000"), std::vector{money("1015.05")}, {1, 15}) ==
          rate("12"));
    // Compounded, half a month would be 1,000 x 1.01^0.5 = 1,004.99.
    CHECK(annual_percentage_rate(money("1000"), std::vector{money("1004.99")}, {0, 15})
              ->millionths() == 11'976'000);
}

TEST_CASE("APR at the edges: 0 and 100 percent, and beyond") {
    const Money loan = Money::dollars(1'200);
    CHECK(annual_percentage_rate(loan, std::vector(12, Money::dollars(100))) == rate("0"));
    CHECK(annual_percentage_rate(loan + Money::cents(1), std::vector(12, Money::dollars(100))) ==
          std::nullopt);
    CHECK(annual_percentage_rate(loan, std::vector{money("1300.00")}) == rate("100"));
    CHECK(annual_percentage_rate(loan, std::vector{money("1300.01")}) == std::nullopt);
    CHECK(annual_percentage_rate(loan, {}) == std::nullopt);
    CHECK(annual_percentage_rate(Money{}, std::vector{money("5")}) == std::nullopt);
    CHECK(annual_percentage_rate(money("-5"), std::vector{money("5")}) == std::nullopt);
    CHECK_THROWS_AS(annual_percentage_rate(loan, std::vector{money("1300"), money("-1")}), Broken);
    CHECK_THROWS_AS(annual_percentage_rate(loan, std::vector{money("1300")}, {0, -1}), Broken);
}

TEST_CASE("Sums beyond 128 bits go to exact fractions") {
    const Money huge = Money::cents(INT64_MAX / 4);
    for (const FirstPeriod first : {FirstPeriod{1, 0}, FirstPeriod{0, 17}}) {
        check_enclosed(huge, std::vector(3, Money::cents(INT64_MAX / 11)), first);
    }
    check_enclosed(Money::dollars(1'000), std::vector{money("200000")}, {1'500, 0});
}
