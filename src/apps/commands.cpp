// The commands: what each asks for, how it is explained, which answer it gives.
#include "commands.hpp"

#include <fmt/format.h>

#include <memory>
#include <optional>

#include <CLI/CLI.hpp>

#include "asking.hpp"
#include "loading.hpp"
#include <quoin/answers/adds.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/fit.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/payment.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/answers/tour.hpp>
#include <quoin/render/adds.hpp>
#include <quoin/render/apr.hpp>
#include <quoin/render/cash.hpp>
#include <quoin/render/compare.hpp>
#include <quoin/render/credit.hpp>
#include <quoin/render/fit.hpp>
#include <quoin/render/format.hpp>
#include <quoin/render/later.hpp>
#include <quoin/render/listing.hpp>
#include <quoin/render/month_by_month.hpp>
#include <quoin/render/payment.hpp>
#include <quoin/render/programs.hpp>
#include <quoin/render/quote.hpp>
#include <quoin/render/recheck.hpp>
#include <quoin/render/shift.hpp>
#include <quoin/render/shown.hpp>
#include <quoin/render/site.hpp>
#include <quoin/render/tour.hpp>
#include <quoin/render/workbook.hpp>
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

CLI::App* inquiry_command(CLI::App& program, const std::string& name, const std::string& what,
                          const std::string& example, std::string& file) {
    CLI::App* sub = command(program, name, what, example);
    sub->add_option("INQUIRY", file, "the buyer's inquiry, a JSON file")->required();
    return sub;
}

void add_quote(CLI::App& program, Shared& shared) {
    const auto file = options_of<std::string>();
    inquiry_command(program, "quote", "The priced home line by line, and the month of each loan",
                    "quoin quote buyer.json", *file)
        ->callback([file, &shared] {
            const auto loaded = load_inquiry(*file, shared.rates);
            const QuoteAnswer answer = quote(loaded->sitting());
            shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
        });
}

void add_adds(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::vector<std::string> asked;
        bool by_part = false;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "adds", "What each option adds: price, month, cash, years; alone and stacked",
        "quoin adds buyer.json deck kitchen-counters:quartz can-lights=6", options->file);
    sub->add_option("OPTION", options->asked,
                    "options to ask about, as ID, ID:LEVEL or ID=NUMBER; all of them if none");
    sub->add_flag("--by-part", options->by_part,
                  "the month by part, cash and years for each option");
    sub->callback([options, &shared] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        const std::vector<Pick> picks = picks_named(loaded->desk.book, options->asked);
        const AddsAnswer answer = adds(loaded->sitting(), picks);
        const bool by_part = options->by_part || !picks.empty();
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer, by_part);
    });
}

