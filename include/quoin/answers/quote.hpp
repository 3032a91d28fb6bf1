// "What does this home come to, and what is it a month?"
//
//   QuoteAnswer answer = quote(Sitting(desk, inquiry));
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/home/priced_home.hpp>

namespace quoin {

struct QuoteLine {
    LineKind kind = LineKind::base;
    std::string area; ///< empty for base, elevation, lot and incentives
    std::string id;   ///< of the option or incentive
    std::string name;
    std::string detail; ///< level or choice
    std::string note;   ///< the catch
    Decimal quantity = Decimal::whole(1);
    Unit unit = Unit::each;
    Money unit_price;
    Money amount;
    bool structural = false;
    Work work;
};

struct QuoteRequest {
    std::string area;
    std::string text;
    std::optional<Money> estimate;
};

/// A choice at no cost that the buyer has not made yet.
struct OpenChoice {
    std::string area;
    std::string id;
    std::string name;
    std::string default_choice;
};

/// What an incentive gives to costs, points or a buydown instead of the price: one for each
/// incentive and use.
struct QuoteCredit {
    std::string id;
    std::string name;
    IncentiveUse use = IncentiveUse::closing_costs;
    Money amount;
};

struct QuoteAnswer {
    Heading heading;
    std::vector<QuoteLine>
        lines; ///< base, elevation, lot; options by area in tour order; incentives
    Money options;
    Money incentives;
    Money contract_price;
    std::vector<QuoteRequest> requests; ///< to be confirmed; not in the price
    std::vector<OpenChoice> open_choices;
    std::vector<QuoteCredit> credits;
    std::vector<std::string> incentive_conditions; ///< of the incentives used
    std::vector<std::string> incentive_lenders;    ///< those an incentive used is tied to
    Money earnest_deposit;
    Money option_deposit;
    std::optional<Money> deposits_paid;
    std::string deposit_note;
    std::vector<ScenarioAnswer> scenarios;
};

/// Lines in the order they are read: home, options by area, incentives; the buyer's order within.
[[nodiscard]] std::vector<QuoteLine> quote_lines(const Sitting& sitting, const PricedHome& home);

[[nodiscard]] QuoteAnswer quote(const Sitting& sitting);

} // namespace quoin
