// "What can it be paid with?" The loan programs and the rates of the day that an inquiry can use.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// What a scenario can choose under a program, beside its term, rate and down payment.
struct ProgramChoices {
    bool fee = false;        ///< whether the fee up front is financed
    bool mi_premium = false; ///< how a lender's mortgage insurance is paid
    bool mi_ends = false;    ///< when it ends
    bool use = false;        ///< of a VA entitlement: a table is banded by it
};
template <>
inline constexpr auto codes<ProgramChoices> =
    coded<bool ProgramChoices::*>({{&ProgramChoices::fee, "fee"},
                                   {&ProgramChoices::mi_premium, "mi_premium"},
                                   {&ProgramChoices::mi_ends, "mi_ends"},
                                   {&ProgramChoices::use, "use"}});

/// A program with its ladders on the rate sheet: one for each term and lock.
struct OfferedProgram {
    std::string id;
    std::string name;
    std::string summary;
    std::string fine_print;
    std::string upfront_name; ///< empty: it has no fee up front
    std::string annual_name;  ///< empty: it has no insurance or fee by the month
    ProgramKind kind = ProgramKind::conventional;
    ProgramChoices choices;
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
