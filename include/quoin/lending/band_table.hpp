// BandTable: named dimensions, bands with the published edges, one value a row.
//
// MI factors, premiums, funding fees, caps, limits, price adjustments and premium rates are all
// band tables. A band's edges are kept as closed ranges of billionths, so "> 90, <= 95" is exact.
//
//   Case where;
//   where.set(Dimension::ltv, ltv.value());
//   where.set(Dimension::term, Decimal::whole(360));
//   if (auto row = table.row(where)) table.value(*row);
#pragma once

#include <array>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/lending/dated.hpp>

namespace quoin {

enum class Dimension {
    ltv,            ///< percent
    down,           ///< down payment, percent of the price
    term,           ///< months
    base_loan,      ///< dollars
    loan,           ///< dollars: the base loan too, for tables are read before fees are financed
    score,          ///< credit score
    price,          ///< dollars
    dwelling_value, ///< dollars
    use,            ///< named: first, subsequent, exempt
    area,           ///< named: baseline, ceiling
};
template <>
inline constexpr auto
    codes<Dimension> = coded<Dimension>({{Dimension::ltv, "ltv"},
                                         {Dimension::down, "down"},
                                         {Dimension::term, "term"},
                                         {Dimension::base_loan, "base_loan"},
                                         {Dimension::loan, "loan"},
                                         {Dimension::score, "score"},
                                         {Dimension::price, "price"},
                                         {Dimension::dwelling_value, "dwelling_value"},
                                         {Dimension::use, "use"},
                                         {Dimension::area, "area"}});
inline constexpr std::size_t dimension_count = codes<Dimension>.size();

/// Use of a VA entitlement, in the order of the names of Dimension::use.
enum class EntitlementUse { first, subsequent, exempt };
/// Loan-limit area, in the order of the names of Dimension::area.
enum class LimitArea { baseline, ceiling };

/// The coordinates at which tables are read. A dimension not set matches only rows open to any.
class Case {
  public:
    constexpr Case() { at_.fill(unset); }

    constexpr void set(Dimension dimension, Decimal value) {
        at_[static_cast<std::size_t>(dimension)] = value.billionths();
    }
    constexpr void set(Dimension dimension, Money dollars) {
        constexpr std::int64_t per_cent = Decimal::one / 100;
        at_[static_cast<std::size_t>(dimension)] =
            multiply_divide(dollars.count(), per_cent, 1, Rounding::down);
    }
    [[nodiscard]] constexpr std::int64_t at(std::size_t dimension) const { return at_[dimension]; }

    static constexpr std::int64_t unset = std::numeric_limits<std::int64_t>::min();

  private:
    std::array<std::int64_t, dimension_count> at_{};
};

/// A closed range of billionths.
struct Band {
    std::int64_t lowest = Case::unset;
    std::int64_t highest = std::numeric_limits<std::int64_t>::max();

    [[nodiscard]] constexpr bool holds(std::int64_t value) const {
        return lowest <= value && value <= highest;
    }
};

struct BandTable : Dated {
    std::string name;        ///< shown to people; may be empty
    std::string unit;        ///< of the values: "percent", "money", ...
    bool by_closing = false; ///< dated by the closing, not by the inquiry
    std::vector<Dimension> dimensions;
    std::vector<Band> bands;          ///< row by row, one for each dimension
    std::vector<std::string> written; ///< each row's bands as written: "ltv > 90, <= 95"
    std::vector<Decimal> values;

    [[nodiscard]] std::optional<int> row(const Case& where) const;
    [[nodiscard]] Decimal value(int row) const { return values[static_cast<std::size_t>(row)]; }
    [[nodiscard]] std::optional<Decimal> find(const Case& where) const {
        const auto found = row(where);
        return found ? std::optional(value(*found)) : std::nullopt;
    }
};

/// The value of "months" tables that stands for the whole term.
inline constexpr Decimal whole_term = Decimal::whole(100'000);

} // namespace quoin
