// Place: what owning a home costs locally: taxes, districts, insurance, dues, closing costs.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/lending/band_table.hpp>
#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/month_part.hpp>
#include <quoin/lending/residual_income.hpp>

namespace quoin {

struct Levy {
    std::string name;
    Decimal mills; ///< dollars a year for each thousand of taxable value
};

struct Exemption {
    std::string name;
    std::optional<Money> amount;
    Percent percent;   ///< of the assessed value, where no amount is given
    int from_year = 1; ///< first year of ownership that has it
};

/// First bills of new construction that are on the land alone.
struct LandOnly {
    Percent land_percent; ///< of the price
    int months = 12;
};

/// A day of every year on which a share of the year's property tax falls due.
struct TaxDue {
    unsigned month = 1;
    unsigned day = 1;
    Percent share;
};

/// How the lender's escrow account is run in this place.
struct EscrowTerms {
    int cushion_months = 2; ///< at most two (12 CFR 1024.17(c)(1))
    int prepaid_insurance_months = 12; ///< 2 to 24: past the first payment
};

struct District {
    std::string name;
    std::optional<Money> yearly;
    Decimal mills; ///< where no yearly amount is given
};

struct Dues {
    std::string name;
    Money monthly;
    MonthPart part = MonthPart::association_dues;
};

struct Place {
    std::string id;
    std::string name;
    Status status = Status::sample;
    std::string source;
    LimitArea loan_limit_area = LimitArea::baseline;
    std::optional<Region> region; ///< for the residual income of a household
    bool rural_eligible = false;  ///< inside USDA's eligible area
    Percent assessed_percent;
    std::vector<Levy> levies;
    std::vector<Exemption> exemptions;
    std::optional<LandOnly> land_only;
    std::vector<TaxDue> tax_due; ///< shares of 100%; empty: not known, so no escrow is figured
    EscrowTerms escrow;
    std::vector<District> districts;
    Percent dwelling_percent; ///< of the price: what homeowner's insurance has to rebuild
    BandTable homeowner;      ///< per thousand of dwelling value, a year
    PartAmounts premiums;     ///< a year, of the other insurance; for floods: in a flood zone
    std::vector<Dues> dues;
    std::vector<ClosingCost> closing_costs;
};

} // namespace quoin
