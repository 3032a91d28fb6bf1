// The escrow account of a home, its bills run month by month beside what is told of it.
#include <shown.hpp>

#include <algorithm>

#include <quoin/loan/housing_escrow.hpp>

#include "seeded.hpp"
#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// A place with tax, for a while on the land alone, and with insurance prepaid for some months.
struct Draw {
    Purchase home{"conventional"};
    Money price = money("400000");

    explicit Draw(Seeded& seeded) {
        Place& place = home.place;
        place.levies = {{"County", Decimal::whole(seeded.between(1, 30))}};
        place.land_only = LandOnly{Percent(Decimal::whole(seeded.between(0, 40))),
                                   static_cast<int>(seeded.between(1, 36))};
        place.escrow = {static_cast<int>(seeded.between(0, 2)),
                        static_cast<int>(seeded.between(0, 24))};
        const auto day = static_cast<unsigned>(seeded.between(1, 28));
        const auto month = static_cast<unsigned>(seeded.between(1, 12));
        place.tax_due = {{month, day, Percent(decimal("62.5"))},
                         {month % 12 + 1, day, Percent(decimal("37.5"))}};
        home.closing = plus_days(date("2027-01-01"), static_cast<int>(seeded.between(0, 364)));
    }
    [[nodiscard]] LocalCosts costs() const { return local_costs(home.place, price, false); }
    [[nodiscard]] ScenarioRules rules() const { return home.rules(); }
};

/// What falls due from a day on for twelve months, as it comes.
std::vector<HousingBill> come(const Draw& draw, Date from) {
    const ScenarioRules rules = draw.rules();
    return housing_bills(*rules.place, draw.costs(), rules.closing, from,
                         plus_months(from, Months(12)), false);
}

Money sum_of(const std::vector<HousingBill>& bills) {
    Money sum;
    for (const HousingBill& bill : bills) sum += bill.amount;
    return sum;
}

/// Runs an account by the calendar: its deposits in and its bills out, one month after the other.
Money run_year(const Draw& draw, Date first, Money balance, Money deposit) {
    const std::vector<HousingBill> bills = come(draw, first);
    for (int month = 0; month < 12; ++month) {
        const Date now = plus_months(first, Months(month));
        balance += deposit;
        for (const HousingBill& bill : bills) {
            if (first_of_month(bill.due) == first_of_month(now)) balance -= bill.amount;
        }
    }
    return balance;
}

/// Every analysis that is told is the one that the account itself comes to.
void check_run(const Draw& draw, const EscrowOutlook& outlook) {
    Date first = draw.rules().first_payment;
    Money balance = outlook.first.initial_deposit;
    Money deposit = outlook.first.deposit;
    for (const EscrowYearEnd& end : outlook.ends) {
        balance = run_year(draw, first, balance, deposit);
        first = plus_months(first, Months(12));
        REQUIRE(end.balance == balance);
        REQUIRE(end.next.first_payment == first);
        // The next year is judged by the bills that come in it (12 CFR 1024.17(c)(7), (f)).
        REQUIRE(end.next.yearly == sum_of(come(draw, first)));
        const Money over = balance - end.next.initial_deposit;
        REQUIRE(end.surplus - end.shortage == over);
        REQUIRE((end.refund.is_zero() || end.refund == over));
        balance -= end.refund;
        deposit = end.payment();
    }
    // The year after the last one is like it: no more land, and every insurance in it.
    const auto last = come(draw, first);
    const auto after = come(draw, plus_months(first, Months(12)));
    REQUIRE(sum_of(last) == sum_of(after));
    REQUIRE(std::none_of(last.begin(), last.end(),
                         [](const HousingBill& bill) { return bill.on_land; }));
}

} // namespace

