// Running a command, and every way it can end.
#include "command_line.hpp"

#include <algorithm>
#include <new>
#include <optional>
#include <sstream>

#include <CLI/CLI.hpp>

#include "commands.hpp"
#include "interruption.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/plain.hpp>

namespace quoin::apps {
namespace {

const char* const description =
    "quoin prices a new home (plan, elevation, lot, options) and carries that price, exact to the "
    "cent,\nthrough every loan program a buyer might use.";

const char* const footer = "Exit codes: 0 done, 1 the input is wrong, 2 wrong use, 3 a fault of "
                           "the program, 130 stopped.\n"
                           "'quoin COMMAND --help' explains a command with an example.\n";

void set_up(CLI::App& program, Shared& shared) {
    program.footer(footer);
    program.set_version_flag("--version", std::string("quoin ") + QUOIN_VERSION);
    program.add_flag("--json", shared.json, "answer in JSON");
    program.add_option("--rates", shared.rates,
                       "folder of programs/, sheets/ and places/ (else $QUOIN_RATES, else the data "
                       "that came with the program)");
    program.require_subcommand(1);
    add_commands(program, shared);
}

std::vector<std::string> command_names(const CLI::App& program) {
    std::vector<std::string> names;
    for (const CLI::App* command : program.get_subcommands(nullptr)) {
        names.push_back(command->get_name());
    }
    return names;
}

/// The command asked for, or the word that stands where it should; empty where there is none.
std::string command_word(const std::vector<std::string>& arguments) {
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        if (arguments[i] == "--rates") {
            ++i; // its folder
        } else if (!arguments[i].empty() && arguments[i].front() != '-') {
            return arguments[i];
        }
    }
    return {};
}

std::string use_message(const CLI::App& program, const std::vector<std::string>& arguments,
                        const std::string& what) {
    const std::vector<std::string> names = command_names(program);
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

/// Help and version go to standard output and are no mistake; everything else is wrong use.
Result parse_ended(const CLI::App& program, const std::vector<std::string>& arguments,
                   const CLI::ParseError& error) {
    std::ostringstream out;
    std::ostringstream errors;
    if (program.exit(error, out, errors) == 0) return {done, out.str(), errors.str()};
    return {use_wrong, {}, made_visible(use_message(program, arguments, error.what()), "\n")};
}

Result fault_of(const std::string& what) {
    return {fault, {}, "quoin: a fault of the program, not of your input: " + what + "\n"};
}

} // namespace

Result result_of(const std::function<void()>& work, const Shared& shared) {
    try {
        work();
        const Outcome& outcome = shared.outcome;
        return {outcome.input_sound ? done : input_wrong, outcome.output, outcome.errors};
    } catch (const Refused& refused) {
        const Findings& findings = refused.findings();
        return {input_wrong, {}, shared.json ? json_text_of(findings) : text_of(findings)};
    } catch (const Stopped&) {
        return {stopped, {}, "quoin: stopped before there was an answer\n"};
    } catch (const Overflow& error) {
        return {input_wrong,
                {},
                std::string("quoin: figures too large to count: ") + error.what() + "\n"};
    } catch (const std::bad_alloc&) {
        return fault_of("there is not enough memory");
    } catch (const std::exception& error) {
        return fault_of(error.what());
    } catch (...) {
        return fault_of("something that says no more of itself");
    }
}

Result run(const std::vector<std::string>& arguments) {
    CLI::App program(description, "quoin");
    Shared shared;
    const Interruption interruption;
    std::optional<Result> in_parsing; // help, version and wrong use
    const auto work = [&] {
        try {
            set_up(program, shared);
            std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
            program.parse(std::move(reversed)); // CLI11 takes them from the back
        } catch (const CLI::ParseError& error) {
            in_parsing = parse_ended(program, arguments, error);
        }
    };
    Result result = result_of(work, shared);
    return in_parsing ? std::move(*in_parsing) : result;
}

} // namespace quoin::apps
