// What is said of a desk that a buyer takes home: what went along, and what was left out.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

/// What of a buyer's money goes only where the buyer says so.
enum class Private { score, income, debts, cash };
template <>
inline constexpr auto codes<Private> = coded<Private>({{Private::score, "score"},
                                                       {Private::income, "income"},
                                                       {Private::debts, "debts"},
                                                       {Private::cash, "cash"}});

/// What is counted of what went.
enum class TakenPart { options, incentives, lots, programs, rates };
template <>
inline constexpr auto codes<TakenPart> = coded<TakenPart>({{TakenPart::options, "options"},
                                                           {TakenPart::incentives, "incentives"},
                                                           {TakenPart::lots, "lots"},
                                                           {TakenPart::programs, "programs"},
                                                           {TakenPart::rates, "rates"}});

struct TakeHomeWords {
    Phrase<> went;
    Phrase<Text, Text> plan; ///< plan, elevation
    Phrase<int> other_plans; ///< by name, size and price
    NamesOf<TakenPart> part;
    Phrase<Text, int, int> counted; ///< what, how many of how many
    Phrase<int, int> pictures;      ///< how many, kB in all
    Phrase<Text> all_rates;         ///< of the ladders in play: the sheet
    Phrase<Text> own_rates;         ///< the rows in use alone: the sheet
    NamesOf<Private> of_buyer;
    Phrase<Text> in_file; ///< what of the buyer
    Phrase<> left_out;
    Phrase<int> least_score;      ///< that the file says
    Phrase<Text, int> least_of;   ///< loan, its score
    Phrase<Text> down_as_amount;  ///< loan
    Phrase<Text> loan_at_home;    ///< loan
    Phrase<Text> wish;            ///< option
    Phrase<Text, int> no_picture; ///< file, kB that all may have
    Phrase<> for_the_desk;
    Phrase<Text, int, int> written; ///< file or folder, files, kB
};

} // namespace quoin
