// RateSheet: the rates of a day: ladders of rate against points, adjustments, MI factors.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/lending/band_table.hpp>
#include <quoin/lending/closing_cost.hpp>

namespace quoin {

struct Rung {
    Rate rate;
    Points points; ///< before adjustments; negative: a credit
};

/// Rates of a program, term and lock, from the lowest up; points fall as rates rise.
struct Ladder {
    std::string program;
    int months = 0;
    int lock_days = 0;
    std::vector<Rung> rungs;
    std::optional<Percent> margin = {}; ///< of an adjustable program's later rates, over the index
};

/// What the later rates of adjustable loans follow.
struct RateIndex {
    std::string name;
    Percent value;
    Date date;
};

/// Points added by score, LTV or term.
struct Adjustment {
    std::vector<std::string> programs;
    BandTable table;
};

struct RateSheet {
    std::string id;
    Date date;
    Date good_through;
    bool sample = true;
    std::string lender;
    std::string license;
    std::string note;
    int per_diem_year = 360;        ///< days of the year that prepaid interest is figured with
    std::optional<RateIndex> index; ///< needed for adjustable programs alone
    std::vector<Ladder> ladders;
    std::vector<Adjustment> adjustments;
    std::vector<ClosingCost> costs;            ///< the lender's own
    std::vector<BandTable> mortgage_insurance; ///< yearly percent of the base loan
    std::vector<BandTable> single_premium;     ///< the same paid up at closing: percent, once

    /// The ladder of a program and term with the shortest lock of at least `lock_days`.
    [[nodiscard]] const Ladder* ladder(const std::string& program, int months, int lock_days) const;
};

/// What a sheet is chosen by.
struct SheetHead {
    std::string id;
    Date date;
};

} // namespace quoin
