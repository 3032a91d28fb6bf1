// The table of questions.
#include "questions.hpp"

#include <algorithm>
#include <optional>

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
#include <quoin/answers/shift.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/answers/sitting.hpp>
#include <quoin/answers/tour.hpp>
#include <quoin/render/adds.hpp>
#include <quoin/render/afford.hpp>
#include <quoin/render/cash.hpp>
#include <quoin/render/compare.hpp>
#include <quoin/render/credit.hpp>
#include <quoin/render/fit.hpp>
#include <quoin/render/later.hpp>
#include <quoin/render/month_by_month.hpp>
#include <quoin/render/programs.hpp>
#include <quoin/render/quote.hpp>
#include <quoin/render/recheck.hpp>
#include <quoin/render/sheet.hpp>
#include <quoin/render/shift.hpp>
#include <quoin/render/shown.hpp>
#include <quoin/render/site.hpp>
#include <quoin/render/tour.hpp>
#include <quoin/render/workbook.hpp>
#include <quoin/text/problems.hpp>

#include "asking.hpp"
#include "server_problems.hpp"
#include "workbook_file.hpp"

namespace quoin::apps {
namespace {

using Need = QuestionOption::Need;

/// A request waits for no longer search than this; what is not proven by then says so.
constexpr std::int64_t served_nodes = 200'000;

std::optional<std::string> one(const Given& given, std::string_view name) {
    const auto found = given.find(name);
    return found == given.end() ? std::nullopt : std::optional(found->second);
}

std::vector<std::string> all(const Given& given, std::string_view name) {
    std::vector<std::string> values;
    const auto [begin, end] = given.equal_range(name);
    for (auto it = begin; it != end; ++it) values.push_back(it->second);
    return values;
}

std::size_t scenario_of(const Inquiry& inquiry, const Given& given) {
    return scenario_named(inquiry, one(given, "scenario").value_or(""));
}

std::string quote_json(const Desk& desk, Inquiry inquiry, const Given& /*given*/,
                       const Watch& watch) {
    return json_text_of(quote(Sitting(desk, inquiry, &watch)));
}

std::string adds_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    const std::vector<Pick> picks = picks_named(desk.book, all(given, "option"));
    return json_text_of(adds(Sitting(desk, inquiry, &watch), picks));
}

std::string compare_json(const Desk& desk, Inquiry inquiry, const Given& /*given*/,
                         const Watch& watch) {
    return json_text_of(compare(Sitting(desk, inquiry, &watch)));
}

std::string cash_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    const std::size_t scenario = scenario_of(inquiry, given);
    if (const auto appraised = one(given, "appraised")) {
        inquiry.facts.appraised_value = appraised_value(*appraised);
    }
    return json_text_of(cash(Sitting(desk, inquiry, &watch), scenario));
}

std::string credit_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    if (given.contains("instead")) inquiry.selection.incentives.clear();
    Sitting sitting(desk, inquiry, &watch);
    if (given.contains("scenario")) sitting = sitting.only(scenario_of(inquiry, given));
    const CreditAsk ask =
        credit_ask(sitting, one(given, "amount").value_or(""), one(given, "years").value_or(""));
    return json_text_of(credit(sitting, ask));
}

std::string shift_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    Sitting sitting(desk, inquiry, &watch);
    if (given.contains("scenario")) sitting = sitting.only(scenario_of(inquiry, given));
    return json_text_of(shift(
        sitting, shift_ask(one(given, "steps").value_or(""), one(given, "step").value_or(""))));
}

std::string recheck_json(const Desk& desk, Inquiry inquiry, const Given& given,
                         const Watch& watch) {
    const std::size_t scenario = scenario_of(inquiry, given);
    return json_text_of(recheck(Sitting(desk, inquiry, &watch), scenario));
}

std::string workbook_bytes(const Desk& desk, Inquiry inquiry, const Given& given,
                           const Watch& watch) {
    const std::size_t scenario = scenario_of(inquiry, given);
    const RecheckAnswer answer = recheck(Sitting(desk, inquiry, &watch), scenario);
    if (!answer.scenario.available()) {
        refuse(problems::scenario_barred(inquiry.scenarios[scenario].name));
    }
    return xlsx_bytes(workbook_of(answer));
}

