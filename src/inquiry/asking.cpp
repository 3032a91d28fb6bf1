// Reading the options of questions.
#include <quoin/inquiry/asking.hpp>

#include <quoin/home/priced_home.hpp>
#include <quoin/inquiry/typed.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {

std::size_t scenario_named(const Inquiry& inquiry, const std::string& name) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < inquiry.scenarios.size(); ++i) {
        if (inquiry.scenarios[i].name == name) return i;
        names.push_back(inquiry.scenarios[i].name);
    }
    refuse(names.empty() ? problems::no_scenarios()
                         : problems::scenario_unknown(name, nearest(name, names), names));
}

std::size_t scenario_or_first(const Inquiry& inquiry, const std::string& name) {
    return name.empty() && !inquiry.scenarios.empty() ? 0 : scenario_named(inquiry, name);
}

std::optional<Pick> asked_option(const PriceBook& book, const std::string& text,
                                 Findings& findings) {
    const std::size_t equals = text.find('=');
    const std::string name = text.substr(0, equals);
    const std::size_t colon = name.find(':');
    Pick pick;
    auto index = index_of(book.options, name.substr(0, colon));
    std::vector<std::string> known;
    std::string near;
    if (!index) {
        known = ids_of(book.options);
    } else if (colon != std::string::npos || at(book.options, *index).kind == OptionKind::levels) {
        const Option& option = at(book.options, *index);
        if (colon != std::string::npos)
            pick.level = index_of(option.levels, name.substr(colon + 1));
        for (const Level& level : option.levels) known.push_back(option.id + ":" + level.id);
        if (known.empty()) known.push_back(option.id);
        near = known.front(); // the option is there: say how to name it
        if (!pick.level) index.reset();
    }
    if (!index) {
        const std::string nearer = nearest(name, known);
        findings.add(problems::option_unknown(name, nearer.empty() ? near : nearer));
        return std::nullopt;
    }
    pick.option = *index;
    if (equals == std::string::npos) return pick;
    const Option& option = at(book.options, pick.option);
    const std::string number = text.substr(equals + 1);
    if (option.kind == OptionKind::allowance) {
        pick.spend = Money::parse(number);
        if (pick.spend && *pick.spend >= Money{}) return pick;
        findings.add(
            problems::option_number(option.id, number, {.kind = Wanted::Kind::amount_to_spend}));
        return std::nullopt;
    }
    pick.quantity = Decimal::parse(number);
    const bool allowed = option.quantity.from == Quantity::From::buyer && pick.quantity &&
                         option.quantity.allows(*pick.quantity);
    if (allowed) return pick;
    findings.add(problems::option_number(option.id, number, quantity_limits(option)));
    return std::nullopt;
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

std::vector<Index<Area>> areas_named(const PriceBook& book, const std::vector<std::string>& ids) {
    std::vector<Index<Area>> areas;
    Findings findings;
    for (const std::string& id : ids) {
        const auto index = index_of(book.areas, id);
        const std::vector<std::string> known = ids_of(book.areas);
        if (index)
            areas.push_back(*index);
        else
            findings.add(problems::area_unknown(id, nearest(id, known), known));
    }
    if (!findings.none()) throw Refused(std::move(findings));
    return areas;
}

Money appraised_value(const std::string& text) {
    return amount_typed("--appraised", text, Money::cents(1), most_typed,
                        {.kind = Wanted::Kind::amount_above_zero, .such = "455000"});
}

Money limit_given(const std::string& name, const std::string& text) {
    return amount_typed(name, text, Money{}, most_typed,
                        {.kind = Wanted::Kind::amount_in_range, .such = "2150"});
}

std::int64_t nodes_given(const std::string& text) {
    return whole_typed("--nodes", text, 1, 1'000'000'000);
}

CreditAsk credit_ask(const Sitting& sitting, const std::string& amount, const std::string& years) {
    CreditAsk ask;
    const Money price = price_home(sitting.book(), sitting.inquiry().selection).contract_price;
    ask.amount = amount_typed("--amount", amount, Money::cents(1), price - Money::cents(1),
                              {.kind = Wanted::Kind::amount_under_price, .such = "10000"});
    if (!years.empty()) ask.years = whole_typed("--years", years, 1, 40, Wanted::Kind::whole_years);
    return ask;
}

ShiftAsk shift_ask(const std::string& steps, const std::string& step) {
    ShiftAsk ask;
    if (!steps.empty()) ask.steps = whole_typed("--steps", steps, 0, 24);
    if (step.empty()) return ask;
    const Wanted expected{.kind = Wanted::Kind::percentage_points,
                          .least = Decimal::billionths(Decimal::one / 1000),
                          .most = Decimal::whole(1),
                          .such = "0.125"};
    ask.step = Percent(number_typed("--step", step, expected.least, expected.most, expected));
    if (!Rate::percent(ask.step.value())) refuse_typed("--step", step, expected);
    return ask;
}

namespace {

/// The index at each change of an adjustable rate; it may be below zero.
std::vector<Percent> indexes_from(const std::vector<std::string>& texts) {
    constexpr Decimal most = Decimal::whole(100); // percent, either way
    std::vector<Percent> indexes;
    for (const std::string& text : texts) {
        indexes.emplace_back(number_typed("--index", text, -most, most,
                                          {.kind = Wanted::Kind::percent_such, .such = "4.25"}));
    }
    return indexes;
}

} // namespace

RunAs run_as(const Sitting& sitting, std::size_t scenario, const RunText& text) {
    RunAs run{{}, indexes_from(text.indexes), text.worst_case};
    if (!text.extra.empty()) {
        run.extra = amount_typed("--extra", text.extra, Money{}, most_typed,
                                 {.kind = Wanted::Kind::amount_not_below_zero, .such = "150"});
    }
    const bool asks_for_a_way = run.worst_case || !run.indexes.empty();
    if (asks_for_a_way && !sitting.rules()[scenario].adjustable) {
        refuse_typed(run.worst_case ? "--worst-case" : "--index",
                     sitting.inquiry().scenarios[scenario].name,
                     {.kind = Wanted::Kind::adjustable_scenario});
    }
    return run;
}

AffordFacts afford_facts(const Inquiry& inquiry, const AffordText& text) {
    AffordFacts facts;
    facts.automated = text.automated;
    if (!text.reserves.empty()) {
        facts.reserve_months =
            whole_typed("--reserves", text.reserves, 0, 24, Wanted::Kind::whole_months);
    }
    if (!text.step.empty()) {
        facts.step = amount_typed("--step", text.step, Money::cents(1), most_typed,
                                  {.kind = Wanted::Kind::amount_above_zero, .such = "5000"});
    }
    if (!inquiry.monthly_income && !inquiry.cash) refuse(problems::no_means());
    return facts;
}

LaterFacts later_facts(const LaterText& text) {
    LaterFacts facts;
    if (!text.month.empty())
        facts.month = whole_typed("--month", text.month, 1, 120, Wanted::Kind::whole_months);
    if (text.loan_rate.empty() != text.loan_months.empty()) {
        refuse_typed(text.loan_rate.empty() ? "--loan-months" : "--loan-rate",
                     text.loan_rate + text.loan_months,
                     {.kind = Wanted::Kind::loan_rate_and_months});
    }
    if (text.loan_rate.empty()) return facts;
    const Rate rate = rate_typed(
        "--loan-rate", text.loan_rate,
        {.kind = Wanted::Kind::yearly_percent, .most = Decimal::whole(100), .such = "11.5"});
    facts.loan = PersonalLoan{rate, Months(whole_typed("--loan-months", text.loan_months, 1, 240,
                                                       Wanted::Kind::whole_months))};
    return facts;
}

} // namespace quoin
