// The commands: what each asks for, how it is explained, which answer it gives.
#include "commands.hpp"

#include <algorithm>

#include <fmt/format.h>

#include <quoin/answers/apr.hpp>
#include <quoin/answers/payment.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/exact/broken.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/inquiry/typed.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/glossary.hpp>
#include <quoin/render/listing.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/words/catalogue.hpp>
#include <quoin/words/figures.hpp>

#include "checked.hpp"
#include "checking.hpp"
#include "clock.hpp"
#include "interruption.hpp"
#include "loading.hpp"
#include "plain_afford.hpp"
#include "progress_line.hpp"
#include "whole.hpp"
#include "words/apps.hpp"
#include "written_file.hpp"

namespace quoin::apps {
namespace {

using enum QuestionOption::Kind;

// What a question is asked with, and how its answer is told.

const Catalogue& say_of(const Typed& typed) { return catalogue_in(typed.language); }

Asked asked_of(const Typed& typed, const Desk& desk, const Inquiry& inquiry) {
    Asked asked{desk, inquiry, {}, &not_interrupted()};
    asked.language = typed.language;
    asked.width = typed.width;
    for (const QuestionOption& option : typed.command->question->options) {
        for (std::string& text : typed.given.all(option.name)) {
            const bool counts = option.is_repeated() || option.kind == flag || !text.empty();
            if (counts) asked.given.emplace(option.name, std::move(text));
        }
    }
    return asked;
}

/// Of the forms that can be printed.
Form form_of(const Typed& typed) {
    const Question& question = *typed.command->question;
    if (typed.given.has("csv")) return Form::csv;
    if (typed.given.has("brief")) return Form::brief;
    return typed.json || !question.has(Form::text) ? question.forms.front() : Form::text;
}

std::string laid_out(const Blocks& text, const Typed& typed) {
    return text.text(typed.width.value_or(usual_width));
}

/// Of an answer that is no question's.
Outcome told(const Typed& typed, const auto& answer) {
    return {typed.json ? json_text_of(answer, say_of(typed))
                       : laid_out(blocks_of(answer, say_of(typed)), typed)};
}

Outcome told(const Typed& typed, Asked asked) {
    return {typed.command->question->text(std::move(asked), form_of(typed))};
}

std::unique_ptr<Loaded> loaded_for(const Typed& typed) {
    const Question* question = typed.command->question;
    return load_inquiry(typed.given.one("inquiry"), typed.rates, typed.language,
                        question != nullptr && question->draws ? Drawn::yes : Drawn::no);
}

Outcome ask(const Typed& typed) {
    const auto loaded = loaded_for(typed);
    return told(typed, asked_of(typed, loaded->desk, loaded->inquiry));
}

/// Writes the figures of a scenario to a workbook, too.
Outcome recheck(const Typed& typed) {
    const std::string file = typed.given.one("workbook");
    if (file.empty()) return ask(typed);
    check_ending("--workbook", file, {".xlsx"});
    const Whole& whole = whole_of(typed);
    const auto loaded = loaded_for(typed);
    const std::size_t scenario = scenario_named(loaded->inquiry, typed.given.one("scenario"));
    const RecheckAnswer answer = quoin::recheck(loaded->sitting(), scenario);
    write_file(file, whole.xlsx_bytes(workbook_told(answer)), typed.given.has("force"));
    return told(typed, answer);
}

Outcome afford(const Typed& typed) {
    const OptionGroup& figures = *typed.command->group;
    const bool plain = typed.given.one("inquiry").empty();
    if (!plain && std::any_of(figures.options.begin(), figures.options.end(),
                              [&](const auto& option) { return typed.given.has(option.name); })) {
        throw WrongUse("use INQUIRY or figures such as --income, not both");
    }
    if (!plain) return ask(typed);
    if (typed.given.one("income").empty() || typed.given.one("rate").empty()) {
        throw WrongUse("INQUIRY is required, or else --income and --rate");
    }
    PlainCase made = plain_case(typed.given, typed.rates, today(), say_of(typed));
    Asked asked = asked_of(typed, made.desk, made.inquiry);
    asked.assumptions = std::move(made.assumptions);
    return told(typed, std::move(asked));
}

std::string stage_text(const FitProgress& progress, const SearchWords& say) {
    const std::string most = progress.most.text();
    switch (progress.stage) {
    case FitStage::best:
        return progress.found ? say.best(progress.worth.text(), most) : say.none_yet(most);
    case FitStage::cheapest:
        return say.cheapest(progress.worth.text());
    case FitStage::next:
        return say.another_wish();
    case FitStage::nearest:
        return say.closest();
    }
    return {};
}

/// "12,288 looked into, best worth 434.25, at most 440: lot 7, Conventional"
std::string progress_text(const FitProgress& progress, const SearchWords& say) {
    return say.progress(grouped(Decimal::whole(progress.nodes)), stage_text(progress, say),
                        progress.lot, progress.scenario);
}

/// Shows how far it is, and stops at the first interrupt with the best so far.
Outcome fit(const Typed& typed) {
    const auto loaded = loaded_for(typed);
    const SearchWords& say = say_of(typed).apps.search;
    ProgressLine line(typed.given.has("progress"));
    Asked asked = asked_of(typed, loaded->desk, loaded->inquiry);
    asked.progress = [&](const FitProgress& now) {
        if (line.is_due()) line.write(progress_text(now, say));
        return !Interruption::asked();
    };
    Outcome outcome = told(typed, std::move(asked));
    if (Interruption::asked()) {
        outcome.errors = "quoin: " + say.stopped() + "\n";
    }
    return outcome;
}

Outcome sheet(const Typed& typed) {
    const std::string file = typed.given.one("output");
    check_ending("--output", file, {".html", ".htm"});
    const auto loaded = loaded_for(typed);
    const Asked asked = asked_of(typed, loaded->desk, loaded->inquiry);
    write_file(file, typed.command->question->text(asked, Form::html), typed.given.has("force"));
    return {say_of(typed).apps.written(made_visible(file)) + "\n"};
}

// Commands without an inquiry.

/// The term from --years or --months, whichever is given.
Months term_from(const Given& given) {
    const std::string years = given.one("years");
    if (years.empty()) {
        return Months(whole_typed("--months", given.one("months"), 1, longest_term.count(),
                                  Wanted::Kind::whole_months));
    }
    return Months(12 * whole_typed("--years", years, 1, longest_term.count() / 12,
                                   Wanted::Kind::whole_years));
}

Outcome pay(const Typed& typed) {
    const Money loan =
        amount_typed("--loan", typed.given.one("loan"), Money{}, Money::dollars(9'000'000'000),
                     {.kind = Wanted::Kind::dollars_in_range, .such = "250000"});
    const Rate rate = rate_typed(
        "--rate", typed.given.one("rate"),
        {.kind = Wanted::Kind::yearly_percent, .most = Decimal::whole(100), .such = "6.5"});
    const PaymentAnswer answer = payment({loan, rate, term_from(typed.given)});
    return told(typed, answer);
}

Outcome tell_apr(const Typed& typed) {
    const AprAnswer answer = load_apr(typed.given.one("file"));
    return told(typed, answer);
}

Outcome check(const Typed& typed) {
    std::optional<Date> day;
    const std::string as_of = typed.given.one("as-of");
    if (!as_of.empty()) day = day_typed("--as-of", as_of);
    std::vector<Checked> checked;
    for (const std::string& file : typed.given.all("file")) {
        checked.push_back(check_file(file, typed.rates, day));
    }
    return report(checked, typed);
}

Outcome list_of_book(const Typed& typed) {
    const std::string word = typed.given.one("what");
    const Listing what = word == "plans"  ? Listing::plans
                         : word == "lots" ? Listing::lots
                                          : Listing::options;
    const PriceBook book = load_price_book(typed.given.one("pricebook"), typed.language);
    return {typed.json               ? listing_json(book, what)
            : typed.given.has("csv") ? listing_csv(book, what, say_of(typed))
                                     : laid_out(listing_text(book, what, say_of(typed)), typed)};
}

Outcome terms(const Typed& typed) {
    return {typed.json ? glossary_json(say_of(typed))
                       : laid_out(glossary_text(say_of(typed)), typed)};
}

Outcome serve(const Typed& typed) {
    whole_of(typed).serve(typed);
    return {};
}

Outcome take_home_of(const Typed& typed) { return whole_of(typed).take_home(typed); }

// What stands in several commands.

const CommandOption inquiry_file = {{"inquiry", "the buyer's inquiry, a JSON file", needed_place}};
const CommandOption csv = {{"csv", "comma-separated values, for a spreadsheet", flag}};
const CommandOption brief = {
    {"brief", "one line for each loan, with what the payment rests on", flag}};
const CommandOption force = {
    {"force", "replace a file with that name even if quoin did not write it", flag}};

Command command_of(const Question& question) {
    Command command{question.name, question.summary, question.example, {inquiry_file}, {},
                    ask,           &question};
    for (const QuestionOption& option : question.options) command.options.push_back({option});
    if (question.has(Form::csv)) command.options.push_back(csv);
    if (question.has(Form::brief)) command.options.push_back(brief);
    return command;
}

/// Figures in place of an inquiry.
OptionGroup plain_figures() {
    CommandOption program = {{"program", "a program by its id; can be given more than once", list}};
    program.commas_split = false;
    return {"without a price book",
            "figures instead of an inquiry; quoin assumes what is not given, and says so",
            false,
            {{{"income", "monthly income before taxes, in dollars"}},
             {{"rate", "the yearly interest rate, in percent"}},
             {{"debts", "monthly payments on debts, in dollars"}},
             {{"cash", "cash available for the purchase, in dollars"}},
             {{"years", "the loan term in years; 30 if not given"}},
             {{"down", "the down payment in percent; the program's usual ones if not given"}},
             program,
             {{"property-tax", "property taxes a year, in percent of the price"}},
             {{"insurance", "homeowner's insurance a year, in percent of the price"}},
             {{"dues", "HOA dues a month, in dollars"}},
             {{"closing-costs", "closing costs, in percent of the loan amount"}},
             {{"score", "credit score"}},
             {{"taxes", "monthly taxes on the income, in dollars, for residual income"}},
             {{"persons", "people in the household, for residual income"}},
             {{"region", "northeast, midwest, south or west, for residual income"}},
             {{"square-feet", "living area in square feet, for residual income"}},
             {{"as-of", "the day of the estimate, such as 2026-11-24; today if not given"}}}};
}

/// A question's command, with what the command line adds to it.
Command adapted(Command command) {
    std::vector<CommandOption>& options = command.options;
    if (command.name == "recheck") {
        options.push_back(
            {{"workbook", "also write the figures as live formulas to this .xlsx file"}});
        options.push_back(force);
        command.run = recheck;
    } else if (command.name == "afford") {
        options.front().kind = place;
        command.group = plain_figures();
        command.run = afford;
    } else if (command.name == "fit") {
        options.push_back(
            {{"progress",
              "show on standard error how far a long search is, even if that is not a terminal; "
              "Ctrl-C stops the search and shows the best so far",
              flag}});
        command.run = fit;
    } else if (command.name == "sheet") {
        const CommandOption output = {{"output", "the file to write, FILE.html", needed}, "o"};
        options.insert(options.begin() + 1, output);
        options.push_back(force);
        command.run = sheet;
    }
    return command;
}

/// Commands that are no question, and the one whose answer is a file, at the end of the list.
std::vector<Command> further_commands() {
    static const std::string days =
        fmt::format("list the tables that end within {} days of this day; if not given, of the "
                    "inquiry's own day or today",
                    ending_days);
    CommandOption what = {{"what", "plans, lots or options", needed_place}};
    what.words = {"plans", "lots", "options"};
    CommandOption with = {
        {"with", "what goes along of the buyer's money: score, income, debts, cash", list}};
    with.words = {"score", "income", "debts", "cash"};
    CommandOption port = {{"port", "the port; 0 takes any free one"}};
    port.number = {0, 65535, 8571};
    return {
        {"payment",
         "Principal and interest for any loan, with no files",
         "quoin payment --loan 250000 --rate 6.5 --years 30",
         {{{"loan", "the loan amount, in dollars", needed}},
          {{"rate", "the yearly interest rate, in percent", needed}}},
         OptionGroup{"term",
                     "",
                     true,
                     {{{"years", "the loan term in years, 1 to 40"}},
                      {{"months", "the loan term in months, 1 to 480"}}}},
         pay},
        {"apr",
         "The APR for a list of advances and payments",
         "quoin apr problem.json",
         {{{"file", "the problem, a JSON file", needed_place}}},
         {},
         tell_apr},
        {"check",
         "Checks price books, rate sheets, places, programs and inquiries",
         "quoin check pricebook.json buyers/*.json",
         {{{"file", "files to check", needed_rest}}, {{"as-of", days}}},
         {},
         check},
        {"list",
         "The plans, lots or options in a price book",
         "quoin list options pricebook.json",
         {what, {{"pricebook", "the price book, a JSON file", needed_place}}, csv},
         {},
         list_of_book},
        {"terms",
         "What the words mean, with the regulations that name them",
         "quoin terms --language es",
         {},
         {},
         terms},
        adapted(command_of(*find_question("sheet"))),
        {"take-home",
         "One file for a buyer's phone: the sheet, and the page with this home and these loans",
         "quoin take-home buyer.json -o home.html --with income",
         {inquiry_file, with, force},
         OptionGroup{"what is written",
                     "",
                     true,
                     {{{"output", "one file to open on any phone, FILE.html"}, "o"},
                      {{"desk", "the same as files of a folder, which must not exist yet, or be "
                                "empty"}}}},
         take_home_of},
        {"serve",
         "The page in a browser and the questions, served on this computer",
         "quoin serve --open",
         {{{"folder",
            "the folder with price books and inquiries, up to two folders deep (if not given, the "
            "examples that came with the program)",
            place}},
          {{"open", "open the page in a browser", flag}},
          port,
          {{"listen",
            "listen on this address instead of this computer's own; an access code is then "
            "needed"}}},
         {},
         serve},
    };
}

} // namespace

const std::vector<Command>& commands() {
    static const std::vector<Command> table = [] {
        std::vector<Command> all;
        for (const Question& question : questions()) {
            if (question.has(Form::text)) all.push_back(adapted(command_of(question)));
        }
        for (Command& command : further_commands()) all.push_back(std::move(command));
        return all;
    }();
    return table;
}

} // namespace quoin::apps
