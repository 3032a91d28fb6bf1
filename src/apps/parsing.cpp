// Parsing through CLI11, which also writes the help: the one file that knows it, since it takes
// seconds to compile.
#include "parsing.hpp"

#include <algorithm>
#include <cctype>
#include <deque>
#include <sstream>

#include <CLI/CLI.hpp>

#include <quoin/text/findings.hpp>
#include <quoin/text/plain.hpp>

#include <quoin/render/table.hpp>

#include "commands.hpp"
#include "terminal.hpp"

namespace quoin::apps {
namespace {

const char* const description =
    "quoin prices a new home (plan, elevation, lot, options) and carries that price, exact to the "
    "cent,\nthrough every loan program a buyer might use.";

const char* const footer =
    "Exit codes: 0 done, 1 the input is wrong, 2 the command is wrong, 3 a fault of "
    "the program, 130 stopped.\n"
    "'quoin COMMAND --help' explains a command with an example.\n";

std::string upper(std::string_view name) {
    std::string text(name);
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::toupper(letter)); });
    return text;
}

std::string dashed(const CommandOption& option) {
    const std::string name = "--" + std::string(option.name);
    return option.letter.empty() ? name : "-" + std::string(option.letter) + "," + name;
}

/// An option as CLI11 knows it, and where it writes what was typed.
struct Slot {
    const CommandOption* option;
    std::string text;
    std::vector<std::string> texts;
    int number = 0;
    bool holds = false;
    CLI::Option* added = nullptr;

    void add_to(CLI::App& command);
    void take(Given& given) const;
};

void Slot::add_to(CLI::App& command) {
    using enum QuestionOption::Kind;
    const CommandOption& o = *option;
    const std::string summary(o.summary);
    switch (o.kind) {
    case value:
    case needed:
        added = o.number ? command.add_option(dashed(o), number, summary)
                         : command.add_option(dashed(o), text, summary);
        break;
    case list:
        added = command.add_option(dashed(o), texts, summary);
        if (o.commas_split) added->delimiter(',');
        break;
    case rest:
    case needed_rest:
        added = command.add_option(upper(o.name), texts, summary);
        break;
    case place:
    case needed_place:
        added = command.add_option(upper(o.name), text, summary);
        break;
    case flag:
        added = command.add_flag(dashed(o), holds, summary);
        break;
    }
    if (o.number) {
        number = o.number->usual;
        added->capture_default_str()->check(
            CLI::Range(o.number->least, o.number->most).description(""));
    }
    if (!o.words.empty()) {
        added->check(CLI::IsMember(std::vector<std::string>(o.words.begin(), o.words.end())));
    }
    if (o.is_needed()) added->required();
    if (!o.excludes.empty()) {
        added->excludes(command.get_option("--" + std::string(o.excludes)));
    }
}

void Slot::take(Given& given) const {
    const std::string name(option->name);
    if (option->number) {
        given.emplace(name, std::to_string(number));
    } else if (option->kind == QuestionOption::Kind::flag) {
        if (holds) given.emplace(name, "");
    } else if (option->is_repeated()) {
        for (const std::string& each : texts) given.emplace(name, each);
    } else if (added->count() > 0) {
        given.emplace(name, text);
    }
}

/// A command as CLI11 knows it.
struct Sub {
    const Command* command;
    std::deque<Slot> slots; // CLI11 keeps where they are
    CLI::App* app = nullptr;

    void add(CLI::App& to, const std::vector<CommandOption>& options) {
        for (const CommandOption& option : options) {
            slots.emplace_back(Slot{&option, {}, {}}).add_to(to);
        }
    }
};

void add_command(CLI::App& program, Sub& sub) {
    const Command& command = *sub.command;
    sub.app = program.add_subcommand(std::string(command.name), std::string(command.summary));
    sub.app->footer("Example:\n  " + std::string(command.example) +
                    "\n\n--json, --language, --width and --rates work with every command; "
                    "'quoin --help' explains them.\n");
    sub.app->fallthrough(); // those may stand on either side of the command's name
    sub.add(*sub.app, command.options);
    if (!command.group) return;
    CLI::Option_group* group = sub.app->add_option_group(std::string(command.group->name),
                                                         std::string(command.group->about));
    sub.add(*group, command.group->options);
    if (command.group->just_one) group->require_option(1);
}

/// The command asked for, or the word that stands where it should; empty where there is none.
std::string command_word(const std::vector<std::string>& arguments) {
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string& word = arguments[i];
        if (word == "--rates" || word == "--language" || word == "--width") {
            ++i; // its value
        } else if (!arguments[i].empty() && arguments[i].front() != '-') {
            return arguments[i];
        }
    }
    return {};
}

