// The words of the cash that a loan takes, shared by its text, a sheet and JSON.
#pragma once

#include <string>

#include <quoin/answers/cash.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// "interest, 17 days at $16.11 a day"
[[nodiscard]] std::string prepaid_words(const PrepaidLine& line, const Catalogue& say);

struct SaidDay {
    std::string what;
    std::string amount;
};
/// A day of the calendar: cash that comes back is told by its name, without a minus.
[[nodiscard]] SaidDay said_day(const CalendarDay& day, const Catalogue& say);

/// What a bill out of escrow is for: "homeowner's insurance".
[[nodiscard]] std::string bill_words(MonthPart item, const Catalogue& say);

/// What is due up front: the program's fee by its name, or the single premium of its insurance.
[[nodiscard]] std::string upfront_fee_words(const ScenarioAnswer& scenario, const Catalogue& say);

} // namespace quoin
