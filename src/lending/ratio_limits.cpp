// Reading the limits on what housing and debts may take of the income.
#include <quoin/lending/ratio_limits.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include "dated_list.hpp"

namespace quoin {
namespace {

std::optional<Percent> read_share(Reader& item, std::string_view key) {
    const auto share = item.maybe_decimal(key);
    if (!share) return std::nullopt;
    if (*share <= Decimal() || *share > Decimal::whole(100)) {
        item.report(problems::share_out_of_range(item.spot(key)));
        return std::nullopt;
    }
    return Percent(*share);
}

AutomatedRatio read_automated(Reader& item) {
    const bool another = item.has("back_automated");
    const auto said =
        item.word_or("automated",
                     Words<AutomatedRatio>{{AutomatedRatio::the_same, "same ratio"},
                                           {AutomatedRatio::none_published, "no ratio published"}},
                     another ? AutomatedRatio::another : AutomatedRatio::not_known);
    if (another && said != AutomatedRatio::another) {
        item.report(problems::automated_limits_unclear(item.here()));
    }
    return said;
}

RatioLimits read_limits(Reader& item) {
    RatioLimits limits;
    limits.front = read_share(item, "front");
    item.must_have("back");
    limits.back = read_share(item, "back").value_or(Percent());
    limits.back_automated = read_share(item, "back_automated");
    limits.automated = read_automated(item);
    read_dated(item, limits);
    if (const auto instead = item.maybe_decimal("back_unless_residual")) {
        limits.residual_instead = Percent(*instead);
        if (*instead < Decimal::whole(100) || *instead > Decimal::whole(1000)) {
            item.report(
                problems::percent_out_of_range(item.spot("back_unless_residual"), 100, 1000));
        }
    }
    limits.whole_percents =
        item.word_or("rounding", Words<bool>{{true, "whole percent"}, {false, "none"}}, false);
    return limits;
}

Percent just_over(Percent share) {
    return Percent(share.value() + Decimal::billionths(Decimal::one / 2));
}

} // namespace

Money RatioLimits::most(Money income, Percent share) const {
    if (!whole_percents) return percent_of(income, share, Rounding::down);
    // Half a percent more is rounded up to the next whole one.
    return percent_of(income, just_over(share), Rounding::up) - Money::cents(1);
}

Money RatioLimits::least_income(Money amount, Percent share) const {
    const Percent of = whole_percents ? just_over(share) : share;
    const Money income = Money::cents(multiply_divide(amount.count(), 100 * Decimal::one,
                                                      of.value().billionths(), Rounding::down));
    return most(income, share) >= amount ? income : income + Money::cents(1);
}

std::vector<RatioLimits> read_ratio_limits(Reader& program) {
    return read_dated_list(program, "ratios", read_limits);
}

} // namespace quoin