std::string use_message(const std::vector<std::string>& arguments, const std::string& what) {
    std::vector<std::string> names;
    for (const Command& command : commands()) names.emplace_back(command.name);
    const std::string word = command_word(arguments);
    if (std::find(names.begin(), names.end(), word) != names.end()) {
        return "quoin " + word + ": " + what + "\n  'quoin " + word +
               " --help' explains it with an example\n";
    }
    const std::string near = nearest(word, names);
    std::string message =
        word.empty() ? "quoin: " + what + "\n" : "quoin: no command \"" + word + "\"\n";
    if (!near.empty()) message += "  did you mean \"" + near + "\"?\n";
    return message + "  'quoin --help' lists the commands\n";
}

std::vector<std::string> options_of(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::Option* option : app.get_options()) {
        for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
    }
    for (const CLI::App* group : app.get_subcommands([](const CLI::App* each) {
             return each->get_name().empty(); // a group of options, no command
         })) {
        for (std::string& name : options_of(*group)) names.push_back(std::move(name));
    }
    return names;
}

/// The first of the words that begins like an option and is none of these, and the option nearest
/// to it; empty where there is no such word.
std::string option_unknown(const std::vector<std::string>& words,
                           const std::vector<std::string>& options) {
    for (const std::string& word : words) {
        const std::string name = word.substr(0, word.find('='));
        if (name.size() < 3 || name.rfind("--", 0) != 0) continue;
        if (std::find(options.begin(), options.end(), name) != options.end()) continue;
        const std::string near = nearest(name, options);
        return "no option \"" + name + "\"" +
               (near.empty() ? "" : "\n  did you mean \"" + near + "\"?");
    }
    return {};
}

/// What is wrong in the library's words, but for a misspelled option: those name every word that
/// was left over, and not the one meant.
std::string what_is_wrong(const CLI::App& program, const std::vector<std::string>& arguments,
                          const CLI::ParseError& error) {
    std::vector<std::string> options = options_of(program);
    const std::string word = command_word(arguments);
    for (const CLI::App* command : program.get_subcommands([](const CLI::App*) { return true; })) {
        if (command->get_name() != word) continue;
        for (std::string& name : options_of(*command)) options.push_back(std::move(name));
    }
    const std::string unknown = option_unknown(arguments, options);
    return unknown.empty() ? error.what() : unknown;
}

/// "en (English) or es (español)"
std::string languages() {
    std::string all;
    for (const auto& language : codes<Language>) {
        all += (all.empty() ? "" : " or ") + std::string(language.code) + " (" +
               std::string(language.word) + ")";
    }
    return all;
}

std::string widths() {
    return "lines of text so many columns wide, " + std::to_string(narrowest) + " to " +
           std::to_string(widest) + "; if not given, as wide as the terminal, or " +
           std::to_string(usual_width) + " where there is none";
}

/// Help and version go to standard output and are no mistake; everything else is wrong use.
Result parse_ended(const CLI::App& program, const std::vector<std::string>& arguments,
                   const CLI::ParseError& error) {
    std::ostringstream out;
    std::ostringstream errors;
    if (program.exit(error, out, errors) == 0) return {done, out.str(), errors.str()};
    return wrong_use(arguments, what_is_wrong(program, arguments, error));
}

} // namespace

Result wrong_use(const std::vector<std::string>& arguments, const std::string& what) {
    return {use_wrong, {}, made_visible(use_message(arguments, what), "\n")};
}

std::optional<Result> parse(const std::vector<std::string>& arguments, Typed& typed) {
    CLI::App program(description, "quoin");
    program.footer(footer);
    program.set_version_flag("--version", std::string("quoin ") + QUOIN_VERSION);
    program.add_flag("--json", typed.json, "answer in JSON");
    program.add_option(
        "--rates", typed.rates,
        "folder with programs/, sheets/ and places/ (if not given, $QUOIN_RATES or the "
        "data that came with the program)");
    std::string language;
    program.add_option("--language", language, "answer in this language: " + languages())
        ->check(CLI::IsMember(language_codes()).description(""));
    int width = 0;
    CLI::Option* wide = program.add_option("--width", width, widths());
    wide->check(CLI::Range(narrowest, widest).description(""));
    program.require_subcommand(1);
    std::deque<Sub> subs;
    for (const Command& command : commands())
        add_command(program, subs.emplace_back(Sub{&command, {}}));
    try {
        std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
        program.parse(std::move(reversed)); // CLI11 takes them from the back
    } catch (const CLI::ParseError& error) {
        return parse_ended(program, arguments, error);
    }
    typed.language = meaning_in(codes<Language>, language).value_or(typed.language);
    if (wide->count() > 0) typed.width = static_cast<std::size_t>(width);
    for (const Sub& sub : subs) {
        if (!sub.app->parsed()) continue;
        typed.command = sub.command;
        for (const Slot& slot : sub.slots) slot.take(typed.given);
    }
    if (int{typed.json} + int{typed.given.has("csv")} + int{typed.given.has("brief")} > 1) {
        return wrong_use(arguments, "an answer has one form: use one of --json, --csv and --brief");
    }
    return std::nullopt;
}

} // namespace quoin::apps
