// The tolerances of Regulation Z, held to our figures of its own sample forms, and the caps on what
// interested parties may give, on both sides of every edge.
//
// Sources: 12 CFR 1026.22(a)(2), (3) and 15 USC 1606(c), APR; 15 USC 1605(f) and 12 CFR
// 1026.38(o)(1), (2), finance charge and total of payments; 1026.4, what is a finance charge. The
// caps stand with their programs in rates/programs/.
#include <shown.hpp>

#include <cstdlib>

#include "support/disclosure_samples.hpp"
#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

constexpr std::int64_t eighth = 125'000;  // of a percentage point, in millionths
constexpr std::int64_t quarter = 250'000; // where payments are irregular
const Money least_understated = -Money::dollars(100);

std::int64_t apart(const CashAnswer& answer, const char* printed) {
    return std::abs(answer.scenario.cost_of_credit.apr.value().millionths() -
                    rate(printed).millionths());
}

CostOfCredit cost(const FormPurchase& purchase) {
    const CashAnswer answer = purchase.answer();
    REQUIRE(answer.scenario.available());
    return answer.scenario.cost_of_credit;
}

/// The Loan Estimate with its costs or its scenario changed.
FormPurchase estimate_with(const std::string& cost_patch, const std::string& inquiry_patch) {
    const std::string costs = patched(estimate_costs_text, cost_patch);
    const std::string place =
        patched(form_place_text, "[" + op_replace("/closing_costs", costs) + "]");
    return {place, patched(form_inquiry_text, inquiry_patch)};
}

} // namespace

TEST_CASE("APR of the sample forms: within an eighth of what they print") {
    // H-24(B) prints 4.274%. The form counts the first period as one month; ours counts the
    // fifteen odd days too, whose interest is prepaid, and so comes out lower.
    const CashAnswer estimate = loan_estimate().answer();
    CHECK(estimate.scenario.cost_of_credit.first_period.odd_days == 15);
    CHECK(apart(estimate, "4.274") <= eighth);
    CHECK(apart(estimate, "4.274") > 0);
    // Of one month, the form's own digits.
    const CostOfCredit& credit = estimate.scenario.cost_of_credit;
    const FormPurchase purchase = loan_estimate();
    const Sitting sitting(purchase.desk, purchase.inquiry);
    const LoanFigures f = loan_figures(sitting.rules()[0],
                                       price_home(sitting.book(), purchase.inquiry.selection), {});
    const auto plain = annual_percentage_rate(credit.amount_financed, disclosed_payments(f));
    CHECK((plain.value().millionths() + 500) / 1000 == 4274);

    // H-25(B) prints 4.174%, with no prepaid finance charge at all; ours holds the points, the
    // underwriting fee, monitoring and prepaid interest, and still is within an eighth.
    const CashAnswer disclosure = closing_disclosure().answer();
    CHECK(apart(disclosure, "4.174") <= eighth);
    CHECK(apart(disclosure, "4.174") <= quarter);
    // The forms' two APRs are themselves 0.100 apart: no tolerance is wider than it has to be.
    CHECK(disclosure.scenario.cost_of_credit.apr.value() > rate("4.174"));
}

TEST_CASE("Finance charge of the sample Closing Disclosure: 118,830.27 and what it leaves out") {
    const CostOfCredit credit = cost(closing_disclosure());
    // The form's is interest and mortgage insurance alone, with payments of no whole cents: 1.43
    // less than ours over 360 months.
    const Money without = credit.finance_charge - credit.prepaid_finance_charge;
    CHECK(without - money("118830.27") == money("1.43"));
    // 15 USC 1605(f): understated by 100 at most, or overstated. Points 405, underwriting 1,097,
    // monitoring 31.75 and 75, prepaid interest 279.04 are ours above the form's.
    CHECK(credit.finance_charge - money("118830.27") >= least_understated);
    CHECK(credit.prepaid_finance_charge == money("1887.79"));
    CHECK(credit.amount_financed == money("162000") - money("1887.79"));
}

