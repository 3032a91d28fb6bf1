// A command as data: what can be typed for it, and what it then does.
//
// One table (commands.cpp) says of every command what this file names; parsing.cpp alone makes the
// command line and its help of it. What was typed comes back as `Given`, by the names of options.
#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/questions/questions.hpp>

namespace quoin::apps {

/// An option of a command: one of its question, or one that only the command line has.
struct CommandOption : QuestionOption {
    std::string_view letter = {};             ///< a short name, without its dash
    std::vector<std::string_view> words = {}; ///< it is one of these, where there are any
    /// Of a whole number: what it may be, and what it is where it is not typed.
    struct Number {
        int least;
        int most;
        int usual;
    };
    std::optional<Number> number = {};
    bool commas_split = true; ///< several values of a list may stand behind one name
};

/// Options under a heading of their own in the help.
struct OptionGroup {
    std::string_view name;
    std::string_view about;
    bool just_one = false; ///< exactly one of them must be given
    std::vector<CommandOption> options;
};

/// What a command leaves behind: text for standard output and standard error, and whether the input
/// was sound.
struct Outcome {
    std::string output = {};
    std::string errors = {};
    bool input_sound = true;
};

struct Command;
struct Whole;

/// What was typed for a command, and what stands beside every command.
struct Typed {
    const Command* command = nullptr;
    Given given; ///< with what was given as an empty text; a flag is there where it holds
    bool json = false;
    Language language = Language::english; ///< that answers and messages are told in
    /// Of a line of text, as typed or as the terminal has it.
    std::optional<std::size_t> width = {};
    std::string rates;            ///< a folder; empty: not said
    const Whole* whole = nullptr; ///< null: in the program that leaves some work to the whole one
};

struct Command {
    std::string_view name;
    std::string_view summary;
    std::string_view example;
    std::vector<CommandOption> options;
    std::optional<OptionGroup> group;
    /// Throws Refused, WrongUse and LeftToWhole.
    Outcome (*run)(const Typed& typed);
    const Question* question = nullptr; ///< that it asks, if any
};

/// Options that do not go together: told like any other mistake in using the command line.
struct WrongUse : std::runtime_error {
    using std::runtime_error::runtime_error;
};

} // namespace quoin::apps
