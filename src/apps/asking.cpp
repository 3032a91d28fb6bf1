// Reading the options of questions.
#include "asking.hpp"

#include <quoin/answers/adds.hpp>
#include <quoin/text/problems.hpp>

namespace quoin::apps {

void refuse(Problem problem) {
    Findings findings;
    findings.add(std::move(problem));
    throw Refused(std::move(findings));
}

std::size_t scenario_named(const Inquiry& inquiry, const std::string& name) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < inquiry.scenarios.size(); ++i) {
        if (inquiry.scenarios[i].name == name) return i;
        names.push_back(inquiry.scenarios[i].name);
    }
    refuse(problems::scenario_unknown(name, nearest(name, names), names));
}

std::vector<Pick> picks_named(const PriceBook& book, const std::vector<std::string>& texts) {
    std::vector<Pick> picks;
    Findings findings;
    for (const std::string& text : texts) {
        const auto pick = asked_option(book, text, findings);
        if (pick) picks.push_back(*pick);
    }
    if (!findings.none()) throw Refused(std::move(findings));
    return picks;
}

Money appraised_value(const std::string& text) {
    const auto value = Money::parse(text);
    if (value && *value > Money{}) return *value;
    refuse(problems::payment_input("--appraised", text, "an amount above zero, such as 455000"));
}

namespace {

std::optional<Money> extra_from(const std::string& text) {
    if (text.empty()) return std::nullopt;
    const auto extra = Money::parse(text);
    if (extra && *extra >= Money{}) return extra;
    refuse(problems::payment_input("--extra", text, "an amount not below zero, such as 150"));
}

/// The index at each change of an adjustable rate; it may be below zero.
std::vector<Percent> indexes_from(const std::vector<std::string>& texts) {
    constexpr int most = 100; // percent, either way
    std::vector<Percent> indexes;
    for (const std::string& text : texts) {
        const auto percent = Decimal::parse(text);
        const bool fits =
            percent && *percent >= Decimal::whole(-most) && *percent <= Decimal::whole(most);
        if (!fits) {
            refuse(problems::payment_input("--index", text,
                                           "a percent from -100 to 100, such as 4.25"));
        }
        indexes.emplace_back(*percent);
    }
    return indexes;
}

} // namespace

RunAs run_as(const Sitting& sitting, std::size_t scenario, const RunText& text) {
    RunAs run{extra_from(text.extra), indexes_from(text.indexes), text.worst_case};
    const bool asks_for_a_way = run.worst_case || !run.indexes.empty();
    if (asks_for_a_way && !sitting.rules()[scenario].adjustable) {
        refuse(problems::payment_input(run.worst_case ? "--worst-case" : "--index",
                                       sitting.inquiry().scenarios[scenario].name,
                                       "a scenario whose rate is adjustable"));
    }
    return run;
}

AffordFacts afford_facts(const Inquiry& inquiry, const AffordText& text) {
    constexpr int most_months = 24;
    AffordFacts facts;
    facts.automated = text.automated;
    if (!text.reserves.empty()) {
        const auto months = Decimal::parse(text.reserves);
        if (!months || !months->is_whole() || *months < Decimal{} ||
            *months > Decimal::whole(most_months)) {
            refuse(problems::payment_input("--reserves", text.reserves,
                                           "a whole number of months from 0 to 24"));
        }
        facts.reserve_months = static_cast<int>(months->rounded(Rounding::down));
    }
    if (!text.step.empty()) {
        const auto step = Money::parse(text.step);
        if (!step || *step <= Money{}) {
            refuse(
                problems::payment_input("--step", text.step, "an amount above zero, such as 5000"));
        }
        facts.step = *step;
    }
    if (!inquiry.monthly_income && !inquiry.cash) refuse(problems::no_means());
    return facts;
}

} // namespace quoin::apps
