// "What can it be paid with?" The loan programs and the rates of the day that an inquiry can use.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>

namespace quoin {

/// A program with its ladders on the rate sheet: one for each term and lock.
struct OfferedProgram {
    std::string id;
    std::string name;
    std::string summary;
    std::string fine_print;
    std::string upfront_name; ///< empty: it has no fee up front
    std::string annual_name;  ///< empty: it has no insurance or fee by the month
    ProgramKind kind = ProgramKind::conventional;
    std::vector<Ladder> ladders;
    ListGaps gaps; ///< lists without an edition in force on the inquiry's days
};

struct ProgramsAnswer {
    Heading heading;
    std::string sheet_note;
    std::vector<OfferedProgram> programs; ///< those that the sheet has rates for
};

[[nodiscard]] ProgramsAnswer programs(const Sitting& sitting);

} // namespace quoin
