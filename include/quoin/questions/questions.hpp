// The questions: one table of what can be asked about an inquiry, and in which forms it is
// answered.
//
// The command line makes its commands of it, the server its routes and their description.
//
//   const Question* question = find_question("adds");
//   question->text({desk, inquiry, {{"option", "deck"}}}, Form::json)
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <quoin/answers/fit.hpp>
#include <quoin/inquiry/sitting.hpp>
#include <quoin/render/shape.hpp>
#include <quoin/render/workbook.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Options as they were given: by name, a repeated one in its order.
struct Given : std::multimap<std::string, std::string, std::less<>> {
    using multimap::multimap;

    [[nodiscard]] bool has(std::string_view option) const { return contains(option); }
    /// Empty where it was not given.
    [[nodiscard]] std::string one(std::string_view option) const;
    [[nodiscard]] std::vector<std::string> all(std::string_view option) const;
};

struct QuestionOption {
    enum class Kind {
        value,
        needed,      ///< a value that must be given
        list,        ///< any number of values
        rest,        ///< likewise; on the command line by their place, not by name
        needed_rest, ///< at least one of them
        place,       ///< one value; on the command line by its place, not by name
        needed_place,
        flag, ///< holds by being there, whatever its value
    };
    /// Who may give it: whoever asks, or nobody but the command line.
    enum class By { anybody, command };

    std::string_view name; ///< without dashes
    std::string_view summary;
    Kind kind = Kind::value;
    By by = By::anybody;
    std::string_view excludes = {}; ///< another option of the question: one of them at most

    [[nodiscard]] bool is_repeated() const {
        return kind == Kind::list || kind == Kind::rest || kind == Kind::needed_rest;
    }
    [[nodiscard]] bool is_needed() const {
        return kind == Kind::needed || kind == Kind::needed_rest || kind == Kind::needed_place;
    }
};

/// How an answer is told. Every question has the first of its forms.
enum class Form {
    json,
    text,
    brief, ///< text, a line for each loan
    csv,
    html,
    workbook
};

/// Everything that a question is asked with.
struct Asked {
    const Desk& desk;
    Inquiry inquiry;
    Given given;
    const Watch* watch = nullptr; ///< that ends it: Stopped is thrown, but by "fit"
    /// What was assumed of a home that no price book has, in words: "afford" says it.
    std::vector<std::string> assumptions = {};
    /// Told how far "fit" is; false ends it with the best so far.
    std::function<bool(const FitProgress&)> progress = {};
    Language language = Language::english; ///< that the answer is told in
    /// Of a line of text, where somebody says it: else text is laid out on lines of the usual
    /// width, and what is brief is not broken at all.
    std::optional<std::size_t> width = {};

    [[nodiscard]] Sitting sitting() const { return {desk, inquiry, watch}; }
    [[nodiscard]] bool has(std::string_view option) const { return given.has(option); }
    [[nodiscard]] std::string one(std::string_view option) const { return given.one(option); }
    [[nodiscard]] std::vector<std::string> all(std::string_view option) const {
        return given.all(option);
    }
};

using Told = std::variant<std::string, Workbook>;

struct Question {
    std::string_view name; ///< of the command, too
    std::string_view summary;
    std::string_view example; ///< of the command's options
    std::vector<QuestionOption> options;
    std::vector<Form> forms; ///< the first is what a server answers with
    /// Throws Refused. Precondition: the inquiry was read against the desk, the options were
    /// checked against `options`, the form is one of `forms`.
    Told (*told)(Asked asked, Form form);
    const Shape& (*shape)() = nullptr; ///< of its JSON; nullptr where it has none
    bool draws = false;                ///< it looks at the drawings of the desk

    [[nodiscard]] bool has(Form form) const;
    /// In any form but a workbook.
    [[nodiscard]] std::string text(Asked asked, Form form) const;
};

/// A rechecked scenario as a workbook. Throws Refused where the scenario cannot be had.
[[nodiscard]] Workbook workbook_told(const RecheckAnswer& answer);

/// In the order they are listed in.
[[nodiscard]] const std::vector<Question>& questions();

/// The question of this name, or nullptr.
[[nodiscard]] const Question* find_question(std::string_view name);

} // namespace quoin
