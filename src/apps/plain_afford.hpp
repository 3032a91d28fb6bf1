// "How much home?" asked with figures alone: no price book, no inquiry file.
//
// The figures become a desk and an inquiry like any other, so that the answer is the engine's own;
// what they do not say is assumed, and each assumption is told.
#pragma once

#include <string>
#include <vector>

#include <quoin/inquiry/desk.hpp>
#include <quoin/inquiry/inquiry.hpp>
#include <quoin/questions/questions.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin::apps {

struct PlainCase {
    Desk desk;
    Inquiry inquiry;
    std::vector<std::string> assumptions; ///< in words
};

/// `given` are the options that stand in place of an inquiry, by their names; an empty one counts
/// as not given. Throws Refused where a figure is not usable. `rates` is where the programs are;
/// `today` is the day it is as of where none is given.
[[nodiscard]] PlainCase plain_case(const Given& given, const std::string& rates, Date today,
                                   const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin::apps
