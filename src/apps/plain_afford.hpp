// "How much home?" asked with figures alone: no price book, no inquiry file.
//
// The figures become a desk and an inquiry like any other, so that the answer is the engine's own;
// what they do not say is assumed, and each assumption is told.
#pragma once

#include <string>
#include <vector>

#include <quoin/inquiry/desk.hpp>
#include <quoin/inquiry/inquiry.hpp>

namespace quoin::apps {

/// The options as they were written; empty: not given.
struct PlainText {
    std::string income;
    std::string debts;
    std::string cash;
    std::string rate;
    std::string years;
    std::string down;
    std::string property_tax;
    std::string insurance;
    std::string dues;
    std::string closing_costs;
    std::string score;
    std::string taxes;
    std::string persons;
    std::string region;
    std::string square_feet;
    std::string as_of;
    std::vector<std::string> programs;
};

struct PlainCase {
    Desk desk;
    Inquiry inquiry;
    std::vector<std::string> assumptions; ///< in words
};

/// Throws Refused where a figure is not usable. `rates` is where the programs are; `today` is the
/// day it is as of where none is given.
[[nodiscard]] PlainCase plain_case(const PlainText& text, const std::string& rates, Date today);

} // namespace quoin::apps
