// Options of the table of questions on the command line.
#include "typed_question.hpp"

#include <algorithm>
#include <cctype>

#include <CLI/CLI.hpp>

#include "interruption.hpp"

namespace quoin::apps {
namespace {

std::string upper(std::string_view name) {
    std::string text(name);
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::toupper(letter)); });
    return text;
}

CLI::Option* add_option(CLI::App& command, const QuestionOption& option, TypedQuestion& typed) {
    using enum QuestionOption::Kind;
    const std::string name = "--" + std::string(option.name);
    const std::string summary(option.summary);
    switch (option.kind) {
    case value:
    case needed:
        return command.add_option(name, typed.values[option.name], summary);
    case list:
        return command.add_option(name, typed.lists[option.name], summary)->delimiter(',');
    case rest:
    case needed_rest:
        return command.add_option(upper(option.name), typed.lists[option.name], summary);
    case flag:
        return command.add_flag(name, typed.flags[option.name], summary);
    }
    return nullptr;
}

} // namespace

Asked TypedQuestion::asked_of(const Desk& desk, const Inquiry& inquiry) const {
    Asked asked{desk, inquiry, {}, &not_interrupted()};
    for (const auto& [name, text] : values) {
        if (!text.empty()) asked.given.emplace(name, text);
    }
    for (const auto& [name, texts] : lists) {
        for (const std::string& text : texts) asked.given.emplace(name, text);
    }
    for (const auto& [name, holds] : flags) {
        if (holds) asked.given.emplace(name, "");
    }
    return asked;
}

Form TypedQuestion::form(bool json) const {
    if (!json && csv) return Form::csv;
    return json || !question.has(Form::text) ? question.forms.front() : Form::text;
}

void add_inquiry(CLI::App& command, TypedQuestion& typed) {
    command.add_option("INQUIRY", typed.file, "the buyer's inquiry, a JSON file")->required();
}

void add_options(CLI::App& command, TypedQuestion& typed) {
    for (const QuestionOption& option : typed.question.options) {
        CLI::Option* added = add_option(command, option, typed);
        if (option.is_needed()) added->required();
        if (!option.excludes.empty()) {
            added->excludes(command.get_option("--" + std::string(option.excludes)));
        }
    }
    if (typed.question.has(Form::csv)) {
        command.add_flag("--csv", typed.csv, "comma-separated values, for a spreadsheet");
    }
}

} // namespace quoin::apps
