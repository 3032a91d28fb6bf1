// The sentences of a problem, made of its id and its arguments when it is told.
//
//   words_of(problems::lot_not_free(spot, "7", LotStatus::sold), say).found
//       ->  "lot 7, which is sold"
#pragma once

#include <string>

#include <quoin/text/findings.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Each at most caps::line letters long.
struct ProblemWords {
    std::string found;    ///< "found 12500.555"
    std::string of_it;    ///< the same without the name of the thing that it begins with
    std::string expected; ///< "expected dollars with at most two decimals"
    std::string advice;   ///< what to do; may be empty
};

[[nodiscard]] ProblemWords words_of(const Problem& problem, const Catalogue& say);

} // namespace quoin
