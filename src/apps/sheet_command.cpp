// Writing a sheet to a file of its owner's.
#include "sheet_command.hpp"

#include <memory>

#include <CLI/CLI.hpp>

#include <quoin/text/plain.hpp>

#include "commands.hpp"
#include "loading.hpp"
#include "typed_question.hpp"
#include "written_file.hpp"
#include <quoin/inquiry/asking.hpp>

namespace quoin::apps {
namespace {

struct Options {
    TypedQuestion typed{*find_question("sheet")};
    std::string output;
    bool force = false;
};

void write_sheet(const Options& options, const std::string& rates) {
    check_ending("--output", options.output, {".html", ".htm"});
    const auto loaded = load_inquiry(options.typed.file, rates);
    const Asked asked = options.typed.asked_of(loaded->desk, loaded->inquiry);
    write_file(options.output, options.typed.question.text(asked, Form::html), options.force);
}

} // namespace

void add_sheet(CLI::App& command, Shared& shared) {
    const auto options = std::make_shared<Options>();
    add_inquiry(command, options->typed);
    command.add_option("-o,--output", options->output, "the file to write, FILE.html")->required();
    add_options(command, options->typed);
    command.add_flag("--force", options->force,
                     "replace a file of that name even if quoin did not write it");
    command.callback([options, &shared] {
        write_sheet(*options, shared.rates);
        shared.outcome.output =
            made_visible(options->output) + ": written, for you alone to read\n";
    });
}

} // namespace quoin::apps
