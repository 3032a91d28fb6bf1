// Heading: what stands at the top of every answer: whose home, on what day, on whose figures.
#pragma once

#include <string>

#include <quoin/inquiry/sitting.hpp>

namespace quoin {

struct Heading {
    std::string community;
    std::string builder;
    std::string buyer;
    std::string prepared_by;
    std::string originator; ///< empty: none named yet
    std::string plan;
    std::string style;
    Decimal square_feet;
    std::string elevation;
    std::string lot;
    std::string price_book_version;
    Date price_book_expires;
    Date as_of;
    Date contract;
    Date closing;
    std::string place;
    bool sample_place = false;
    std::string rate_sheet;
    Date rates_date;
    Date rates_good_through;
    std::string lender;
    std::string license;
    bool sample_rates = false;
};

[[nodiscard]] Heading heading_of(const Sitting& sitting);

} // namespace quoin
