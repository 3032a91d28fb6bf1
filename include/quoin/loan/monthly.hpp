// The month by its parts.
#pragma once

#include <quoin/exact/money.hpp>

namespace quoin {

/// The parts of a month's figure.
struct Monthly {
    Money principal_and_interest;
    Money mortgage_insurance;
    Money property_tax;
    Money homeowners_insurance;
    Money flood_insurance;
    Money wind_insurance;
    Money association_dues;
    Money district_charges;

    [[nodiscard]] Money total() const;
    /// What of it the home takes and not the loan.
    [[nodiscard]] Money local() const {
        return total() - principal_and_interest - mortgage_insurance;
    }
    friend bool operator==(const Monthly&, const Monthly&) = default;
};
[[nodiscard]] Monthly operator-(const Monthly& a, const Monthly& b);

} // namespace quoin
