// Why something of a price book cannot be had, as values: words/reasons.hpp has the sentences.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/decimal.hpp>

namespace quoin {

enum class Grade; ///< of a lot

struct WhyNot {
    enum class Kind : std::uint8_t {
        // An option, by the home.
        not_on_plan,
        only_on_elevations, ///< names
        only_on_lots,       ///< names
        only_on_grades,     ///< grades
        lot_too_small,      ///< name of the measure, least
        past_cutoff,        ///< name of the stage
        // By other options.
        needs,              ///< names, any of them
        excludes,           ///< names
        one_of_kind,        ///< names of those that are chosen
        two_forms,          ///< of one option
        better_in_package,  ///< name of the package
        another_choice,     ///< of it is selected
        selection_would_go, ///< name
        outweighed,         ///< by what is worth more
        // An incentive.
        not_for_use,
        not_for_plan,
        not_for_lot,
        contract_too_late, ///< until
        closing_too_late,  ///< until
        other_lender,      ///< name of the lender whose loans it is given with
        takes_all,         ///< of the price
    };

    Kind kind = Kind::not_on_plan;
    std::vector<std::string> names = {};
    std::vector<Grade> grades = {};
    Decimal least = {};
    std::optional<Date> until = {};

    friend bool operator==(const WhyNot&, const WhyNot&) = default;
};

} // namespace quoin
