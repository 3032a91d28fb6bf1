// What would do where a person typed something else, as values: words/reasons.hpp has the
// sentences.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <quoin/exact/decimal.hpp>

namespace quoin {

struct Wanted {
    enum class Kind : std::uint8_t {
        amount_above_zero,     ///< such
        amount_not_below_zero, ///< such
        amount_in_range,       ///< least, most, such
        amount_under_price,    ///< such
        amount_to_spend,       ///< on an option
        dollars_in_range,      ///< least, most, such
        dollars_a_month,       ///< such
        gross_dollars_a_month, ///< such
        whole_number,          ///< least, most
        whole_months,          ///< least, most
        whole_years,           ///< least, most
        percent,               ///< least, most
        percent_such,          ///< least, most, such
        percentage_points,     ///< least, most, such
        yearly_percent,        ///< least, most, such
        yearly_rate_above,     ///< least, most, such
        day,                   ///< such
        one_of,                ///< names
        any_of,                ///< names
        adjustable_scenario,   ///< the name of one
        loan_rate_and_months,  ///< both or neither
        quantity_in_steps,     ///< least, most, step
        quantity_of_the_book,  ///< none is the buyer's
        name_with_ending,      ///< such
    };

    Kind kind = Kind::day;
    Decimal least = {};
    Decimal most = {};
    Decimal step = {};
    std::string such = {}; ///< an example
    std::vector<std::string> names = {};

    friend bool operator==(const Wanted&, const Wanted&) = default;
};

} // namespace quoin
