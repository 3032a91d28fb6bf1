// An inquiry as its buyer takes it home: the buyer's own, with what is private only where ticked.
#pragma once

#include <set>
#include <string>
#include <vector>

#include <quoin/inquiry/inquiry.hpp>

#include "words/take_home.hpp"

namespace quoin::apps {

struct ScoreSaid {
    std::string scenario; ///< that has a score of its own; empty: the inquiry's
    int score = 0;        ///< the least with the same figures
};

struct InquiryToTake {
    Value inquiry;
    std::vector<Private> in_file;            ///< of those that the inquiry has
    std::vector<Private> at_home;            ///< likewise; but the score, which has to be said
    std::vector<ScoreSaid> scores;           ///< in place of the real ones
    std::vector<std::string> down_as_amount; ///< scenarios whose down payment was from the cash
    std::vector<std::string> loans_at_home;  ///< those that the cash does not reach
};

/// `document` is the file that the inquiry was read from, against this desk.
[[nodiscard]] InquiryToTake inquiry_to_take(const Document& document, const Desk& desk,
                                            const Inquiry& inquiry, const std::set<Private>& with);

} // namespace quoin::apps
