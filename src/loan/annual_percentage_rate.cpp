// Present values in 62-bit fixed point, and the rate found between two neighbouring millionths.
#include <quoin/loan/annual_percentage_rate.hpp>

namespace quoin {
namespace {

__extension__ using UInt128 = unsigned __int128;
constexpr int fraction_bits = 62;

/// Present value in cents x 2^62 at a yearly rate of `millionths` of a percent. Each discount
/// factor is cut down, by less than 2^-62 a month: under a millionth of a cent for any loan here.
UInt128 present_value(std::span<const Money> payments, FirstPeriod first, std::int64_t millionths) {
    constexpr auto base = static_cast<UInt128>(Rate::monthly_denominator);
    const auto step = static_cast<std::uint64_t>((base << fraction_bits) /
                                                 (base + static_cast<UInt128>(millionths)));
    std::uint64_t factor = std::uint64_t{1} << fraction_bits;
    for (int month = 1; month < first.months; ++month) {
        factor = static_cast<std::uint64_t>((UInt128{factor} * step) >> fraction_bits);
    }
    UInt128 sum = 0;
    for (const Money payment : payments) {
        factor = static_cast<std::uint64_t>((UInt128{factor} * step) >> fraction_bits);
        sum += UInt128{factor} * static_cast<std::uint64_t>(payment.count());
    }
    // / (1 + f i) with f = odd_days / 30 and i = millionths / base, as sum - sum x f i / (1 + f i).
    const UInt128 odd = static_cast<UInt128>(first.odd_days) * static_cast<UInt128>(millionths);
    return sum - sum / (30 * base + odd) * odd;
}

} // namespace

FirstPeriod first_period(Date advance, Date first_payment) {
    FirstPeriod period{0, 0};
    while (plus_months(first_payment, Months(-period.months - 1)) >= advance) ++period.months;
    period.odd_days = days_between(advance, plus_months(first_payment, Months(-period.months)));
    return period;
}

std::optional<Rate> annual_percentage_rate(Money amount_financed, std::span<const Money> payments,
                                           FirstPeriod first) {
    if (amount_financed <= Money{}) return std::nullopt;
    const UInt128 target = static_cast<UInt128>(amount_financed.count()) << fraction_bits;
    std::int64_t low = 0; // worth at least the amount financed here, less at `high`
    std::int64_t high = Rate::max_millionths;
    if (present_value(payments, first, low) < target ||
        present_value(payments, first, high) >= target) {
        return std::nullopt;
    }
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        (present_value(payments, first, middle) >= target ? low : high) = middle;
    }
    return Rate::millionths(low);
}

} // namespace quoin
