// Subtracting figures, and finding which table rows changed between them.
#include "difference.hpp"

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

JumpSide side_of(const BandTable* table, int row) {
    if (table == nullptr || row == no_row) return {};
    return {at(table->written, row), table->value(row).text()};
}

/// What a lookup came to.
JumpSide side(const ScenarioRules& rules, const LoanFigures& f, Lookup lookup) {
    const int row = f.row(lookup);
    switch (lookup) {
    case Lookup::note_rate:
        return {{}, f.rate.text()};
    case Lookup::points_adjustment:
        return {{}, f.points.value().text()};
    case Lookup::upfront_fee:
        return side_of(rules.rule(Rule::upfront_fee), row);
    case Lookup::annual_fee:
        return side_of(rules.rule(Rule::annual_fee), row);
    case Lookup::annual_fee_months:
        return side_of(rules.rule(Rule::annual_fee_months), row);
    case Lookup::mi_factor:
        return side_of(rules.mi_factors.rule(), row);
    case Lookup::single_premium:
        return side_of(rules.single_premium.rule(), row);
    case Lookup::contribution_cap:
        return side_of(rules.rule(Rule::contribution_cap), row);
    case Lookup::homeowner:
        return side_of(&rules.place->homeowner, row);
    }
    return {};
}

std::vector<Jump> jumps_between(const ScenarioRules& rules, const LoanFigures& before,
                                const LoanFigures& after) {
    std::vector<Jump> jumps;
    if (before.rows == after.rows) return jumps;
    for (std::size_t i = 0; i < lookup_count; ++i) {
        const auto lookup = static_cast<Lookup>(i);
        if (before.rows.same_in(lookup, after.rows)) continue;
        Jump jump{lookup, side(rules, before, lookup), side(rules, after, lookup)};
        if (jump.before.value != jump.after.value) jumps.push_back(std::move(jump));
    }
    return jumps;
}

} // namespace

Added amounts_between(const LoanFigures& before, const LoanFigures& after) {
    Added added;
    added.refusals = after.available() ? before.refusals : after.refusals;
    if (!added.available()) return added;
    added.monthly = after.monthly - before.monthly;
    added.per_month = added.monthly.total();
    ensure_equal(added.per_month, after.monthly.total() - before.monthly.total(),
                 "differences by part sum to that of the month");
    added.cash = after.cash.needed() - before.cash.needed();
    added.to_close = after.cash.to_close() - before.cash.to_close();
    added.in_five_years = after.paid_in_five_years() - before.paid_in_five_years();
    added.over_loan = after.paid_over_loan() - before.paid_over_loan();
    added.ltv_before = before.ltv;
    added.ltv_after = after.ltv;
    return added;
}

Added difference(const ScenarioRules& rules, const LoanFigures& before, const LoanFigures& after) {
    Added added = amounts_between(before, after);
    if (added.available()) added.jumps = jumps_between(rules, before, after);
    return added;
}

std::vector<Added> differences(const Sitting& sitting, const std::vector<LoanFigures>& before,
                               const std::vector<LoanFigures>& after) {
    ensure(before.size() == after.size() && before.size() == sitting.rules().size(),
           "figures before and after are of the sitting's scenarios");
    std::vector<Added> all;
    all.reserve(before.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        all.push_back(difference(sitting.rules()[i], before[i], after[i]));
    }
    return all;
}

} // namespace quoin
