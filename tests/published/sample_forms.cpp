// Figures printed in the sample forms and the commentary of Regulation Z, and in HUD's and the
// Homeowners Protection Act's rules. Each stands with its source.
#include <shown.hpp>

#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
#include <quoin/loan/prepaids.hpp>
#include <quoin/loan/schedule.hpp>

#include "support/files.hpp"
#include "support/premiums.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// 12 CFR 1026, Appendix H, form H-24(B): 162,000 at 3.875% for 30 years, price 180,000.
const LoanTerms sample_loan{Money::dollars(162'000), rate("3.875"), Months(360)};

} // namespace

TEST_CASE("The payment of the sample Loan Estimate, H-24(B)") {
    CHECK(level_payment(sample_loan.loan, sample_loan.rate, sample_loan.term) == money("761.78"));
}

TEST_CASE("Mortgage insurance of the samples: 82.35 a month, ended by payment 80") {
    const Schedule schedule = amortize(sample_loan);
    // H-25(B) prints 82.35 and "years 1-7"; 12 USC 4901(18), 4902(b): scheduled 78% of value.
    CHECK(level_premium(sample_loan.loan, Percent(decimal("0.61")), 80).in_month(1) ==
          money("82.35"));
    const InsuranceEnd end = insurance_end(schedule, Money::dollars(180'000));
    CHECK(end.on_request == 68);
    CHECK(schedule.balance(68) == money("143884.37"));
    CHECK(schedule.balance(67) > Money::dollars(144'000));
    CHECK(end.automatic == 80);
    CHECK(schedule.balance(79) == money("140562.39"));
    CHECK(schedule.balance(80) == money("140254.51"));
    CHECK(end.midpoint == 180);
    CHECK(end.last_automatic() == 80); // the payment that reaches 78% still carries it
}

TEST_CASE("In five years on the sample Loan Estimate: 56,582 paid, 15,773 of it principal") {
    const Schedule schedule = amortize(sample_loan);
    const MonthlyPremium insurance = level_premium(sample_loan.loan, Percent(decimal("0.61")), 80);
    // 1026.37(l)(1): principal, interest, mortgage insurance and loan costs (section D, 5,672),
    // prepaid interest (262) among them.
    const Money paid = schedule.paid_through(60) + insurance.paid_through(60) +
                       Money::dollars(5'672) + Money::dollars(262);
    CHECK(to_dollars(paid, Rounding::half_away) == Money::dollars(56'582));
    CHECK(to_dollars(sample_loan.loan - schedule.balance(60), Rounding::half_away) ==
          Money::dollars(15'773));
}

TEST_CASE("Total interest percentage of the samples: 69.45 and 69.46%") {
    const Money interest = amortize(sample_loan).total_interest();
    const auto percent = [&](Money prepaid) {
        return multiply_divide((interest + prepaid).count(), 10'000, sample_loan.loan.count(),
                               Rounding::half_away);
    };
    CHECK(percent(money("262")) == 6945);    // H-24(B): 69.45%
    CHECK(percent(money("279.04")) == 6946); // H-25(B): 69.46%
}

TEST_CASE("Prepaid interest of the samples: 17.44 a day on a 360-day year, 16 days 279.04") {
    // H-25(B), closed 15 April 2013: interest from 4/15/13 to 5/1/13.
    const PrepaidInterest prepaid =
        prepaid_interest(sample_loan.loan, sample_loan.rate, date("2013-04-15"), 360);
    CHECK(prepaid.per_day == money("17.44"));
    CHECK(prepaid.days == 16);
    CHECK(prepaid.total() == money("279.04"));
    // A 365-day year would print 17.20: the sample does not.
    CHECK(prepaid_interest(sample_loan.loan, sample_loan.rate, date("2013-04-15"), 365).per_day ==
          money("17.20"));
}

TEST_CASE("APR of the sample Closing Disclosure, H-25(B): 4.174%") {
    // 162,000 financed, 80 months of insurance, no prepaid charge, the first period one month.
    const Schedule schedule = amortize(sample_loan);
    std::vector<Money> payments;
    for (int month = 1; month <= schedule.months(); ++month) {
        payments.push_back(schedule.row(month).payment + (month <= 80 ? money("82.35") : Money{}));
    }
    const auto apr = annual_percentage_rate(sample_loan.loan, payments);
    REQUIRE(apr.has_value());
    CHECK(apr->millionths() / 1000 == 4174);
    // H-24(B) prints 4.274%: with a prepaid finance charge of 1,871 (points 405, underwriting
    // 1,097, monitoring 32 and 75, prepaid interest 262; which charges count is our inference).
    const auto with_charges =
        annual_percentage_rate(sample_loan.loan - Money::dollars(1'871), payments);
    REQUIRE(with_charges.has_value());
    CHECK((with_charges->millionths() + 500) / 1000 == 4274);
}

TEST_CASE("Payments in the commentary to 12 CFR 1026.43, to the dollar") {
    struct Row {
        const char* percent;
        std::int64_t dollars;
    };
    // Comments 43(c)(5) and 43(d): 200,000 over 30 years.
    for (const Row& row :
         {Row{"7", 1331}, Row{"6", 1199}, Row{"7.5", 1398}, Row{"8", 1468}, Row{"9", 1609}}) {
        CAPTURE(row.percent);
        const Money payment =
            level_payment(Money::dollars(200'000), rate(row.percent), Months(360));
        CHECK(to_dollars(payment, Rounding::half_away) == Money::dollars(row.dollars));
    }
}

TEST_CASE("HUD's worked monthly premium: 43.26") {
    // HUD's premium calculation page: average 106,160.654166..., x 0.005 = 530.80, / 1.0225 =
    // 519.12, / 12 = 43.26. The loan behind it, 106,605 at 7.5%, is found by search: no other
    // whole-dollar loan at a sixteenth of a percent has that average.
    const LoanTerms loan{Money::dollars(106'605), rate("7.5"), Months(360)};
    CHECK(level_payment(loan.loan, loan.rate, loan.term) == money("745.40"));
    const MonthlyPremium premium =
        hud_premium(loan, Percent(decimal("0.5")), Percent(decimal("2.25")), 360);
    CHECK(premium.in_month(1) == money("43.26"));
    CHECK(premium.in_month(12) == money("43.26"));
    CHECK(premium.in_month(13) < money("43.26"));
    // Paid in cash, nothing is divided out: 530.80 / 12.
    CHECK(hud_premium(loan, Percent(decimal("0.5")), Percent{}, 360).in_month(1) == money("44.23"));
}

TEST_CASE("Payment per 1,000 as stored tables print it") {
    struct Row {
        const char* percent;
        const char* thirty;
        const char* twenty;
        const char* fifteen;
    };
    // Printed to cents in several stored tables.
    for (const Row& row : {Row{"5", "5.37", "6.60", "7.91"}, Row{"6", "6.00", "7.16", "8.44"},
                           Row{"7", "6.65", "7.75", "8.99"}, Row{"8", "7.34", "8.36", "9.56"}}) {
        CAPTURE(row.percent);
        const Money thousand = Money::dollars(1000);
        CHECK(level_payment(thousand, rate(row.percent), Months(360)) == money(row.thirty));
        CHECK(level_payment(thousand, rate(row.percent), Months(240)) == money(row.twenty));
        CHECK(level_payment(thousand, rate(row.percent), Months(180)) == money(row.fifteen));
    }
}

TEST_CASE("Examples in the documentation of numpy-financial") {
    // pmt(0.075/12, 15*12, 200000) = -1854.0247200054619
    CHECK(level_payment(Money::dollars(200'000), rate("7.5"), Months(180)) == money("1854.02"));
    // ipmt, ppmt: 2,500 at 8.24% over 12 months, payment 217.7486, total interest 112.98. Their
    // schedule is not rounded month by month; ours differs by at most a cent a row.
    const Schedule schedule = amortize({Money::dollars(2'500), rate("8.24"), Months(12)});
    CHECK(schedule.payment() == money("217.75"));
    const char* const interest[] = {"17.17", "15.79", "14.40", "13.01", "11.60", "10.18",
                                    "8.76",  "7.32",  "5.88",  "4.42",  "2.96",  "1.49"};
    for (int month = 1; month <= 12; ++month) {
        CAPTURE(month);
        const Money difference = schedule.row(month).interest - money(interest[month - 1]);
        CHECK(std::abs(difference.count()) <= 1);
    }
    // Unrounded they add up to 112.98; twelve amounts in whole cents come to 112.97.
    CHECK(schedule.total_interest() == money("112.97"));
}

TEST_CASE("A teaching note's loan: 100,000 at 6%") {
    // Second-hand: payment 599.55, balance after a year 98,771.99.
    const Schedule schedule = amortize({Money::dollars(100'000), rate("6"), Months(360)});
    CHECK(schedule.payment() == money("599.55"));
    // The note runs the payment unrounded; in whole cents the balance is a cent higher.
    CHECK(schedule.balance(12) == money("98772.00"));
}
