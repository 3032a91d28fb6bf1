// What the buyer pays in month n, with a temporary buydown and extra principal, and what it sums
// to.
#include <shown.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Percent percent(const char* text) { return Percent(decimal(text)); }

const std::vector<Percent> two_one{percent("2"), percent("1")};

Purchase conventional(const char* extra = "0") {
    Purchase home("conventional");
    home.place.levies = {{"County", decimal("12")}};
    home.down_percent("10").quoted("6.5");
    home.scenario.extra_principal = money(extra);
    return home;
}

/// Each month by itself: the row of the schedule, the subsidy, the premium, the local parts.
Money month_by_hand(const LoanFigures& f, int month) {
    Money paid = f.monthly.total() - f.monthly[MonthPart::principal_and_interest] -
                 f.monthly[MonthPart::mortgage_insurance];
    if (month > f.paid_schedule().months()) return paid;
    paid += f.paid_schedule().row(month).payment + f.paid_insurance().in_month(month);
    if (f.buydown && month <= f.buydown->months()) {
        const auto year = static_cast<std::size_t>((month - 1) / 12);
        paid -= f.buydown->years[year].subsidy;
    }
    return paid;
}

Money cost_of_money(const LoanFigures& f) {
    const Schedule& paid = f.paid_schedule();
    return paid.total_interest() + f.paid_insurance().paid_through(paid.months());
}

} // namespace

TEST_CASE("What is paid through a month is the cash and every month up to it, whatever the loan") {
    for (const char* program : {"conventional", "fha", "va", "usda"}) {
        for (const char* extra : {"0", "0.01", "180", "1500", "9000"}) {
            for (const bool bought : {false, true}) {
                CAPTURE(program, extra, bought);
                Purchase home(program);
                home.place.levies = {{"County", decimal("12")}};
                home.down_percent(home.program.kind == ProgramKind::conventional ? "5" : "3.5");
                home.scenario.extra_principal = money(extra);
                if (bought) home.scenario.buydown = two_one;
                const LoanFigures f = home.figures();
                REQUIRE(f.available());
                CHECK(f.paid_ahead.has_value() == (home.scenario.extra_principal > Money{}));
                Money paid = f.cash.needed();
                CHECK(f.paid_through(0) == paid);
                for (int month = 1; month <= 360; ++month) {
                    REQUIRE(f.paid_in(month) == month_by_hand(f, month));
                    paid += f.paid_in(month);
                    REQUIRE(f.paid_through(month) == paid);
                }
                CHECK(f.paid_over_loan() == paid);
                CHECK(f.paid_through(500) == paid);
                const Money local = f.monthly.local() * 60;
                CHECK(f.paid_in_five_years() - local + f.paid_schedule().balance(60) ==
                      f.spent_and_owed(60));
            }
        }
    }
}

TEST_CASE("A temporary buydown that the buyer pays costs what the plain loan costs") {
    Purchase home = conventional();
    const LoanFigures plain = home.figures();
    home.scenario.buydown = two_one;
    const LoanFigures bought = home.figures();
    const Money subsidy = bought.buydown->total_subsidy();
    REQUIRE(subsidy > Money{});
    CHECK(bought.cash.needed() == plain.cash.needed() + subsidy);
    CHECK(bought.paid_in(1) == plain.paid_in(1) - bought.buydown->years[0].subsidy);
    CHECK(bought.paid_in(24) == plain.paid_in(24) - bought.buydown->years[1].subsidy);
    CHECK(bought.paid_in(25) == plain.paid_in(25));
    CHECK(bought.paid_in_five_years() == plain.paid_in_five_years());
    CHECK(bought.paid_over_loan() == plain.paid_over_loan());
    CHECK(bought.spent_and_owed(24) == plain.spent_and_owed(24));
    CHECK(bought.spent_and_owed(23) > plain.spent_and_owed(23));
}

TEST_CASE("A temporary buydown that the builder pays is worth its money") {
    Purchase home = conventional();
    const LoanFigures plain = home.figures();
    home.scenario.buydown = two_one;
    home.facts.credits = {{"gift", CreditFrom::builder, money("50000"), {CreditUse::buydown}}};
    const LoanFigures bought = home.figures();
    const Money subsidy = bought.buydown->total_subsidy();
    REQUIRE(bought.cash[CashPart::credits] == subsidy);
    CHECK(bought.cash.needed() == plain.cash.needed());
    CHECK(bought.paid_in_five_years() == plain.paid_in_five_years() - subsidy);
    CHECK(bought.paid_over_loan() == plain.paid_over_loan() - subsidy);
}

