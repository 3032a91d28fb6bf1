// Reading the limits on what housing and debts may take of the income.
#include <quoin/lending/ratio_limits.hpp>

#include <algorithm>

#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

std::optional<Percent> read_share(Reader& item, std::string_view key) {
    const auto share = item.maybe_decimal(key);
    if (!share) return std::nullopt;
    if (*share <= Decimal() || *share > Decimal::whole(100)) {
        item.findings().add(
            problems::out_of_range(item.spot(key), "a percent above 0, not above 100"));
        return std::nullopt;
    }
    return Percent(*share);
}

bool overlap(const RatioLimits& a, const RatioLimits& b) {
    const bool a_ends_first = a.until && b.effective && *a.until <= *b.effective;
    const bool b_ends_first = b.until && a.effective && *b.until <= *a.effective;
    return !a_ends_first && !b_ends_first;
}

RatioLimits read_limits(Reader& item) {
    RatioLimits limits;
    limits.front = read_share(item, "front");
    item.must_have("back");
    limits.back = read_share(item, "back").value_or(Percent());
    limits.back_automated = read_share(item, "back_automated");
    limits.status = read_status(item);
    limits.source = item.text("source");
    limits.effective = item.maybe_date("effective");
    limits.until = item.maybe_date("until");
    if (limits.effective && limits.until && *limits.until <= *limits.effective) {
        item.findings().add(problems::dates_reversed(item.spot("until"), "effective", "until"));
    }
    return limits;
}

} // namespace

std::vector<RatioLimits> read_ratio_limits(Reader& program) {
    std::vector<RatioLimits> list;
    program.each("ratios", [&](Reader& item) {
        RatioLimits limits = read_limits(item);
        const bool clash = std::any_of(list.begin(), list.end(), [&](const RatioLimits& other) {
            return overlap(limits, other);
        });
        if (clash) item.findings().add(problems::dates_overlap(item.here(), "ratios"));
        list.push_back(std::move(limits));
    });
    return list;
}

} // namespace quoin
