// What questions are asked with: options given as text, read against the desk and the inquiry.
//
// Shared by the command line and the server, so that a mistake is told in the same words on both.
// Each function throws Refused where the text is not usable.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/inquiry/asks.hpp>
#include <quoin/inquiry/sitting.hpp>

namespace quoin {

/// The index of a scenario by its name in the inquiry.
[[nodiscard]] std::size_t scenario_named(const Inquiry& inquiry, const std::string& name);
/// The first one where no name is given.
[[nodiscard]] std::size_t scenario_or_first(const Inquiry& inquiry, const std::string& name);

/// An option asked about by name: ID, ID:LEVEL, with =NUMBER for a quantity or an amount to spend.
/// Records a problem and returns nothing where there is no such option.
[[nodiscard]] std::optional<Pick> asked_option(const PriceBook& book, const std::string& text,
                                               Findings& findings);

/// Options written as ID, ID:LEVEL or ID=NUMBER; every mistake is reported at once.
[[nodiscard]] std::vector<Pick> picks_named(const PriceBook& book,
                                            const std::vector<std::string>& texts);

/// Areas of the home by their ids; every mistake is reported at once.
[[nodiscard]] std::vector<Index<Area>> areas_named(const PriceBook& book,
                                                   const std::vector<std::string>& ids);

/// An appraised value in dollars, above zero.
[[nodiscard]] Money appraised_value(const std::string& text);

/// A builder's money and the years to weigh it over, as text; years may be empty. It must be under
/// the price of the home that it is for.
[[nodiscard]] CreditAsk credit_ask(const Sitting& sitting, const std::string& amount,
                                   const std::string& years);

/// How far and how finely a rate moves, as text; either may be empty.
[[nodiscard]] ShiftAsk shift_ask(const std::string& steps, const std::string& step);
/// A limit in dollars, not below zero; `name` is the option's.
[[nodiscard]] Money limit_given(const std::string& name, const std::string& text);

/// How many nodes a search may look into.
[[nodiscard]] std::int64_t nodes_given(const std::string& text);

/// How a schedule is to be run, as text; empty where nothing was said.
struct RunText {
    std::string extra;                ///< principal a month, in dollars
    std::vector<std::string> indexes; ///< of an adjustable rate at each change, in percent
    bool worst_case = false;
};
[[nodiscard]] RunAs run_as(const Sitting& sitting, std::size_t scenario, const RunText& text);

/// What can be afforded, as text; empty where nothing was said.
struct AffordText {
    std::string reserves; ///< months
    std::string step;     ///< dollars
    bool automated = false;
};
/// Throws Refused too where the inquiry has neither income nor cash to hold a price against.
[[nodiscard]] AffordFacts afford_facts(const Inquiry& inquiry, const AffordText& text);

/// When and how an option is done after the closing, as text; empty where nothing was said.
struct LaterText {
    std::string month;
    std::string loan_rate;   ///< a year, in percent
    std::string loan_months; ///< both or neither
};
[[nodiscard]] LaterFacts later_facts(const LaterText& text);

} // namespace quoin
