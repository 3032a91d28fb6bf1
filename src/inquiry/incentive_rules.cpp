// What rules an incentive out.
#include <quoin/inquiry/incentive_rules.hpp>

namespace quoin {

std::optional<WhyNot> why_not_given(const Incentive& incentive, const Inquiry& inquiry) {
    using Kind = WhyNot::Kind;
    if (!allows(incentive.plans, inquiry.selection.plan)) return WhyNot{Kind::not_for_plan};
    if (!allows(incentive.lots, inquiry.selection.lot)) return WhyNot{Kind::not_for_lot};
    if (incentive.expires && inquiry.contract > *incentive.expires) {
        return WhyNot{.kind = Kind::contract_too_late, .until = incentive.expires};
    }
    if (incentive.close_by && inquiry.closing > *incentive.close_by) {
        return WhyNot{.kind = Kind::closing_too_late, .until = incentive.close_by};
    }
    return std::nullopt;
}

std::optional<WhyNot> why_not_given(const Incentive& incentive, const RateSheet* sheet) {
    const bool here =
        incentive.lender.empty() || sheet == nullptr || incentive.lender == sheet->lender;
    if (here) return std::nullopt;
    return WhyNot{.kind = WhyNot::Kind::other_lender, .names = {incentive.lender}};
}

} // namespace quoin
