// Reckoning the formulas of a recheck exactly, as fractions.
#pragma once

#include <map>
#include <string>
#include <vector>

#include <boost/multiprecision/cpp_int.hpp>

#include <quoin/answers/recheck.hpp>

namespace quoin {

using Fraction = boost::multiprecision::cpp_rational;

/// What formulas are reckoned from.
struct Known {
    std::map<std::string, Fraction, std::less<>> figures;
    const std::vector<RecheckedMonth>* months = nullptr;
    int last_month = 0;
};

/// The exact value of a formula. Throws Broken where it names a figure that is not known.
[[nodiscard]] Fraction reckon(const Formula& formula, const Known& known);
/// Of what comes to whole cents.
[[nodiscard]] Money reckon_money(const Formula& formula, const Known& known);

} // namespace quoin