void add_cash(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::string scenario;
        std::string appraised;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "cash", "What cash a loan takes: costs, prepaids, escrow, credits, and when",
        "quoin cash buyer.json --scenario \"FHA, 3.5 % down\" --appraised 455000", options->file);
    sub->add_option("--scenario", options->scenario, "the scenario's name in the inquiry")
        ->required();
    sub->add_option("--appraised", options->appraised, "if it appraises at this, in dollars");
    sub->callback([options, &shared] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        const std::size_t scenario = scenario_named(loaded->inquiry, options->scenario);
        if (!options->appraised.empty()) {
            loaded->inquiry.facts.appraised_value = appraised_value(options->appraised);
        }
        const CashAnswer answer = cash(loaded->sitting(), scenario);
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_credit(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::string amount;
        std::string scenario;
        std::string years;
        bool instead = false;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "credit", "What a builder's money does: off the price, costs, points, a buydown",
        "quoin credit buyer.json --amount 10000 --years 5", options->file);
    sub->add_option("--amount", options->amount, "the builder's money, in dollars")->required();
    sub->add_option("--scenario", options->scenario, "one scenario alone; all of them if none");
    sub->add_option("--years", options->years, "years to look for the least cost over; 7 if none");
    sub->add_flag("--instead", options->instead,
                  "in place of the incentives that the inquiry uses, not on top of them");
    sub->callback([options, &shared] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        if (options->instead) loaded->inquiry.selection.incentives.clear();
        Sitting sitting = loaded->sitting();
        if (!options->scenario.empty()) {
            sitting = sitting.only(scenario_named(loaded->inquiry, options->scenario));
        }
        const CreditAsk ask = credit_ask(sitting, options->amount, options->years);
        const CreditAnswer answer = credit(sitting, ask);
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_shift(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::string scenario;
        std::string steps;
        std::string step;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "shift", "What can move before the closing: the rate, the price, the appraisal",
        "quoin shift buyer.json --scenario \"FHA, 3.5 % down\" --steps 6", options->file);
    sub->add_option("--scenario", options->scenario, "one scenario alone; all of them if none");
    sub->add_option("--steps", options->steps, "steps of the rate each way; 4 if none");
    sub->add_option("--step", options->step, "percentage points of a step; 0.125 if none");
    sub->callback([options, &shared] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        Sitting sitting = loaded->sitting();
        if (!options->scenario.empty()) {
            sitting = sitting.only(scenario_named(loaded->inquiry, options->scenario));
        }
        const ShiftAnswer answer = shift(sitting, shift_ask(options->steps, options->step));
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_recheck(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::string scenario;
        std::string workbook;
        bool force = false;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "recheck", "Each figure with its formula, inputs, rounding, rule, date and source",
        "quoin recheck buyer.json --scenario \"FHA, 3.5 % down\" --workbook check.xlsx",
        options->file);
    sub->add_option("--scenario", options->scenario, "the scenario's name in the inquiry")
        ->required();
    sub->add_option("--workbook", options->workbook,
                    "also write the figures as live formulas to this .xlsx file");
    sub->add_flag("--force", options->force,
                  "replace a file of that name even if quoin did not write it");
    sub->callback([options, &shared] {
        if (!options->workbook.empty()) check_ending("--workbook", options->workbook, {".xlsx"});
        const auto loaded = load_inquiry(options->file, shared.rates);
        const std::size_t scenario = scenario_named(loaded->inquiry, options->scenario);
        const RecheckAnswer answer = recheck(loaded->sitting(), scenario);
        if (!options->workbook.empty()) {
            if (!answer.scenario.available()) refuse(problems::scenario_barred(options->scenario));
            write_file(options->workbook, xlsx_bytes(workbook_of(answer)), options->force);
        }
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_compare(CLI::App& program, Shared& shared) {
    const auto file = options_of<std::string>();
    inquiry_command(program, "compare", "The scenarios side by side on the same home",
                    "quoin compare buyer.json", *file)
        ->callback([file, &shared] {
            const auto loaded = load_inquiry(*file, shared.rates);
            const CompareAnswer answer = compare(loaded->sitting());
            shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
        });
}

void add_later(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::vector<std::string> asked;
        LaterText text;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "later", "An option from the builder, financed or in cash, or after closing",
        "quoin later buyer.json deck:composite --loan-rate 11.5 --loan-months 60", options->file);
    sub->add_option("OPTION", options->asked, "options, as ID, ID:LEVEL or ID=NUMBER")->required();
    sub->add_option("--month", options->text.month,
                    "the payment of the loan with which it is done, 1 to 120; 1 if not said");
    sub->add_option("--loan-rate", options->text.loan_rate,
                    "on a personal loan or card: its yearly rate, in percent");
    sub->add_option("--loan-months", options->text.loan_months, "and its months, 1 to 240");
    sub->callback([options, &shared] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        const std::vector<Pick> picks = picks_named(loaded->desk.book, options->asked);
        const LaterAnswer answer = later(loaded->sitting(), picks, later_facts(options->text));
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_shown(CLI::App& program, Shared& shared) {
    const auto file = options_of<std::string>();
    inquiry_command(program, "shown",
                    "What the furnished model shows, against what is included and chosen",
                    "quoin shown buyer.json", *file)
        ->callback([file, &shared] {
            const auto loaded = load_inquiry(*file, shared.rates);
            const auto answer = shown(loaded->sitting());
            if (!answer) refuse(problems::no_model(loaded->desk.book.file));
            shared.outcome.output = shared.json ? json_text_of(*answer) : text_of(*answer);
        });
}

/// A question whose figures are under one way to pay.
template <class Ask>
void add_under_one(CLI::App& program, Shared& shared, const char* name, const char* what,
                   const char* example, Ask ask) {
    struct Options {
        std::string file;
        std::string scenario;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(program, name, what, example, options->file);
    sub->add_option("--scenario", options->scenario,
                    "the way to pay that the figures are under; the inquiry's first if not given");
    sub->callback([options, &shared, ask] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        const std::size_t scenario = scenario_or_first(loaded->inquiry, options->scenario);
        const auto answer = ask(loaded->sitting(), scenario);
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_tour(CLI::App& program, Shared& shared) {
    add_under_one(program, shared, "tour",
                  "The home area by area: what comes with it, what a touch adds a month",
                  "quoin tour buyer.json --scenario \"FHA, 3.5 % down\"", tour);
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

/// Searches, shows how far it is, and stops at the first interrupt with the best so far.
FitAnswer fit_watched(const Sitting& sitting, const FitQuestion& question, bool progress,
                      Outcome& outcome) {
    ProgressLine line(progress);
    const FitAnswer answer = fit(sitting, question, [&](const FitProgress& now) {
        if (line.is_due()) line.write(progress_text(now));
        return !Interruption::asked();
    });
    if (Interruption::asked()) {
        outcome.errors = "quoin: the search was stopped; where it was not done, the best so far is "
                         "given\n  with the most that any other choice could be worth\n";
    }
    return answer;
}

void add_fit(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::string monthly;
        std::string cash;
        std::string scenario;
        std::string nodes;
        bool lots = false;
        bool progress = false;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "fit", "Which wishes fit within a month and the cash: the most worth, proven",
        "quoin fit buyer.json --monthly 2150 --cash 24000 --lots", options->file);
    sub->add_option("--monthly", options->monthly, "what a month may come to, in dollars")
        ->required();
    sub->add_option("--cash", options->cash, "all the cash there is, deposits among it, in dollars")
        ->required();
    sub->add_option("--scenario", options->scenario,
                    "the scenario's name in the inquiry; each of them if not given");
    sub->add_flag("--lots", options->lots, "on every free lot that the plan fits");
    sub->add_option("--nodes", options->nodes,
                    "how many choices each search may look into before it stops; 2000000 if not "
                    "given");
    sub->add_flag(
        "--progress", options->progress,
        "show on standard error how far a long search is, also where that is no terminal; "
        "Ctrl-C stops it with the best so far");
    sub->callback([options, &shared] {
        FitQuestion question;
        question.limits = {limit_given("--monthly", options->monthly),
                           limit_given("--cash", options->cash)};
        question.lots = options->lots;
        if (!options->nodes.empty()) question.nodes = nodes_given(options->nodes);
        const auto loaded = load_inquiry(options->file, shared.rates);
        if (!options->scenario.empty()) {
            question.scenario = scenario_named(loaded->inquiry, options->scenario);
        }
        const FitAnswer answer = fit_watched({loaded->desk, loaded->inquiry}, question,
                                             options->progress, shared.outcome);
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

void add_site(CLI::App& program, Shared& shared) {
    add_under_one(program, shared, "site", "The lots and plans, and what another one would change",
                  "quoin site buyer.json --scenario \"FHA, 3.5 % down\"", site);
}

void add_programs(CLI::App& program, Shared& shared) {
    const auto file = options_of<std::string>();
    inquiry_command(program, "programs", "The loan programs and rates that the inquiry can use",
                    "quoin programs buyer.json", *file)
        ->callback([file, &shared] {
            const auto loaded = load_inquiry(*file, shared.rates);
            const ProgramsAnswer answer = programs(loaded->sitting());
            shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
        });
}

void add_schedule(CLI::App& program, Shared& shared) {
    struct Options {
        std::string file;
        std::string scenario;
        std::string extra;
        std::vector<std::string> indexes;
        bool worst_case = false;
        bool csv = false;
    };
    const auto options = options_of<Options>();
    CLI::App* sub = inquiry_command(
        program, "schedule", "A loan month by month, with mortgage insurance and extra principal",
        "quoin schedule buyer.json --scenario \"FHA, 3.5 % down\" --extra 150", options->file);
    sub->add_option("--scenario", options->scenario, "the scenario's name in the inquiry")
        ->required();
    sub->add_option("--extra", options->extra, "extra principal each month, in dollars");
    CLI::Option* index =
        sub->add_option("--index", options->indexes,
                        "adjustable rates: the index at each change, in percent; the last stays")
            ->delimiter(',');
    sub->add_flag("--worst-case", options->worst_case,
                  "adjustable rates: every change as high as the caps let it be")
        ->excludes(index);
    sub->add_flag("--csv", options->csv, "comma-separated values, for a spreadsheet");
    sub->callback([options, &shared] {
        const auto loaded = load_inquiry(options->file, shared.rates);
        const std::size_t scenario = scenario_named(loaded->inquiry, options->scenario);
        const RunAs run = run_as(loaded->sitting(), scenario,
                                 {options->extra, options->indexes, options->worst_case});
        const MonthByMonthAnswer answer = month_by_month(loaded->sitting(), scenario, run);
        shared.outcome.output = shared.json    ? json_text_of(answer)
                                : options->csv ? csv_of(answer)
                                               : text_of(answer);
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
    add_quote(program, shared);
    add_adds(program, shared);
    add_compare(program, shared);
    add_cash(program, shared);
    add_credit(program, shared);
    add_shift(program, shared);
    add_recheck(program, shared);
    add_afford(*command(program, "afford",
                        "The highest price that income, debts, cash and the programs allow",
                        "quoin afford buyer.json --reserves 2\n"
                        "  quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25"),
               shared);
    add_later(program, shared);
    add_shown(program, shared);
    add_schedule(program, shared);
    add_tour(program, shared);
    add_fit(program, shared);
    add_site(program, shared);
    add_programs(program, shared);
    add_payment(program, shared);
    add_apr(program, shared);
    add_check(program, shared);
    add_list(program, shared);
    add_sheet(*command(program, "sheet", "What the buyer takes home: one HTML file to print",
                       "quoin sheet buyer.json -o sheet.html"),
              shared);
    add_serve(*command(program, "serve", "The page and the questions on this machine, in a browser",
                       "quoin serve --open"),
              shared);
}

} // namespace quoin::apps
