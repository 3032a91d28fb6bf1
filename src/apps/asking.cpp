// Reading the options of questions.
#include "asking.hpp"

#include <quoin/answers/adds.hpp>
#include <quoin/home/priced_home.hpp>
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

Money limit_given(const std::string& name, const std::string& text) {
    constexpr Money most = Money::dollars(1'000'000'000);
    const auto limit = Money::parse(text);
    if (limit && *limit >= Money{} && *limit <= most) return *limit;
    refuse(problems::payment_input(name, text, "an amount from 0 to 1000000000, such as 2150"));
}

std::int64_t nodes_given(const std::string& text) {
    constexpr std::int64_t most = 1'000'000'000;
    const auto number = Decimal::parse(text);
    if (number && number->is_whole() && *number >= Decimal::whole(1) &&
        *number <= Decimal::whole(most)) {
        return number->rounded(Rounding::down);
    }
    refuse(problems::payment_input("--nodes", text, "a whole number from 1 to 1000000000"));
}

namespace {

std::optional<int> whole_from(const std::string& text, int lowest, int highest) {
    const auto number = Decimal::parse(text);
    if (!number || !number->is_whole() || *number < Decimal::whole(lowest) ||
        *number > Decimal::whole(highest)) {
        return std::nullopt;
    }
    return static_cast<int>(number->rounded(Rounding::down));
}

} // namespace

CreditAsk credit_ask(const Sitting& sitting, const std::string& amount, const std::string& years) {
    CreditAsk ask;
    const Money price = price_home(sitting.book(), sitting.inquiry().selection).contract_price;
    const auto money = Money::parse(amount);
    if (!money || *money <= Money{} || *money >= price) {
        refuse(problems::payment_input("--amount", amount,
                                       "an amount above zero and under the price, such as 10000"));
    }
    ask.amount = *money;
    if (years.empty()) return ask;
    const auto number = whole_from(years, 1, 40);
    if (!number) {
        refuse(problems::payment_input("--years", years, "whole years from 1 to 40, such as 7"));
    }
    ask.years = *number;
    return ask;
}

ShiftAsk shift_ask(const std::string& steps, const std::string& step) {
    ShiftAsk ask;
    if (!steps.empty()) {
        const auto number = whole_from(steps, 0, 24);
        if (!number) {
            refuse(problems::payment_input("--steps", steps, "a whole number from 0 to 24"));
        }
        ask.steps = *number;
    }
    if (step.empty()) return ask;
    const auto size = Decimal::parse(step);
    const bool fits = size && *size >= Decimal::billionths(Decimal::one / 1000) &&
                      *size <= Decimal::whole(1) && Rate::percent(*size).has_value();
    if (!fits) {
        refuse(problems::payment_input("--step", step,
                                       "percentage points from 0.001 to 1, such as 0.125"));
    }
    ask.step = Percent(*size);
    return ask;
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

namespace {

int whole_months(const char* option, const std::string& text, int least, int most) {
    const auto months = Decimal::parse(text);
    const bool fits = months && months->is_whole() && *months >= Decimal::whole(least) &&
                      *months <= Decimal::whole(most);
    if (!fits) {
        refuse(problems::payment_input(option, text,
                                       "a whole number of months from " + std::to_string(least) +
                                           " to " + std::to_string(most)));
    }
    return static_cast<int>(months->rounded(Rounding::down));
}

} // namespace

AffordFacts afford_facts(const Inquiry& inquiry, const AffordText& text) {
    AffordFacts facts;
    facts.automated = text.automated;
    if (!text.reserves.empty()) {
        facts.reserve_months = whole_months("--reserves", text.reserves, 0, 24);
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

LaterFacts later_facts(const LaterText& text) {
    LaterFacts facts;
    if (!text.month.empty()) facts.month = whole_months("--month", text.month, 1, 120);
    if (text.loan_rate.empty() != text.loan_months.empty()) {
        refuse(problems::payment_input(text.loan_rate.empty() ? "--loan-months" : "--loan-rate",
                                       text.loan_rate + text.loan_months,
                                       "--loan-rate and --loan-months together"));
    }
    if (text.loan_rate.empty()) return facts;
    const auto percent = Decimal::parse(text.loan_rate);
    const auto rate = percent ? Rate::percent(*percent) : std::nullopt;
    if (!rate) {
        refuse(problems::payment_input("--loan-rate", text.loan_rate,
                                       "a yearly percent from 0 to 100, such as 11.5"));
    }
    facts.loan =
        PersonalLoan{*rate, Months(whole_months("--loan-months", text.loan_months, 1, 240))};
    return facts;
}

} // namespace quoin::apps