TEST_CASE("An account is told as its bills make it, however long the land alone is taxed") {
    Seeded seeded(1024);
    int longer = 0;
    int prepaid = 0;
    for (int i = 0; i < 3'000; ++i) {
        const Draw draw(seeded);
        CAPTURE(i, draw.home.closing, draw.home.place.land_only->months,
                draw.home.place.escrow.prepaid_insurance_months);
        const auto escrow = housing_escrow(draw.rules(), draw.costs());
        REQUIRE(escrow.has_value());
        REQUIRE(escrow->outlook.has_value());
        const EscrowOutlook& settled = escrow->outlook->from_settled;
        REQUIRE(settled.first.deposit == escrow->account.deposit);
        REQUIRE(settled.first.initial_deposit == escrow->account.initial_deposit);
        REQUIRE(initial_escrow_deposit(draw.rules(), draw.costs()) ==
                escrow->account.initial_deposit);
        check_run(draw, settled);
        check_run(draw, escrow->outlook->from_first_bills);
        REQUIRE(escrow->outlook->from_first_bills.first.yearly ==
                sum_of(come(draw, draw.rules().first_payment)));
        longer += settled.ends.size() > 1;
        prepaid += settled.first.yearly < settled.ends[0].next.yearly;
    }
    CHECK(longer > 1'000);
    CHECK(prepaid > 300);
}

TEST_CASE("Fourteen months of insurance prepaid: none in the first year, then a year's premium") {
    // By hand. 80% of 400,000 at 3 per thousand: 960 a year. Closed on 14 May 2027, first payment
    // 1 July: the premium falls due on 14 July 2028, in the first month of the second year.
    Purchase home("conventional");
    home.place.tax_due = {{11, 30, Percent(Decimal::whole(100))}};
    home.place.levies = {{"County", decimal("3")}}; // 1,200 a year
    home.place.escrow = {0, 14};
    const LocalCosts costs = local_costs(home.place, money("400000"), false);
    const auto escrow = housing_escrow(home.rules(), costs);
    REQUIRE(escrow.has_value());
    CHECK(escrow->account.deposit == money("100")); // 1,200 / 12; from zero: November -700
    CHECK(escrow->account.initial_deposit == money("700"));
    REQUIRE(escrow->outlook.has_value());
    const EscrowOutlook& outlook = escrow->outlook->from_settled;
    CHECK(outlook.first.deposit == money("100"));
    REQUIRE(outlook.ends.size() == 1);
    // 700 is there. 180 a month, from zero: July -780, November 900 - 2160 = -1,260.
    CHECK(outlook.ends[0].balance == money("700"));
    CHECK(outlook.ends[0].next.initial_deposit == money("1260"));
    CHECK(outlook.ends[0].shortage == money("560"));
    CHECK(outlook.change(0) == money("126.67")); // 80 + 46.67
    // Twelve months prepaid fall due within the first year: every year is like the first.
    home.place.escrow = {0, 12};
    CHECK_FALSE(housing_escrow(home.rules(), costs)->outlook.has_value());
}

TEST_CASE("A tax bill says its share of the year, and whether it is on the land alone") {
    Purchase home("conventional");
    home.place.levies = {{"County", decimal("10")}};
    home.place.land_only = LandOnly{Percent(Decimal::whole(25)), 12};
    home.place.escrow = {0, 12};
    home.place.tax_due = {{5, 14, Percent(Decimal::whole(40))},
                          {5, 14, Percent(Decimal::whole(60))}};
    const LocalCosts costs = local_costs(home.place, money("400000"), false);
    const auto bills = [&](const char* from, const char* to, bool settled) {
        return housing_bills(home.place, costs, home.closing, date(from), date(to), settled);
    };
    const auto first = bills("2027-05-01", "2027-06-01", false); // the closing's own day
    REQUIRE(first.size() == 2);
    CHECK(first[0].on_land);
    CHECK(first[0].share == Percent(Decimal::whole(40)));
    CHECK(first[0].amount == money("400")); // 40% of 10 mills of 100,000
    CHECK(first[1].share == Percent(Decimal::whole(60)));
    CHECK_FALSE(bills("2027-05-01", "2027-06-01", true)[0].on_land);
    // A year from the closing to the day: twelve months are over, and the house is taxed.
    const auto second = bills("2028-05-01", "2028-05-15", false);
    REQUIRE(second.size() == 3); // and the premium
    CHECK_FALSE(second[0].on_land);
    CHECK(second[0].amount == money("1600"));
}