TEST_CASE("A buydown pays no more of a payment than is due, and nothing of a loan that is paid") {
    Purchase home = conventional("42000");
    home.scenario.buydown = two_one;
    const LoanFigures f = home.figures();
    const int last = f.paid_schedule().months();
    REQUIRE(last < 12);
    CHECK(f.from_buydown(last) ==
          std::min(f.buydown->years[0].subsidy, f.paid_schedule().last_payment()));
    CHECK(f.from_buydown(last + 1) == Money{});
    CHECK(f.paid_in(last) >= f.monthly.local());
    CHECK(f.paid_in(last + 1) == f.monthly.local());
}

TEST_CASE(
    "Extra principal saves interest and insurance, nothing else, and leaves what is disclosed") {
    Purchase home = conventional();
    const LoanFigures plain = home.figures();
    for (const char* extra : {"50", "400", "2500"}) {
        CAPTURE(extra);
        const LoanFigures ahead = conventional(extra).figures();
        CHECK(ahead.paid_schedule().months() < plain.paid_schedule().months());
        CHECK(plain.paid_over_loan() - ahead.paid_over_loan() ==
              cost_of_money(plain) - cost_of_money(ahead));
        CHECK(ahead.paid_in(1) == plain.paid_in(1) + money(extra));
        CHECK(ahead.schedule.balances() == plain.schedule.balances());
        CHECK(ahead.insurance.months() == plain.insurance.months());
        CHECK(ahead.monthly == plain.monthly);
        CHECK(ahead.cash.needed() == plain.cash.needed());
    }
}

TEST_CASE("Paid ahead, insurance asked off follows the balance, else it stays as first scheduled") {
    // 12 USC 4902(a), 4901(2): on actual payments; 4902(b): the initial schedule, whatever is owed.
    Purchase home = conventional("500");
    home.scenario.end_mi_on_request = true;
    const LoanFigures asked = home.figures();
    const int last = asked.paid_insurance().months();
    const Money eighty = money("320000");
    CHECK(asked.paid_schedule().balance(last) <= eighty);
    CHECK(asked.paid_schedule().balance(last - 1) > eighty);
    CHECK(asked.schedule.balance(asked.insurance.months()) <= eighty);
    CHECK(last < asked.insurance.months());
    CHECK(asked.paid_insurance_end().on_request == last);
    home.scenario.end_mi_on_request = false;
    const LoanFigures automatic = home.figures();
    CHECK(automatic.paid_insurance().months() == automatic.insurance.months());
    CHECK(automatic.paid_insurance_end().on_request == last);
    // Nothing is paid on a loan that has ended.
    const LoanFigures soon = conventional("20000").figures();
    CHECK(soon.paid_schedule().months() < soon.insurance.months());
    CHECK(soon.paid_insurance().months() == soon.paid_schedule().months());
}

TEST_CASE("Paid ahead, FHA and USDA premiums stay on the scheduled balance and end with the loan") {
    // 12 USC 1709(c)(2)(B): the scheduled balance, without regard to prepayments.
    for (const char* program : {"fha", "usda"}) {
        CAPTURE(program);
        Purchase home(program);
        home.down_percent("3.5");
        home.scenario.extra_principal = money("700");
        const LoanFigures f = home.figures();
        REQUIRE(f.available());
        const int months = f.paid_schedule().months();
        REQUIRE(months < 300);
        for (int month = 1; month <= months; ++month) {
            REQUIRE(f.paid_insurance().in_month(month) == f.insurance.in_month(month));
        }
        CHECK(f.paid_insurance().months() == months);
        CHECK(f.insurance.months() == 360);
    }
}

TEST_CASE("Insurance asked off at 80% ends at the midpoint of the term all the same") {
    // 12 USC 4902(c). At 12% and 3% down, half the term leaves 83% of the value.
    Purchase home("conventional");
    home.down_percent("3").quoted("12");
    home.scenario.end_mi_on_request = true;
    const LoanFigures f = home.figures();
    REQUIRE(f.available());
    CHECK(f.insurance_end.on_request > 180);
    CHECK(f.insurance.months() == 180);
    CHECK(f.paid_in(180) - f.paid_in(181) == f.monthly[MonthPart::mortgage_insurance]);
    home.scenario.extra_principal = money("20");
    const LoanFigures ahead = home.figures();
    CHECK(ahead.paid_insurance_end().on_request > 180);
    CHECK(ahead.paid_insurance().months() == 180);
    home.scenario.extra_principal = money("100");
    CHECK(home.figures().paid_insurance().months() ==
          home.figures().paid_insurance_end().on_request);
}
