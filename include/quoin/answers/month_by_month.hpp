// "How does the loan run, and what does extra principal save?" The schedule with mortgage
// insurance.
#pragma once

#include <optional>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/inquiry/asks.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

struct MonthRow {
    int month = 0;
    Date due;
    Rate rate;
    Money payment; ///< principal and interest, extra principal among it
    Money interest;
    Money principal;
    Money insurance;
    Money balance;
    Money from_buydown; ///< of the payment; the rest of it, and the insurance, is the buyer's
};

/// What a lender credit takes off the principal at closing, before the first payment.
struct ReducedAtClosing {
    Date date;
    Money principal;
    Money balance; ///< then
};

/// Twelve payments together, or what is left of them in the last year.
struct YearRow {
    int year = 0;
    Date last_due;
    Money payment;
    Money interest;
    Money principal;
    Money insurance;
    Money balance; ///< after the last of them
    Money from_buydown;
};

/// What extra principal does, against the schedule without it.
struct ExtraSaves {
    Money extra; ///< each month
    int payments = 0;
    int payments_saved = 0;
    Money interest_saved;
    Money insurance_saved; ///< conventional: balance paid down to 80% sooner, if asked for
    Date last_due;
};

/// The way that an adjustable rate is taken to go.
enum class RateWay {
    fixed,
    index_of_the_day, ///< the index stays where it is
    given_index,
    worst_case, ///< every change as high as the caps let it be
};
template <>
inline constexpr auto codes<RateWay> =
    coded<RateWay>({{RateWay::fixed, "fixed"},
                    {RateWay::index_of_the_day, "index_of_the_day", "index of the day"},
                    {RateWay::given_index, "given_index", "given index"},
                    {RateWay::worst_case, "worst_case", "worst case"}});

struct MonthByMonthAnswer {
    Heading heading;
    ScenarioAnswer scenario; ///< with the same extra principal
    RateWay way = RateWay::fixed;
    std::optional<ReducedAtClosing> at_closing;
    std::vector<MonthRow> rows; ///< with the extra principal
    std::vector<YearRow> years; ///< the same, by years of payments
    Money total_interest;
    Money total_insurance;
    Money total_from_buydown;
    std::optional<ExtraSaves> saves;
};

/// The automatic end of conventional mortgage insurance stays on the initial schedule (12 USC
/// 4902(b)), for an adjustable rate on the schedule then in effect (12 USC 4901); its end on
/// request follows the actual balance (12 USC 4902(a)). Precondition: indexes and worst case only
/// where the scenario's rate is adjustable.
[[nodiscard]] MonthByMonthAnswer month_by_month(const Sitting& sitting, std::size_t scenario,
                                                const RunAs& run = {});

} // namespace quoin
