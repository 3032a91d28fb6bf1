// Bills of a home into an escrow account.
#include <quoin/loan/housing_escrow.hpp>

#include <quoin/loan/prepaids.hpp>

namespace quoin {
namespace {

/// Bills of a year of payments, the first of them `years` after the first payment.
std::vector<EscrowBill> bills_of_year(const ScenarioRules& rules, const LocalCosts& costs,
                                      int years, bool settled) {
    const Date from = plus_months(rules.first_payment, Months::years(years));
    std::vector<EscrowBill> bills;
    for (const HousingBill& bill : housing_bills(*rules.place, costs, rules.closing, from,
                                                 plus_months(from, Months::years(1)), settled)) {
        bills.push_back({std::string(name_of(bill.kind)), bill.amount, bill.due});
    }
    return bills;
}

bool has_account(const ScenarioRules& rules) {
    return rules.scenario->escrow && !rules.place->tax_due.empty();
}

} // namespace

std::string_view name_of(HousingBill::Kind kind) {
    switch (kind) {
    case HousingBill::Kind::property_tax:
        return "property tax and district charges";
    case HousingBill::Kind::homeowner:
        return "homeowner's insurance";
    case HousingBill::Kind::flood:
        return "flood insurance";
    case HousingBill::Kind::wind:
        return "wind insurance";
    }
    return {};
}

std::optional<HousingEscrow> housing_escrow(const ScenarioRules& rules, const LocalCosts& costs) {
    if (!has_account(rules)) return std::nullopt;
    const int cushion = rules.place->escrow.cushion_months;
    HousingEscrow escrow;
    escrow.bills = bills_of_year(rules, costs, 0, true);
    escrow.account = analyse_escrow(escrow.bills, rules.first_payment, cushion);
    if (costs.land_only) {
        escrow.outlook =
            new_home_escrow(bills_of_year(rules, costs, 0, false),
                            bills_of_year(rules, costs, 1, true), rules.first_payment, cushion);
    }
    return escrow;
}

Money initial_escrow_deposit(const ScenarioRules& rules, const LocalCosts& costs) {
    if (!has_account(rules)) return {};
    return analyse_escrow(bills_of_year(rules, costs, 0, true), rules.first_payment,
                          rules.place->escrow.cushion_months)
        .initial_deposit;
}

} // namespace quoin
