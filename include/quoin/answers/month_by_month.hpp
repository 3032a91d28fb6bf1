// "How does the loan run, and what does extra principal save?" The schedule with mortgage
// insurance.
#pragma once

#include <optional>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>

namespace quoin {

struct MonthRow {
    int month = 0;
    Date due;
    Money payment; ///< principal and interest, extra principal among it
    Money interest;
    Money principal;
    Money insurance;
    Money balance;
};

/// What extra principal does, against the schedule without it.
struct ExtraSaves {
    Money extra; ///< each month
    int payments = 0;
    int payments_saved = 0;
    Money interest_saved;
    Money insurance_saved; ///< conventional: balance paid down to 80 % sooner, if asked for
    Date last_due;
};

struct MonthByMonthAnswer {
    Heading heading;
    ScenarioAnswer scenario;
    std::vector<MonthRow> rows; ///< with the extra principal
    Money total_interest;
    Money total_insurance;
    std::optional<ExtraSaves> saves;
};

/// `extra` replaces the scenario's own extra principal where it is given. The automatic end of
/// conventional mortgage insurance stays on the initial schedule (12 USC 4902(b)); its end on
/// request follows the actual balance (12 USC 4902(a)).
[[nodiscard]] MonthByMonthAnswer month_by_month(const Sitting& sitting, std::size_t scenario,
                                                std::optional<Money> extra);

} // namespace quoin
