// Bills of a home into an escrow account.
#include <quoin/loan/housing_escrow.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/prepaids.hpp>

namespace quoin {
namespace {

/// Bills of a year of payments, the first of them `years` after the first payment.
std::vector<HousingBill> bills_of_year(const ScenarioRules& rules, const LocalCosts& costs,
                                       int years, bool settled) {
    const Date from = plus_months(rules.first_payment, Months::years(years));
    return housing_bills(*rules.place, costs, rules.closing, from,
                         plus_months(from, Months::years(1)), settled);
}

std::vector<EscrowBill> into_escrow(const std::vector<HousingBill>& bills) {
    std::vector<EscrowBill> escrow;
    for (const HousingBill& bill : bills) {
        escrow.push_back({bill.part, bill.amount, bill.due});
    }
    return escrow;
}

/// The bills that come, year by year, to the first year after which every one is like it.
std::vector<std::vector<EscrowBill>> bills_that_come(const ScenarioRules& rules,
                                                     const LocalCosts& costs) {
    std::vector<std::vector<EscrowBill>> years;
    for (bool on_land = true; on_land || years.size() < 2;) {
        const auto bills = bills_of_year(rules, costs, static_cast<int>(years.size()), false);
        on_land = std::any_of(bills.begin(), bills.end(),
                              [](const HousingBill& bill) { return bill.on_land; });
        years.push_back(into_escrow(bills));
    }
    return years;
}

bool has_account(const ScenarioRules& rules) {
    return rules.scenario.escrow && !rules.place->tax_due.empty();
}

} // namespace

std::optional<HousingEscrow> housing_escrow(const ScenarioRules& rules, const LocalCosts& costs) {
    if (!has_account(rules)) return std::nullopt;
    const int cushion = rules.place->escrow.cushion_months;
    HousingEscrow escrow;
    escrow.bills = into_escrow(bills_of_year(rules, costs, 0, true));
    escrow.account = analyse_escrow(escrow.bills, rules.first_payment, cushion);
    const auto years = bills_that_come(rules, costs);
    if (costs.land_only || years[1].size() != escrow.bills.size()) {
        const auto outlook = [&](const std::vector<EscrowBill>& set_from) {
            return escrow_outlook(set_from, years, rules.first_payment, cushion);
        };
        escrow.outlook = NewHomeEscrow{outlook(escrow.bills), outlook(years[0])};
        ensure_equal(escrow.outlook->from_settled.first.initial_deposit,
                     escrow.account.initial_deposit,
                     "an outlook from the settled tax begins as the account does");
    }
    return escrow;
}

Money initial_escrow_deposit(const ScenarioRules& rules, const LocalCosts& costs) {
    if (!has_account(rules)) return {};
    return analyse_escrow(into_escrow(bills_of_year(rules, costs, 0, true)), rules.first_payment,
                          rules.place->escrow.cushion_months)
        .initial_deposit;
}

} // namespace quoin
