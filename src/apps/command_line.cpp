// Running a command, and every way it can end.
#include "command_line.hpp"

#include <algorithm>
#include <sstream>

#include <CLI/CLI.hpp>

#include "commands.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/text/findings.hpp>

namespace quoin::apps {
namespace {

const char* const description =
    "quoin prices a new home (plan, elevation, lot, options) and carries that price, exact to the "
    "cent,\nthrough every loan program a buyer might use.";

const char* const footer =
    "Exit codes: 0 done, 1 the input is wrong, 2 wrong use, 3 a fault of the program.\n"
    "'quoin COMMAND --help' explains a command with an example.";

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

/// Help and version go to standard output and are no mistake; everything else is wrong use.
Result parse_ended(const CLI::App& program, const CLI::ParseError& error) {
    std::ostringstream out;
    std::ostringstream errors;
    const bool asked = program.exit(error, out, errors) == 0;
    return {asked ? done : use_wrong, out.str(), errors.str()};
}

Result fault_of(const std::string& what) {
    return {fault, {}, "quoin: a fault of the program, not of your input: " + what + "\n"};
}

} // namespace

Result run(const std::vector<std::string>& arguments) {
    CLI::App program(description, "quoin");
    Shared shared;
    try {
        set_up(program, shared);
        std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
        program.parse(std::move(reversed)); // CLI11 takes them from the back
        const Outcome& outcome = shared.outcome;
        return {outcome.input_sound ? done : input_wrong, outcome.output, outcome.errors};
    } catch (const CLI::ParseError& error) {
        return parse_ended(program, error);
    } catch (const Refused& refused) {
        const Findings& findings = refused.findings();
        return {input_wrong, {}, shared.json ? json_text_of(findings) : text_of(findings)};
    } catch (const Overflow& error) {
        return {input_wrong,
                {},
                std::string("quoin: figures too large to count: ") + error.what() + "\n"};
    } catch (const std::exception& error) {
        return fault_of(error.what());
    }
}

} // namespace quoin::apps