std::string afford_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    const AffordText text{one(given, "reserves").value_or(""), one(given, "step").value_or(""),
                          given.count("automated") > 0};
    const AffordFacts facts = afford_facts(inquiry, text);
    return json_text_of(afford(Sitting(desk, inquiry, &watch), facts));
}

std::string later_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    const std::vector<Pick> picks = picks_named(desk.book, all(given, "option"));
    if (picks.empty()) refuse(http_problems::option_missing("option", "an option to ask about"));
    const LaterFacts facts =
        later_facts({one(given, "month").value_or(""), one(given, "loan-rate").value_or(""),
                     one(given, "loan-months").value_or("")});
    return json_text_of(later(Sitting(desk, inquiry, &watch), picks, facts));
}

std::string shown_json(const Desk& desk, Inquiry inquiry, const Given& /*given*/,
                       const Watch& watch) {
    const auto answer = shown(Sitting(desk, inquiry, &watch));
    if (!answer) refuse(problems::no_model(desk.book.file));
    return json_text_of(*answer);
}

std::string schedule_json(const Desk& desk, Inquiry inquiry, const Given& given,
                          const Watch& watch) {
    const std::size_t scenario = scenario_of(inquiry, given);
    const RunText text{one(given, "extra").value_or(""), all(given, "index"),
                       given.count("worst-case") > 0};
    if (text.worst_case && !text.indexes.empty()) {
        refuse(http_problems::options_exclude("worst-case", "index"));
    }
    const Sitting sitting(desk, inquiry, &watch);
    return json_text_of(month_by_month(sitting, scenario, run_as(sitting, scenario, text)));
}

std::string sheet_html(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    std::optional<std::size_t> scenario;
    if (given.count("scenario") > 0) scenario = scenario_of(inquiry, given);
    return html_of(sheet(Sitting(desk, inquiry, &watch), scenario));
}

std::string tour_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    const std::size_t scenario = scenario_or_first(inquiry, one(given, "scenario").value_or(""));
    return json_text_of(tour(Sitting(desk, inquiry, &watch), scenario));
}

std::string site_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    const std::size_t scenario = scenario_or_first(inquiry, one(given, "scenario").value_or(""));
    return json_text_of(site(Sitting(desk, inquiry, &watch), scenario));
}

std::string fit_json(const Desk& desk, Inquiry inquiry, const Given& given, const Watch& watch) {
    FitQuestion question;
    question.limits = {limit_given("--monthly", one(given, "monthly").value_or("")),
                       limit_given("--cash", one(given, "cash").value_or(""))};
    question.lots = given.count("lots") > 0;
    question.nodes = served_nodes;
    if (given.contains("scenario")) question.scenario = scenario_of(inquiry, given);
    // Its search stops by itself, with what it has by then.
    return json_text_of(fit(Sitting(desk, inquiry), question,
                            [&](const FitProgress& /*progress*/) { return !watch || watch(); }));
}

std::string programs_json(const Desk& desk, Inquiry inquiry, const Given& /*given*/,
                          const Watch& watch) {
    return json_text_of(programs(Sitting(desk, inquiry, &watch)));
}

const QuestionOption scenario = {"scenario", "the scenario's name in the inquiry", Need::required};

} // namespace

