// Writing a sheet to a file of its owner's.
#include "sheet_command.hpp"

#include <memory>
#include <optional>

#include <CLI/CLI.hpp>

#include <quoin/render/sheet.hpp>

#include "asking.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "loading.hpp"

namespace quoin::apps {
namespace {

struct Options {
    std::string file;
    std::string output;
    std::string scenario;
};

/// The ending is asked for so that a slip cannot write over an inquiry or a price book.
void check_name(const std::string& output) {
    const auto ending = std::filesystem::path(output).extension();
    if (ending == ".html" || ending == ".htm") return;
    refuse_typed("--output", output, "a name that ends in .html");
}

void write_sheet(const Options& options, const std::string& rates) {
    check_name(options.output);
    const auto loaded = load_inquiry(options.file, rates);
    std::optional<std::size_t> scenario;
    if (!options.scenario.empty()) scenario = scenario_named(loaded->inquiry, options.scenario);
    write_private(options.output, html_of(sheet(loaded->sitting(), scenario)));
}

} // namespace

void add_sheet(CLI::App& command, Shared& shared) {
    const auto options = std::make_shared<Options>();
    command.add_option("INQUIRY", options->file, "the buyer's inquiry, a JSON file")->required();
    command.add_option("-o,--output", options->output, "the file to write, FILE.html")->required();
    command.add_option("--scenario", options->scenario,
                       "one scenario alone, with its costs and its calendar; all of them if none");
    command.callback([options, &shared] {
        write_sheet(*options, shared.rates);
        shared.outcome.output = options->output + ": written, for you alone to read\n";
    });
}

} // namespace quoin::apps
