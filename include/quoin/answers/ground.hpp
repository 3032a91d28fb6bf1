// Ground: what a rechecked figure rests on.
#pragma once

#include <optional>
#include <string>
#include <variant>

#include <quoin/exact/date.hpp>
#include <quoin/lending/dated.hpp>
#include <quoin/lending/month_part.hpp>
#include <quoin/loan/proof_codes.hpp>

namespace quoin {

struct RuleOfFile {
    FileRule rule = FileRule::price_book;
    std::string file; ///< its id
    friend bool operator==(const RuleOfFile&, const RuleOfFile&) = default;
};
/// The premium of a part of the month, as a place states it.
struct PremiumOfPlace {
    MonthPart part = MonthPart::homeowners_insurance;
    std::string place; ///< its id
    friend bool operator==(const PremiumOfPlace&, const PremiumOfPlace&) = default;
};
/// A text is a law, or a member of a file: "12 CFR 1026", "fha annual_fee". Empty: none.
using GroundRule = std::variant<std::string, CommonRule, RuleOfFile, PremiumOfPlace>;
/// A text is a publication or a firm: "HUD Mortgagee Letter 2023-05". Empty: none.
using GroundSource = std::variant<std::string, CommonSource>;

struct Ground {
    int rounding = 0; ///< number in docs/roundings.md; 0: nothing is rounded
    GroundRule rule;
    std::string bands;    ///< of the row it was read at, as written: "ltv > 95, term > 180"
    bool no_more = false; ///< the rule has ended
    std::optional<Date> effective;
    std::optional<Date> until;
    bool beyond_end = false;      ///< the last edition, used on: a later one is not in the data
    std::optional<Status> status; ///< nothing: it is reckoned alone
    GroundSource source;
};

} // namespace quoin
