// FigureLabel: what a rechecked figure is, by code and what the code speaks of.
#pragma once

#include <string>
#include <variant>

#include <quoin/exact/date.hpp>
#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/month_part.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/loan/proof_codes.hpp>

namespace quoin {

struct NamedLabel {
    NamedFigure figure = NamedFigure::itself;
    std::string name; ///< in the file that it is from
};
/// Likewise, of a part of the month.
struct PartLabel {
    NamedFigure figure = NamedFigure::itself;
    MonthPart part = MonthPart::principal_and_interest;
};
struct NumberedLabel {
    NumberedFigure figure = NumberedFigure::subsidy;
    int number = 0; ///< year or payment
};
/// An option at a level, or a choice of it.
struct ChoiceLabel {
    std::string option;
    std::string choice;
};
struct CostLabel {
    std::string name;
    CostSection section = CostSection::other;
    PaidBy paid_by = PaidBy::buyer;
    bool finance_charge = false;
};
/// A bill of the tax and the districts, or of insurance.
struct BillLabel {
    MonthPart part = MonthPart::property_tax;
    bool on_land = false; ///< alone
    Date due;
};
/// What of a credit goes to a use.
struct UseLabel {
    CreditUse use = CreditUse::points;
    bool single_premium = false; ///< the upfront fee is one
};

using FigureLabel = std::variant<FigureCode, NamedLabel, PartLabel, NumberedLabel, ChoiceLabel,
                                 CostLabel, BillLabel, UseLabel>;

} // namespace quoin