const std::vector<Question>& questions() {
    static const std::vector<Question> table = {
        {"quote",
         "The priced home line by line, and the month of each loan",
         {},
         json_type,
         quote_json},
        {"adds",
         "What each option adds: price, month, cash, years; alone and stacked",
         {{"option", "an option as ID, ID:LEVEL or ID=NUMBER; all of them if none",
           Need::repeated}},
         json_type,
         adds_json},
        {"compare", "The scenarios side by side on the same home", {}, json_type, compare_json},
        {"cash",
         "What cash a loan takes: costs, prepaids, escrow, credits, and when",
         {scenario, {"appraised", "if it appraises at this, in dollars", Need::optional}},
         json_type,
         cash_json},
        {"credit",
         "What a builder's money does: off the price, costs, points, a buydown",
         {{"amount", "the builder's money, in dollars", Need::required},
          {"scenario", "one scenario alone; all of them if not given", Need::optional},
          {"years", "years to look for the least cost over; 7 if not given", Need::optional},
          {"instead", "in place of the incentives that the inquiry uses", Need::flag}},
         json_type,
         credit_json},
        {"shift",
         "What can move before the closing: the rate, the price, the appraisal",
         {{"scenario", "one scenario alone; all of them if not given", Need::optional},
          {"steps", "steps of the rate each way; 4 if not given", Need::optional},
          {"step", "percentage points of a step; 0.125 if not given", Need::optional}},
         json_type,
         shift_json},
        {"recheck",
         "Each figure with its formula, inputs, rounding, rule, date and source",
         {scenario},
         json_type,
         recheck_json},
        {"workbook",
         "The same as live formulas in a spreadsheet",
         {scenario},
         xlsx_type,
         workbook_bytes},
        {"afford",
         "The highest price that income, debts, cash and the programs allow",
         {{"reserves", "months of the payment to be left over in cash, 0 to 24", Need::optional},
          {"step", "the higher price to ask about, in dollars more", Need::optional},
          {"automated",
           "a file that automated underwriting accepts: its ratio, none where none is published",
           Need::flag}},
         json_type,
         afford_json},
        {"later",
         "An option from the builder, financed or in cash, or after closing",
         {{"option", "an option as ID, ID:LEVEL or ID=NUMBER", Need::repeated},
          {"month", "the payment of the loan with which it is done; 1 if not said", Need::optional},
          {"loan-rate", "on a personal loan or card: its yearly rate, in percent", Need::optional},
          {"loan-months", "and its months", Need::optional}},
         json_type,
         later_json},
        {"shown",
         "What the furnished model shows, against what is included and chosen",
         {},
         json_type,
         shown_json},
        {"schedule",
         "A loan month by month, with mortgage insurance and extra principal",
         {scenario,
          {"extra", "extra principal each month, in dollars", Need::optional},
          {"index", "adjustable rates: the index at each change, in percent; the last stays",
           Need::repeated},
          {"worst-case", "adjustable rates: every change as high as the caps let it be",
           Need::flag}},
         json_type,
         schedule_json},
        {"sheet",
         "What the buyer takes home: one HTML file to print",
         {{"scenario", "one scenario alone, with its costs and its calendar; all of them if none",
           Need::optional}},
         html_type,
         sheet_html},
        {"tour",
         "The home area by area: what comes with it, what a touch adds a month",
         {{"scenario", "the scenario that the figures are under; the first if not given",
           Need::optional}},
         json_type,
         tour_json},
        {"fit",
         "Which wishes fit within a month and the cash: the most worth, proven",
         {{"monthly", "what a month may come to, in dollars", Need::required},
          {"cash", "all the cash there is, deposits among it, in dollars", Need::required},
          {"scenario", "the scenario's name in the inquiry; each of them if not given",
           Need::optional},
          {"lots", "on every free lot that the plan fits", Need::flag}},
         json_type,
         fit_json},
        {"site",
         "The lots and plans, and what another one would change",
         {{"scenario", "the scenario that the figures are under; the first if not given",
           Need::optional}},
         json_type,
         site_json},
        {"programs",
         "The loan programs and rates that the inquiry can use",
         {},
         json_type,
         programs_json},
    };
    return table;
}

const Question* find_question(std::string_view name) {
    for (const Question& question : questions()) {
        if (question.name == name) return &question;
    }
    return nullptr;
}

void check_given(const Question& question, const Given& given) {
    Findings findings;
    std::vector<std::string> names;
    for (const QuestionOption& option : question.options) {
        names.emplace_back(option.name);
        const std::size_t count = given.count(option.name);
        if (count > 1 && option.need != Need::repeated) {
            findings.add(http_problems::option_repeated(option.name));
        }
        if (count == 0 && option.need == Need::required) {
            findings.add(http_problems::option_missing(option.name, option.summary));
        }
    }
    for (auto it = given.begin(); it != given.end(); it = given.upper_bound(it->first)) {
        if (std::find(names.begin(), names.end(), it->first) != names.end()) continue;
        findings.add(http_problems::option_unknown(it->first, question.name, names));
    }
    if (!findings.none()) throw Refused(std::move(findings));
}

} // namespace quoin::apps
