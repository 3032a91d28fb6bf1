// What is said of a loan's terms and of lengths of time, in English.
#pragma once

#include "words/terms.hpp"

namespace quoin::english {

inline constexpr TermsWords terms = {
    .years = [](int n) { return n == 1 ? std::string("1 year") : fmt::format("{} years", n); },
    .months = "{} months",
    .no_apr = "not to be had",
    .line = "{}: {} note rate, {} points, APR {}, {}, {} down ({}), LTV {}, {}-day lock{}{}",
    .extra_principal = ", {} extra principal a month by choice",
    .adjustable = ", its rate fixed for {}, then every {} months the {} ({} on {:en}) + {}, "
                  "changing by at most {} points at first, {} later and {} above the start, so "
                  "never over {}: at the worst {} a month of principal and interest",
    .to_bring = "{} to bring to the closing",
    .back = "{} back at the closing",
};

} // namespace quoin::english
