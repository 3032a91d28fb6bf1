// Writing feet and inches.
#include <quoin/words/feet.hpp>

#include <fmt/format.h>

namespace quoin {

std::string feet_and_inches(Decimal feet) {
    constexpr std::int64_t inches_in_foot = 12;
    const std::int64_t inches =
        multiply_divide(feet.billionths(), inches_in_foot, Decimal::one, Rounding::half_away);
    return fmt::format("{}' {}\"", inches / inches_in_foot, inches % inches_in_foot);
}

} // namespace quoin
