// The commands: what each asks for, how it is explained, which answer it gives.
#include "commands.hpp"

#include <fmt/format.h>

#include <memory>
#include <optional>

#include <CLI/CLI.hpp>

#include "loading.hpp"
#include "typed_question.hpp"
#include <quoin/answers/payment.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/apr.hpp>
#include <quoin/render/format.hpp>
#include <quoin/render/listing.hpp>
#include <quoin/render/payment.hpp>
#include <quoin/text/problems.hpp>

#include "afford_command.hpp"
#include "checking.hpp"
#include "interruption.hpp"
#include "progress_line.hpp"
#include "serve_command.hpp"
#include "sheet_command.hpp"
#include "workbook_file.hpp"
#include "written_file.hpp"

namespace quoin::apps {
namespace {

/// A command's own options live as long as the program does.
template <class Options>
std::shared_ptr<Options> options_of() {
    return std::make_shared<Options>();
}

CLI::App* command(CLI::App& program, const std::string& name, const std::string& what,
                  const std::string& example) {
    CLI::App* sub = program.add_subcommand(name, what);
    sub->footer(
        "Example:\n  " + example +
        "\n\n--json and --rates DIR go with every command; 'quoin --help' explains them.\n");
    sub->fallthrough(); // --json and --rates may stand on either side of the command's name
    return sub;
}

CLI::App* command(CLI::App& program, const Question& question) {
    return command(program, std::string(question.name), std::string(question.summary),
                   std::string(question.example));
}

void add_question(CLI::App& program, Shared& shared, const Question& question) {
    const auto typed = std::make_shared<TypedQuestion>(question);
    CLI::App* sub = command(program, question);
    add_inquiry(*sub, *typed);
    add_options(*sub, *typed);
    sub->callback([typed, &shared] {
        const auto loaded = load_inquiry(typed->file, shared.rates);
        shared.outcome.output = typed->text(loaded->desk, loaded->inquiry, shared.json);
    });
}

/// Writes the figures of a scenario to a workbook, too.
void add_recheck(CLI::App& program, Shared& shared, const Question& question) {
    struct Options {
        TypedQuestion typed;
        std::string workbook;
        bool force = false;
    };
    const auto options = std::make_shared<Options>(Options{TypedQuestion(question), {}, false});
    CLI::App* sub = command(program, question);
    add_inquiry(*sub, options->typed);
    add_options(*sub, options->typed);
    sub->add_option("--workbook", options->workbook,
                    "also write the figures as live formulas to this .xlsx file");
    sub->add_flag("--force", options->force,
                  "replace a file of that name even if quoin did not write it");
    sub->callback([options, &shared] {
        const TypedQuestion& typed = options->typed;
        if (!options->workbook.empty()) check_ending("--workbook", options->workbook, {".xlsx"});
        const auto loaded = load_inquiry(typed.file, shared.rates);
        if (!options->workbook.empty()) {
            const Told book =
                find_question("workbook")
                    ->told(typed.asked_of(loaded->desk, loaded->inquiry), Form::workbook);
            write_file(options->workbook, xlsx_bytes(std::get<Workbook>(book)), options->force);
        }
        shared.outcome.output = typed.text(loaded->desk, loaded->inquiry, shared.json);
    });
}

std::string stage_text(const FitProgress& progress) {
    const std::string worth = progress.worth.text();
    switch (progress.stage) {
    case FitStage::best:
        return fmt::format("{}, at most {}", progress.found ? "best worth " + worth : "none yet",
                           progress.most.text());
    case FitStage::cheapest:
        return "the cheapest worth " + worth;
    case FitStage::next:
        return "with another wish";
    case FitStage::nearest:
        return "nothing fits, the nearest miss";
    }
    return {};
}

/// "12,288 looked into, best worth 434.25, at most 440: lot 7, Conventional"
std::string progress_text(const FitProgress& progress) {
    return fmt::format("{} looked into, {}: lot {}, {}", grouped(Decimal::whole(progress.nodes)),
                       stage_text(progress), progress.lot, progress.scenario);
}

/// Shows how far it is, and stops at the first interrupt with the best so far.
void add_fit(CLI::App& program, Shared& shared, const Question& question) {
    struct Options {
        TypedQuestion typed;
        bool progress = false;
    };
    const auto options = std::make_shared<Options>(Options{TypedQuestion(question), false});
    CLI::App* sub = command(program, question);
    add_inquiry(*sub, options->typed);
    add_options(*sub, options->typed);
    sub->add_flag(
        "--progress", options->progress,
        "show on standard error how far a long search is, also where that is no terminal; "
        "Ctrl-C stops it with the best so far");
    sub->callback([options, &shared] {
        const TypedQuestion& typed = options->typed;
        const auto loaded = load_inquiry(typed.file, shared.rates);
        ProgressLine line(options->progress);
        Asked asked = typed.asked_of(loaded->desk, loaded->inquiry);
        asked.progress = [&](const FitProgress& now) {
            if (line.is_due()) line.write(progress_text(now));
            return !Interruption::asked();
        };
        shared.outcome.output = typed.question.text(std::move(asked), typed.form(shared.json));
        if (!Interruption::asked()) return;
        shared.outcome.errors =
            "quoin: the search was stopped; where it was not done, the best so far is "
            "given\n  with the most that any other choice could be worth\n";
    });
}

struct PaymentOptions {
    std::string loan;
    std::string rate;
    std::string years;
    std::string months;
};

/// The term from --years or --months, whichever is given.
Months term_from(const PaymentOptions& options) {
    if (options.years.empty()) {
        return Months(whole_typed("--months", options.months, 1, longest_term.count(), "months"));
    }
    return Months(12 *
                  whole_typed("--years", options.years, 1, longest_term.count() / 12, "years"));
}

LoanTerms terms_from(const PaymentOptions& options) {
    const Money loan =
        amount_typed("--loan", options.loan, Money{}, Money::dollars(9'000'000'000),
                     "dollars from 0 to 9,000,000,000 with at most two decimals, such as 250000");
    const Rate rate =
        rate_typed("--rate", options.rate, "a yearly percent from 0 to 100, such as 6.5");
    return {loan, rate, term_from(options)};
}

void add_payment(CLI::App& program, Shared& shared) {
    const auto options = options_of<PaymentOptions>();
    CLI::App* sub = command(program, "payment", "The quick answer with no files",
                            "quoin payment --loan 250000 --rate 6.5 --years 30");
    sub->add_option("--loan", options->loan, "the loan, in dollars")->required();
    sub->add_option("--rate", options->rate, "the yearly note rate, in percent")->required();
    CLI::Option_group* term = sub->add_option_group("term");
    term->add_option("--years", options->years, "the term in years, 1 to 40");
    term->add_option("--months", options->months, "the term in months, 1 to 480");
    term->require_option(1);
    sub->callback([options, &shared] {
        const PaymentAnswer answer = payment(terms_from(*options));
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_apr(CLI::App& program, Shared& shared) {
    const auto file = options_of<std::string>();
    CLI::App* sub =
        command(program, "apr", "The APR of plain advances and payments", "quoin apr problem.json");
    sub->add_option("FILE", *file, "the problem, a JSON file")->required();
    sub->callback([file, &shared] {
        const AprAnswer answer = load_apr(*file);
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_check(CLI::App& program, Shared& shared) {
    struct Options {
        std::vector<std::string> files;
        std::string as_of;
    };
    const auto options = options_of<Options>();
    CLI::App* sub =
        command(program, "check", "Validates price books, rates, places, programs and inquiries",
                "quoin check pricebook.json buyers/*.json");
    sub->add_option("FILE", options->files, "files to check")->required();
    sub->add_option("--as-of", options->as_of,
                    fmt::format("name the tables that end within {} days of this one; an "
                                "inquiry's own day, or today, if not given",
                                ending_days));
    sub->callback([options, &shared] {
        std::optional<Date> day;
        if (!options->as_of.empty()) day = day_typed("--as-of", options->as_of);
        std::vector<Checked> checked;
        for (const std::string& file : options->files) {
            checked.push_back(check_file(file, shared.rates, day));
        }
        shared.outcome = report(checked, shared.json);
    });
}

void add_list(CLI::App& program, Shared& shared) {
    struct Options {
        std::string what;
        std::string file;
        bool csv = false;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = command(program, "list", "Plans, lots or options of a price book",
                            "quoin list options pricebook.json");
    const std::map<std::string, Listing> lists = {
        {"plans", Listing::plans}, {"lots", Listing::lots}, {"options", Listing::options}};
    sub->add_option("WHAT", options->what, "plans, lots or options")
        ->required()
        ->check(CLI::IsMember({"plans", "lots", "options"}));
    sub->add_option("PRICEBOOK", options->file, "the price book, a JSON file")->required();
    sub->add_flag("--csv", options->csv, "comma-separated values, for a spreadsheet");
    sub->callback([options, lists, &shared] {
        const PriceBook book = load_price_book(options->file);
        const Listing what = lists.at(options->what);
        shared.outcome.output = shared.json    ? listing_json(book, what)
                                : options->csv ? listing_csv(book, what)
                                               : listing_text(book, what);
    });
}

} // namespace

void add_commands(CLI::App& program, Shared& shared) {
    for (const Question& question : questions()) {
        const std::string_view name = question.name;
        if (name == "workbook") continue; // recheck writes it
        if (name == "sheet") continue;    // further down
        if (name == "fit") {
            add_fit(program, shared, question);
        } else if (name == "recheck") {
            add_recheck(program, shared, question);
        } else if (name == "afford") {
            add_afford(*command(program, question), shared);
        } else {
            add_question(program, shared, question);
        }
    }
    add_payment(program, shared);
    add_apr(program, shared);
    add_check(program, shared);
    add_list(program, shared);
    add_sheet(*command(program, *find_question("sheet")), shared);
    add_serve(*command(program, "serve", "The page and the questions on this machine, in a browser",
                       "quoin serve --open"),
              shared);
}

} // namespace quoin::apps
