// Writing a sheet to a file of its owner's.
#include "sheet_command.hpp"

#include <memory>
#include <optional>

#include <CLI/CLI.hpp>

#include <quoin/render/sheet.hpp>
#include <quoin/text/plain.hpp>

#include "asking.hpp"
#include "commands.hpp"
#include "loading.hpp"
#include "written_file.hpp"

namespace quoin::apps {
namespace {

struct Options {
    std::string file;
    std::string output;
    std::string scenario;
    bool force = false;
};

void write_sheet(const Options& options, const std::string& rates) {
    check_ending("--output", options.output, {".html", ".htm"});
    const auto loaded = load_inquiry(options.file, rates);
    std::optional<std::size_t> scenario;
    if (!options.scenario.empty()) scenario = scenario_named(loaded->inquiry, options.scenario);
    write_file(options.output, html_of(sheet(loaded->sitting(), scenario)), options.force);
}

} // namespace

void add_sheet(CLI::App& command, Shared& shared) {
    const auto options = std::make_shared<Options>();
    command.add_option("INQUIRY", options->file, "the buyer's inquiry, a JSON file")->required();
    command.add_option("-o,--output", options->output, "the file to write, FILE.html")->required();
    command.add_option("--scenario", options->scenario,
                       "one scenario alone, with its costs and its calendar; all of them if none");
    command.add_flag("--force", options->force,
                     "replace a file of that name even if quoin did not write it");
    command.callback([options, &shared] {
        write_sheet(*options, shared.rates);
        shared.outcome.output =
            made_visible(options->output) + ": written, for you alone to read\n";
    });
}

} // namespace quoin::apps
