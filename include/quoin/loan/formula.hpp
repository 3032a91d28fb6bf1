// Formula: how a figure comes from others, as a tree that can be read, written into a spreadsheet,
// or reckoned exactly.
//
//   Formula fee = to_cent(figure("base_loan") * figure("upfront_percent") / 100);
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/rounding.hpp>

namespace quoin {

/// A column of the schedule. Row 0 is the loan before the first payment.
enum class ScheduleColumn {
    payment,
    interest,
    principal,
    insurance,
    balance,
    hud_balance,
    bought_down, ///< what the buyer's part of a buydown pays of the payment
};
inline constexpr std::size_t schedule_column_count = 7;

struct Formula {
    enum class Kind {
        given, ///< no formula: a figure that was looked up or chosen
        number,
        figure,
        sum,        ///< of all parts
        difference, ///< first less second
        product,
        quotient,
        least,
        greatest,
        rounded,       ///< first to `places` decimals by `rounding`
        level_payment, ///< of loan, yearly rate in percent, months; to the cent
        column_sum,    ///< rows `from` to `to`
        column_at,     ///< row `from`
        rows_over,     ///< rows from `from` on whose value is over the first part
        /// Of all payments and insurance, less what is bought down, at an APR in percent: parts
        /// APR, months, odd days.
        worth,
    };

    Kind kind = Kind::given;
    Decimal value;  ///< of a number
    std::string id; ///< of a figure
    std::vector<Formula> parts = {};
    int places = 0;
    Rounding rounding = Rounding::half_away;
    ScheduleColumn column = ScheduleColumn::payment;
    int from = 0;
    int to = 0;
};

[[nodiscard]] Formula number(Decimal value);
[[nodiscard]] Formula number(int value);
[[nodiscard]] Formula figure(std::string id);
[[nodiscard]] Formula sum_of(std::vector<Formula> parts);
/// Of figures; zero where there are none.
[[nodiscard]] Formula sum_of_figures(const std::vector<std::string>& ids);
[[nodiscard]] Formula least_of(std::vector<Formula> parts);
[[nodiscard]] Formula greatest_of(std::vector<Formula> parts);
[[nodiscard]] Formula rounded(Formula part, int places, Rounding rounding);
[[nodiscard]] Formula to_cent(Formula part);
[[nodiscard]] Formula to_dollar(Formula part);
[[nodiscard]] Formula down_to_cent(Formula part);
[[nodiscard]] Formula down_to_dollar(Formula part);
/// percent of an amount, unrounded.
[[nodiscard]] Formula percent_of(Formula amount, Formula percent);
[[nodiscard]] Formula level_payment_of(Formula loan, Formula rate, Formula months);
[[nodiscard]] Formula column_sum(ScheduleColumn column, int from, int to);
[[nodiscard]] Formula column_at(ScheduleColumn column, int row);
[[nodiscard]] Formula rows_over(ScheduleColumn column, int from, Formula threshold);
/// `off` is bought_down where that comes off the payments, and payment where nothing does.
[[nodiscard]] Formula worth_at(ScheduleColumn off, Formula apr, Formula months, Formula odd_days);

[[nodiscard]] Formula operator+(Formula a, Formula b);
[[nodiscard]] Formula operator-(Formula a, Formula b);
[[nodiscard]] Formula operator*(Formula a, Formula b);
[[nodiscard]] Formula operator/(Formula a, Formula b);

/// The figures that a formula names, each once, in their order.
[[nodiscard]] std::vector<std::string> inputs_of(const Formula& formula);
/// Whether some of it is read in the schedule.
[[nodiscard]] bool reads_schedule(const Formula& formula);

} // namespace quoin
