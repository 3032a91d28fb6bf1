// The questions an inquiry can be asked: the one table that the server dispatches from and that the
// description of its interface is written from.
//
//   const Question* question = find_question("adds");
//   question->answer(desk, inquiry, {{"option", "deck"}})   ->  the JSON text
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/inquiry.hpp>
#include <quoin/loan/watch.hpp>

namespace quoin::apps {

/// Options as they were given: by name, a repeated one in its order.
using Given = std::multimap<std::string, std::string, std::less<>>;

struct QuestionOption {
    enum class Need { optional, required, repeated, flag };

    std::string_view name; ///< as on the command line, without dashes
    std::string_view summary;
    Need need = Need::optional; ///< a flag holds by being there, whatever its value
};

struct Question {
    std::string_view name; ///< of the command, too
    std::string_view summary;
    std::vector<QuestionOption> options;
    std::string_view type; ///< media type of its answer
    /// What `quoin NAME --json` prints for the same inquiry, or what `quoin sheet` writes, to the
    /// byte; "workbook" is what `quoin recheck --workbook` writes. Throws Refused.
    /// Precondition: the inquiry was read against this desk, the options were checked.
    /// Where the watch ends it, Stopped is thrown; but "fit" says the best so far and that it is
    /// not proven.
    std::string answer(const Desk& desk, Inquiry inquiry, const Given& given,
                       const Watch& watch = {}) const {
        return made(desk, std::move(inquiry), given, watch);
    }

    std::string (*made)(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch);
};

inline constexpr std::string_view json_type = "application/json";
inline constexpr std::string_view html_type = "text/html; charset=utf-8";
inline constexpr std::string_view xlsx_type =
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/// In the order they are listed in.
[[nodiscard]] const std::vector<Question>& questions();

/// The question of this name, or nullptr.
[[nodiscard]] const Question* find_question(std::string_view name);

/// Throws Refused for an option that the question does not take, that it takes once and was given
/// twice, and for one that it needs and was not given.
void check_given(const Question& question, const Given& given);

} // namespace quoin::apps
