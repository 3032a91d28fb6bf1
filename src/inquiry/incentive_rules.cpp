// What rules an incentive out.
#include <quoin/inquiry/incentive_rules.hpp>

namespace quoin {

std::string why_not_given(const Incentive& incentive, const Inquiry& inquiry) {
    if (!allows(incentive.plans, inquiry.selection.plan)) return "not on this plan";
    if (!allows(incentive.lots, inquiry.selection.lot)) return "not on this lot";
    if (incentive.expires && inquiry.contract > *incentive.expires) {
        return "for contracts until " + incentive.expires->text();
    }
    if (incentive.close_by && inquiry.closing > *incentive.close_by) {
        return "for closings until " + incentive.close_by->text();
    }
    return {};
}

std::string why_not_given(const Incentive& incentive, const RateSheet* sheet) {
    const bool here =
        incentive.lender.empty() || sheet == nullptr || incentive.lender == sheet->lender;
    return here ? "" : "only with a loan from " + incentive.lender;
}

} // namespace quoin
