// What a buyer takes home of the desk: files that every command reads, held in memory.
//
//   const TakenHome taken = take_home({.inquiry = "buyers/one.json"});
//   taken.files  ->  {"inquiry.json", ...}, {"pricebook.json", ...}, {"rates/sheets/....json", ...}
//
// Each file is filtered by the one table of what may go (what_goes.cpp), after what is not about
// this buyer's home and loans has been cut out of it.
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "inquiry_to_take.hpp"
#include "pictures_taken.hpp"

namespace quoin::apps {

struct TakeHomeAsked {
    std::string inquiry;                   ///< file
    std::string rates = {};                ///< folder; empty: not said
    Language language = Language::english; ///< of the report; the files keep all of theirs
    std::set<Private> with = {};           ///< what the buyer lets go
    std::size_t most_picture_bytes = apps::most_picture_bytes;
};

struct TakenFile {
    std::string path; ///< from the folder that all of them are put in
    std::string bytes;
};

struct TakenCount {
    TakenPart part;
    std::size_t went = 0;
    std::size_t all = 0;
};

/// What is told of it.
struct TakenReport {
    std::string plan;
    std::string elevation;
    std::size_t other_plans = 0;
    std::vector<TakenCount> counts;
    std::size_t pictures = 0;
    std::size_t picture_bytes = 0;
    std::size_t most_picture_bytes = 0;
    std::vector<std::string> pictures_left_out;
    std::string sheet; ///< id
    bool shared = false;
    InquiryToTake asked;
    std::vector<std::string> wishes_left_out; ///< options of other plans alone
};

struct TakenHome {
    std::vector<TakenFile> files; ///< each path once
    TakenReport report;
};

/// Throws Refused where the inquiry cannot be answered. What is taken answers as the desk does:
/// its figures under the inquiry's loans are the same to the cent.
[[nodiscard]] TakenHome take_home(const TakeHomeAsked& asked);

} // namespace quoin::apps
