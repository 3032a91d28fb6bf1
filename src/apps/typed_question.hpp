// A question of the table as a command: its options on the command line, and what was typed.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include <quoin/questions/questions.hpp>

namespace CLI {
class App;
}

namespace quoin::apps {

/// What was typed for a question; the command that it was typed for writes it here.
struct TypedQuestion {
    explicit TypedQuestion(const Question& asked) : question(asked) {}

    const Question& question;
    std::string file; ///< of the inquiry
    std::map<std::string_view, std::string> values;
    std::map<std::string_view, std::vector<std::string>> lists;
    std::map<std::string_view, bool> flags;
    bool csv = false;

    /// An interrupt ends it. `desk` must outlive what is asked.
    [[nodiscard]] Asked asked_of(const Desk& desk, const Inquiry& inquiry) const;
    /// Of those that can be printed.
    [[nodiscard]] Form form(bool json) const;
    /// Its answer in that form.
    [[nodiscard]] std::string text(const Desk& desk, const Inquiry& inquiry, bool json) const {
        return question.text(asked_of(desk, inquiry), form(json));
    }
};

/// The place of the inquiry's file.
void add_inquiry(CLI::App& command, TypedQuestion& typed);
/// The options that the table has, and --csv where it says so.
void add_options(CLI::App& command, TypedQuestion& typed);

} // namespace quoin::apps
