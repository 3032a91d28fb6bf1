// Sums and differences of a month's parts.
#include <quoin/loan/monthly.hpp>

namespace quoin {

Money Monthly::total() const {
    return principal_and_interest + mortgage_insurance + property_tax + homeowners_insurance +
           flood_insurance + wind_insurance + association_dues + district_charges;
}

Monthly operator-(const Monthly& a, const Monthly& b) {
    Monthly d;
    for (const auto part :
         {&Monthly::principal_and_interest, &Monthly::mortgage_insurance, &Monthly::property_tax,
          &Monthly::homeowners_insurance, &Monthly::flood_insurance, &Monthly::wind_insurance,
          &Monthly::association_dues, &Monthly::district_charges}) {
        d.*part = a.*part - b.*part;
    }
    return d;
}

} // namespace quoin
