// The table of questions.
#include <quoin/questions/questions.hpp>

#include <algorithm>
#include <utility>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/afford.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/fit.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/rooms.hpp>
#include <quoin/answers/sheet.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/answers/tour.hpp>
#include <quoin/exact/broken.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/inquiry/typed.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/words/catalogue.hpp>

#include "questions/forms_told.hpp"

namespace quoin {
namespace {

using enum QuestionOption::Kind;
constexpr auto command = QuestionOption::By::command;

const Catalogue& say_of(const Asked& asked) { return catalogue_in(asked.language); }

[[maybe_unused]] std::string laid_out(const Blocks& text, const Asked& asked) {
    return text.text(asked.width.value_or(usual_width));
}

[[maybe_unused]] std::string in_brief(const Blocks& lines, const Asked& asked) {
    return lines.text(asked.width.value_or(unbroken));
}

/// As JSON or as text.
Told told(const auto& answer, Form form, const Asked& asked) {
    const Catalogue& say = say_of(asked);
    if constexpr (all_forms_told) {
        if constexpr (requires { brief_of(answer, say); }) {
            if (form == Form::brief) return in_brief(brief_of(answer, say), asked);
        }
        if (form == Form::text) return laid_out(blocks_of(answer, say), asked);
    }
    ensure(form == Form::json, "a question is told in one of its forms");
    return json_text_of(answer, say);
}

std::size_t scenario_of(const Asked& asked) {
    return scenario_named(asked.inquiry, asked.one("scenario"));
}

/// Under one scenario alone where one is named.
Sitting sitting_under(const Asked& asked) {
    const Sitting sitting = asked.sitting();
    return asked.has("scenario") ? sitting.only(scenario_of(asked)) : sitting;
}

Told tell_quote(Asked asked, Form form) { return told(quote(asked.sitting()), form, asked); }

Told tell_adds(Asked asked, Form form) {
    const std::vector<Pick> picks = picks_named(asked.desk.book, asked.all("option"));
    const AddsAnswer answer = adds(asked.sitting(), picks);
    if constexpr (all_forms_told) {
        const bool by_part = asked.has("by-part") || !picks.empty();
        if (form == Form::brief) return in_brief(brief_of(answer, say_of(asked)), asked);
        if (form == Form::text) return laid_out(blocks_of(answer, by_part, say_of(asked)), asked);
    }
    return json_text_of(answer, say_of(asked));
}

Told tell_compare(Asked asked, Form form) {
    const std::size_t against = asked.has("scenario") ? scenario_of(asked) : 0;
    return told(compare(asked.sitting(), against), form, asked);
}

Told tell_cash(Asked asked, Form form) {
    const std::size_t scenario = scenario_of(asked);
    if (asked.has("appraised")) {
        asked.inquiry.facts.appraised_value = appraised_value(asked.one("appraised"));
    }
    return told(cash(asked.sitting(), scenario), form, asked);
}

Told tell_credit(Asked asked, Form form) {
    if (asked.has("instead")) asked.inquiry.selection.incentives.clear();
    const Sitting sitting = sitting_under(asked);
    return told(credit(sitting, credit_ask(sitting, asked.one("amount"), asked.one("years"))), form,
                asked);
}

Told tell_shift(Asked asked, Form form) {
    const Sitting sitting = sitting_under(asked);
    return told(shift(sitting, shift_ask(asked.one("steps"), asked.one("step"))), form, asked);
}

Told tell_recheck(Asked asked, Form form) {
    const std::size_t scenario = scenario_of(asked);
    const RecheckAnswer answer = recheck(asked.sitting(), scenario);
    if constexpr (all_forms_told) {
        if (form == Form::workbook) return workbook_told(answer);
    }
    return told(answer, form, asked);
}

Told tell_afford(Asked asked, Form form) {
    const AffordFacts facts = afford_facts(
        asked.inquiry, {asked.one("reserves"), asked.one("step"), asked.has("automated")});
    AffordAnswer answer = afford(asked.sitting(), facts);
    answer.assumptions = std::move(asked.assumptions);
    return told(answer, form, asked);
}

Told tell_later(Asked asked, Form form) {
    const std::vector<Pick> picks = picks_named(asked.desk.book, asked.all("option"));
    const LaterFacts facts =
        later_facts({asked.one("month"), asked.one("loan-rate"), asked.one("loan-months")});
    return told(later(asked.sitting(), picks, facts), form, asked);
}

Told tell_shown(Asked asked, Form form) {
    const auto answer = shown(asked.sitting());
    if (!answer) refuse(problems::no_model(asked.desk.book.file));
    return told(*answer, form, asked);
}

Told tell_schedule(Asked asked, Form form) {
    const std::size_t scenario = scenario_of(asked);
    const Sitting sitting = asked.sitting();
    const RunAs run = run_as(sitting, scenario,
                             {asked.one("extra"), asked.all("index"), asked.has("worst-case")});
    const MonthByMonthAnswer answer = month_by_month(sitting, scenario, run);
    if constexpr (all_forms_told) {
        if (form == Form::csv) return csv_of(answer, say_of(asked));
    }
    return told(answer, form, asked);
}

Told tell_sheet(Asked asked, Form /*form*/) {
    std::optional<std::size_t> scenario;
    if (asked.has("scenario")) scenario = scenario_of(asked);
    return html_of(sheet(asked.sitting(), scenario), say_of(asked));
}

/// A buyer may look on, unless it is said that nobody does.
Audience audience_of(const Asked& asked) {
    return asked.has("office-notes") ? Audience::desk : Audience::buyer;
}

Told tell_tour(Asked asked, Form form) {
    const std::size_t scenario = scenario_or_first(asked.inquiry, asked.one("scenario"));
    const auto areas = areas_named(asked.desk.book, asked.all("area"));
    return told(tour(asked.sitting(), scenario, audience_of(asked), areas), form, asked);
}

Told tell_site(Asked asked, Form form) {
    const std::size_t scenario = scenario_or_first(asked.inquiry, asked.one("scenario"));
    return told(site(asked.sitting(), scenario, audience_of(asked)), form, asked);
}

Told tell_rooms(Asked asked, Form form) { return told(rooms(asked.sitting()), form, asked); }

Told tell_fit(Asked asked, Form form) {
    FitQuestion question;
    question.limits = {limit_given("--monthly", asked.one("monthly")),
                       limit_given("--cash", asked.one("cash"))};
    question.lots = asked.has("lots");
    if (asked.has("nodes")) question.nodes = nodes_given(asked.one("nodes"));
    if (asked.has("scenario")) question.scenario = scenario_of(asked);
    // Its search is told to stop, and answers with what it has by then.
    return told(fit(Sitting(asked.desk, asked.inquiry), question, asked.progress), form, asked);
}

Told tell_programs(Asked asked, Form form) { return told(programs(asked.sitting()), form, asked); }

/// What describes the answers to questions, where anybody describes them.
template <class Answer>
constexpr auto shape_told() -> const Shape& (*)() {
    if constexpr (all_forms_told) return shape_of<Answer>;
    return nullptr;
}

/// A question whose answer is told as JSON or as text.
template <class Answer>
Question answered(std::string_view name, std::string_view summary, std::string_view example,
                  std::vector<QuestionOption> options, Told (*told)(Asked, Form)) {
    return {name,
            summary,
            example,
            std::move(options),
            {Form::json, Form::text},
            told,
            shape_told<Answer>()};
}

/// Where the first forms alone are told, no other is offered.
std::vector<Question> in_forms_told(std::vector<Question> table) {
    if (all_forms_told) return table;
    for (Question& question : table) question.forms.resize(1);
    return table;
}

/// A question that can be answered in a line for each loan, too.
Question briefly(Question question) {
    question.forms.push_back(Form::brief);
    return question;
}

/// The same, which looks at the drawings.
Question looking(Question question) {
    question.draws = true;
    return question;
}

const QuestionOption scenario = {"scenario", "the loan's name in the inquiry", needed};
const QuestionOption one_scenario = {
    "scenario", "one loan, by its name in the inquiry; all loans if not given"};
const QuestionOption under = {
    "scenario", "the loan to figure with, by its name; the first in the inquiry if not given"};
const QuestionOption office_notes = {
    "office-notes", "with the office notes of the price book, which are not for the buyer", flag};

} // namespace

std::string Given::one(std::string_view option) const {
    const auto found = find(option);
    return found == end() ? std::string() : found->second;
}

std::vector<std::string> Given::all(std::string_view option) const {
    std::vector<std::string> values;
    const auto [begin, end] = equal_range(option);
    for (auto it = begin; it != end; ++it) values.push_back(it->second);
    return values;
}

bool Question::has(Form form) const {
    return std::find(forms.begin(), forms.end(), form) != forms.end();
}

std::string Question::text(Asked asked, Form form) const {
    Told answer = told(std::move(asked), form);
    ensure(std::holds_alternative<std::string>(answer), "a workbook is no text");
    return std::get<std::string>(std::move(answer));
}

Workbook workbook_told(const RecheckAnswer& answer) {
    if (!answer.scenario.available()) {
        refuse(problems::scenario_barred(answer.scenario.terms.name));
    }
    return workbook_of(answer);
}

const std::vector<Question>& questions() {
    using enum Form;
    static const std::vector<Question> table = in_forms_told({
        briefly(answered<QuoteAnswer>(
            "quote", "The home price line by line, and the monthly payment with each loan",
            "quoin quote buyer.json", {}, tell_quote)),
        briefly(answered<AddsAnswer>(
            "adds", "What options add to the price and monthly payment, alone and together",
            "quoin adds buyer.json deck kitchen-counters:quartz can-lights=6",
            {{"option",
              "options to look at, as ID, ID:LEVEL or ID=NUMBER; all options if not given", rest},
             {"by-part",
              "each option by part of the monthly payment, with cash and cost over the years", flag,
              command}},
            tell_adds)),
        briefly(
            answered<CompareAnswer>("compare", "Loans side by side for one home",
                                    "quoin compare buyer.json --scenario \"FHA, 3.5% down\" --json",
                                    {{"scenario", "the loan that the years are held against "
                                                  "(JSON), by its name; the first if not given"}},
                                    tell_compare)),
        briefly(answered<CashAnswer>(
            "cash", "The cash a loan needs, and when: costs, prepaids, escrow and credits",
            "quoin cash buyer.json --scenario \"FHA, 3.5% down\" --appraised 455000",
            {scenario, {"appraised", "what the home appraises for, in dollars"}}, tell_cash)),
        briefly(answered<CreditAnswer>(
            "credit", "What money from the builder can do: price, costs, points or a buydown",
            "quoin credit buyer.json --amount 10000 --years 5",
            {{"amount", "the money from the builder, in dollars", needed},
             one_scenario,
             {"years", "find the lowest cost over this many years; 7 if not given"},
             {"instead", "instead of the incentives that the inquiry uses, not on top of them",
              flag}},
            tell_credit)),
        briefly(answered<ShiftAnswer>(
            "shift", "What can change before closing: the rate, the price, the appraisal",
            "quoin shift buyer.json --scenario \"FHA, 3.5% down\" --steps 6",
            {one_scenario,
             {"steps", "rate steps up and down; 4 if not given"},
             {"step", "the size of a step in percentage points; 0.125 if not given"}},
            tell_shift)),
        answered<RecheckAnswer>(
            "recheck", "Each figure with its formula, inputs, rounding, rule, date and source",
            "quoin recheck buyer.json --scenario \"FHA, 3.5% down\" --workbook check.xlsx",
            {scenario}, tell_recheck),
        {"workbook",
         "The same as live formulas in a spreadsheet",
         {},
         {scenario},
         {workbook},
         tell_recheck},
        briefly(answered<AffordAnswer>(
            "afford", "The highest price that income, debts, cash and loan programs allow",
            "quoin afford buyer.json --reserves 2\n"
            "  quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25",
            {{"reserves", "months of the payment to keep as reserves after closing, 0 to 24"},
             {"step", "also show a price this many dollars higher"},
             {"automated",
              "assume that automated underwriting accepts the file: its DTI limit where one is "
              "published, else none",
              flag}},
            tell_afford)),
        briefly(answered<LaterAnswer>(
            "later", "An option now, financed or in cash, or later, after closing",
            "quoin later buyer.json deck:composite --loan-rate 11.5 --loan-months 60",
            {{"option", "options, as ID, ID:LEVEL or ID=NUMBER", needed_rest},
             {"month", "the number of the loan payment when the later work is done, 1 to 120; 1 if "
                       "not given"},
             {"loan-rate",
              "the yearly rate of a personal loan or card for the later work, in percent"},
             {"loan-months", "the months of that loan, 1 to 240"}},
            tell_later)),
        answered<ShownAnswer>("shown", "What you see in the model home: included, chosen or extra",
                              "quoin shown buyer.json", {}, tell_shown),
        {"schedule",
         "A loan month by month, with mortgage insurance and extra principal",
         "quoin schedule buyer.json --scenario \"FHA, 3.5% down\" --extra 150",
         {scenario,
          {"extra", "extra principal each month, in dollars"},
          {"index", "adjustable rate: the index at each change, in percent; the last one stays",
           list},
          {"worst-case", "adjustable rate: every change as large as the caps allow", flag,
           QuestionOption::By::anybody, "index"}},
         {json, text, csv},
         tell_schedule,
         shape_told<MonthByMonthAnswer>()},
        looking({"sheet",
                 "A sheet for the buyer to take home: one HTML file to print",
                 "quoin sheet buyer.json -o sheet.html",
                 {{"scenario", "the loan in front, by its name, with its due dates; the first that "
                               "can be had if not given"}},
                 {html},
                 tell_sheet}),
        answered<TourAnswer>(
            "tour", "The home area by area: what comes with it, what an option adds",
            "quoin tour buyer.json --scenario \"FHA, 3.5% down\"",
            {under,
             {"area", "an area of the home, by its id; all of them if not given", list},
             office_notes},
            tell_tour),
        briefly(answered<FitAnswer>(
            "fit", "Which wishes fit your limits and are worth the most, with proof",
            "quoin fit buyer.json --monthly 2150 --cash 24000 --lots",
            {{"monthly", "your limit for the monthly payment, in dollars", needed},
             {"cash", "your limit for cash needed, deposits included, in dollars", needed},
             {"scenario", "one loan, by its name in the inquiry; all loans if not given"},
             {"lots", "also try every available lot that the plan fits", flag},
             {"nodes",
              "how many choices each search may look into before it stops; 2000000 if not given",
              value, command}},
            tell_fit)),
        looking(answered<SiteAnswer>("site", "Lots and plans, and what another one would change",
                                     "quoin site buyer.json --scenario \"FHA, 3.5% down\"",
                                     {under, office_notes}, tell_site)),
        looking(answered<RoomsAnswer>("rooms", "The floor plan as chosen: each room with its size",
                                      "quoin rooms buyer.json", {}, tell_rooms)),
        answered<ProgramsAnswer>("programs", "Loan programs and their rates for this inquiry",
                                 "quoin programs buyer.json", {}, tell_programs),
    });
    return table;
}

const Question* find_question(std::string_view name) {
    for (const Question& question : questions()) {
        if (question.name == name) return &question;
    }
    return nullptr;
}

} // namespace quoin