TEST_CASE("Total of payments of the sample Closing Disclosure: 285,803.36 within 100") {
    // 1026.38(o)(1): principal, interest, mortgage insurance and loan costs; the form's has prepaid
    // interest in it, and payments of no whole cents.
    const CostOfCredit credit = cost(closing_disclosure());
    CHECK(credit.total_of_payments - money("285803.36") == money("1.43"));
    CHECK(credit.total_of_payments - money("285803.36") >= least_understated);
}

TEST_CASE("Comparisons of the samples: five years, principal, total interest percentage") {
    const CostOfCredit estimate = cost(loan_estimate());
    CHECK(to_dollars(estimate.disclosed_in_five_years, Rounding::half_away) == money("56581"));
    // The form's 56,582 has the prepaid interest rounded first: 262, not 261.60. (56,581.40.)
    CHECK(estimate.disclosed_in_five_years + money("262") - money("261.60") == money("56581.80"));
    CHECK(to_dollars(estimate.disclosed_principal_in_five_years, Rounding::half_away) ==
          money("15773"));
    CHECK(estimate.total_interest_percentage == Percent(decimal("69.448"))); // printed 69.45
    CHECK(cost(closing_disclosure()).total_interest_percentage ==
          Percent(decimal("69.458"))); // printed 69.46
}

TEST_CASE("Points that the borrower pays are a finance charge, and so is a fee of the lender's") {
    const auto with_points = [](const char* points) {
        return cost(estimate_with(
            "[]", "[" +
                      op_replace("/scenarios/0/rate", R"({"quoted": "3.875", "points": ")" +
                                                          std::string(points) + "\"}") +
                      "]"));
    };
    const CostOfCredit none = with_points("0");
    const CostOfCredit some = with_points("0.25");
    CHECK(some.finance_charge - none.finance_charge == money("405")); // 1026.4(b)(3)
    CHECK(none.amount_financed - some.amount_financed == money("405"));
    CHECK(some.apr.value() > none.apr.value());
    // A lender credit for the rate takes nothing off the finance charge.
    CHECK(with_points("-0.25").finance_charge == none.finance_charge);

    // A fee of 75 left out of the finance charge understates it by 75: accurate still, as is the
    // APR that follows from it (1026.22(a)(4)).
    const CostOfCredit all = cost(estimate_with("[]", "[]"));
    const CostOfCredit without =
        cost(estimate_with("[" + op_replace("/4/finance_charge", "false") + "]", "[]"));
    CHECK(without.finance_charge - all.finance_charge == money("-75"));
    CHECK(without.finance_charge - all.finance_charge >= least_understated);
    CHECK(all.apr.value().millionths() - without.apr.value().millionths() <= eighth);
    CHECK(all.apr.value() > without.apr.value());
    // What the seller pays is none (1026.4(c)(5)).
    const CostOfCredit sellers =
        cost(estimate_with("[" + op_add("/4/paid_by", R"("seller")") + "]", "[]"));
    CHECK(sellers.finance_charge == without.finance_charge);
}

TEST_CASE("Points that the seller pays are no finance charge, a lender's or a program's are") {
    // 1026.4(c)(5), and comment 4(c)(5)-1: even where they are passed on in the price.
    Purchase home("conventional");
    home.down_percent("20").quoted("6.5", "2"); // 6,400 on 320,000
    const auto with = [&](CreditFrom from, const char* amount, CreditUse use) {
        home.facts.credits = {{"points", from, money(amount), {use}}};
        return cost_of_credit(home.rules(), home.figures());
    };
    const CostOfCredit all = with(CreditFrom::lender, "6400", CreditUse::points);
    CHECK(all.prepaid_finance_charge == money("6400") + home.figures().prepaid_interest.total());
    CHECK(with(CreditFrom::program, "6400", CreditUse::points).finance_charge ==
          all.finance_charge);
    for (const CreditFrom from : {CreditFrom::seller, CreditFrom::builder}) {
        const CostOfCredit some = with(from, "1500.50", CreditUse::points);
        CHECK(all.finance_charge - some.finance_charge == money("1500.50"));
        CHECK(some.amount_financed - all.amount_financed == money("1500.50"));
        CHECK(some.apr.value() < all.apr.value());
        // Comment 38(o)(1)-1 (from memory): nor does the buyer pay what the seller is shown to pay.
        CHECK(all.total_of_payments - some.total_of_payments == money("1500.50"));
        CHECK(all.total_of_payments - with(from, "9000", CreditUse::points).total_of_payments ==
              money("6400"));
        CHECK(with(from, "6400", CreditUse::prepaids).total_of_payments == all.total_of_payments);
        // 1026.37(l)(1) has all loan costs, and interest is none of them.
        CHECK(some.disclosed_in_five_years == all.disclosed_in_five_years);
        CHECK(some.total_interest_percentage == all.total_interest_percentage);
        // No more than the points come to, and nothing for a credit that pays other things.
        CHECK(all.finance_charge - with(from, "9000", CreditUse::points).finance_charge ==
              money("6400"));
        CHECK(with(from, "6400", CreditUse::prepaids).finance_charge == all.finance_charge);
    }
    home.quoted("6.5", "0").facts.credits.clear();
    const CostOfCredit none = cost_of_credit(home.rules(), home.figures());
    home.quoted("6.5", "2");
    CHECK(with(CreditFrom::seller, "6400", CreditUse::points).apr == none.apr);
}

TEST_CASE("Points are for the loan of the form, of the financed fee too where there is one") {
    // VA: a point of 400,000 and of the funding fee on it; 38 USC 3729: 2.15%.
    Purchase home("va");
    home.down("0").quoted("6.5", "1");
    const LoanFigures f = home.figures();
    REQUIRE(f.available());
    CHECK(f.loan == money("408600"));
    CHECK(f.cash[CashPart::points] == money("4086"));
    const CostOfCredit credit = cost_of_credit(home.rules(), f);
    CHECK(credit.prepaid_finance_charge ==
          money("4086") + money("8600") + f.prepaid_interest.total());
}

namespace {

struct CapRow {
    const char* program;
    const char* base_loan; ///< of 400,000
    const char* ltv;       ///< as the rules read it
    const char* cap;       ///< percent of the value
    const char* most;      ///< dollars
};

/// A home with more to pay than any cap, and prepaids among it.
Purchase home_with_costs(const CapRow& row) {
    Purchase home(row.program);
    ClosingCost costs;
    costs.name = "Costs";
    costs.amount = money("60000");
    home.place.closing_costs.push_back(costs);
    home.base_loan(row.base_loan);
    return home;
}

LoanFigures with_seller_credit(const CapRow& row, Money amount) {
    Purchase home = home_with_costs(row);
    home.facts.credits = {{"seller", CreditFrom::seller, amount, {CreditUse::closing_costs}}};
    return home.figures();
}

void check_cap(const CapRow& row) {
    CAPTURE(row.program, row.base_loan);
    const Money most = money(row.most);
    const LoanFigures at_cap = with_seller_credit(row, most);
    REQUIRE(at_cap.available());
    CHECK(at_cap.ltv == Ltv(decimal(row.ltv)));
    CHECK(at_cap.contribution_cap == Percent(decimal(row.cap)));
    CHECK(at_cap.cash[CashPart::credits] == most);
    CHECK(at_cap.credits.over_cap == Money{});
    const LoanFigures above = with_seller_credit(row, most + money("0.01"));
    CHECK(above.cash[CashPart::credits] == most);
    CHECK(above.credits.over_cap == money("0.01"));
    const LoanFigures far = with_seller_credit(row, most + money("12345.67"));
    CHECK(far.credits.interested_parties == most);
    CHECK(far.credits.over_cap == money("12345.67"));
}

} // namespace

TEST_CASE("Conventional contributions: 9, 6 and 3%, both sides of 75.00 and 90.00% LTV") {
    // Fannie Mae B3-4.1-02 (second-hand): 9% to 75%, 6% from 75.01 to 90%, 3% above. LTV is
    // cut to two decimals (B2-1.2-01, from memory), so 90.0097% is 90.00 and 90.01% is not.
    for (const CapRow& row : {
             CapRow{"conventional", "100000", "25", "9", "36000"},
             CapRow{"conventional", "300000", "75", "9", "36000"},
             CapRow{"conventional", "300039", "75", "9", "36000"},
             CapRow{"conventional", "300040", "75.01", "6", "24000"},
             CapRow{"conventional", "360000", "90", "6", "24000"},
             CapRow{"conventional", "360039", "90", "6", "24000"},
             CapRow{"conventional", "360040", "90.01", "3", "12000"},
             CapRow{"conventional", "388000", "97", "3", "12000"},
         }) {
        check_cap(row);
    }
}

TEST_CASE("FHA and USDA contributions: 6% at any LTV") {
    // HUD 4000.1 II.A (second-hand); HB-1-3555 (from memory).
    for (const CapRow& row : {
             CapRow{"fha", "300000", "75", "6", "24000"},
             CapRow{"fha", "360040", "90.01", "6", "24000"},
             CapRow{"fha", "386000", "96.5", "6", "24000"},
             CapRow{"usda", "300040", "75.01", "6", "24000"},
             CapRow{"usda", "400000", "100", "6", "24000"},
         }) {
        check_cap(row);
    }
}

TEST_CASE(
    "VA: 4% of concessions, prepaids, the fee and a buydown among them, costs and points not") {
    // VA Pamphlet 26-7, chapter 8 (second-hand).
    Purchase home("va");
    home.down("0").quoted("6.5", "2");
    home.place.closing_costs.emplace_back();
    home.place.closing_costs.back().amount = money("9000");
    home.place.premiums[MonthPart::wind_insurance] =
        money("30000"); // premiums to prepay, above the cap
    home.place.escrow.prepaid_insurance_months = 12;
    const auto with = [&](std::vector<CreditUse> uses, const char* amount) {
        home.facts.credits = {{"seller", CreditFrom::seller, money(amount), std::move(uses)}};
        const LoanFigures f = home.figures();
        REQUIRE(f.available());
        REQUIRE(f.contribution_cap == Percent(decimal("4")));
        return f;
    };
    const Money cap = money("16000");
    CHECK(with({CreditUse::prepaids}, "16000").credits.over_cap == Money{});
    const LoanFigures prepaid = with({CreditUse::prepaids}, "16000.01");
    CHECK(prepaid.credits.over_cap == money("0.01"));
    CHECK(prepaid.credits.interested_parties == cap);
    // Costs, 9,000, and two points of 408,600 count nothing, and leave the whole cap to prepaids.
    const LoanFigures uncounted =
        with({CreditUse::points, CreditUse::closing_costs, CreditUse::prepaids}, "40000");
    CHECK(uncounted.credits.by_use[CreditUse::points] == money("8172"));
    CHECK(uncounted.credits.by_use[CreditUse::closing_costs] == money("9000"));
    CHECK(uncounted.credits.by_use[CreditUse::prepaids] == cap);
    CHECK(uncounted.credits.over_cap == money("40000") - money("8172") - money("9000") - cap);
    // The buyer's funding fee is a concession: 2.15% of 400,000, paid in cash.
    home.scenario.finance_fee = false;
    const LoanFigures fee = with({CreditUse::upfront_fee}, "9000");
    CHECK(fee.credits.by_use[CreditUse::upfront_fee] == money("8600"));
    CHECK(fee.credits.interested_parties == money("8600"));
    home.scenario.finance_fee = true;
    // A lender's credit is nobody's contribution.
    home.facts.credits = {{"lender", CreditFrom::lender, money("20000"), {CreditUse::prepaids}}};
    CHECK(home.figures().cash[CashPart::credits] == money("20000"));
    CHECK(home.figures().credits.interested_parties == Money{});
}

TEST_CASE("A low appraisal: the cap is of the value, but FHA's and USDA's are of the price") {
    // B3-4.1-02: of the lower of price and value. HUD 4000.1 II.A and HB-1-3555: of the price.
    for (const auto& [program, cap] :
         {std::pair("conventional", "22800"), {"fha", "24000"}, {"usda", "24000"}}) {
        CAPTURE(program);
        Purchase home = home_with_costs({program, "320000", "", "", ""});
        home.appraised("380000");
        home.facts.credits = {
            {"seller", CreditFrom::seller, money("50000"), {CreditUse::closing_costs}}};
        CHECK(home.figures().cash[CashPart::credits] == money(cap));
    }
}
