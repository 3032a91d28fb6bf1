// Rows of band tables as people read them.
#include <shown.hpp>

#include "render/band_words.hpp"

using namespace quoin;

TEST_CASE("The bands of a row are told in words, with the units of their figures") {
    CHECK(band_words("ltv > 90, <= 95") == "LTV over 90 % up to 95 %");
    CHECK(band_words("dwelling_value > 300000, <= 400000") ==
          "dwelling value over $300,000 up to $400,000");
    CHECK(band_words("term > 180; base_loan <= 726200; score >= 720, < 760") ==
          "term over 180 months, base loan up to $726,200, credit score from 720 under 760");
    CHECK(band_words("use first") == "use first");
    CHECK(band_words("any").empty());
    CHECK(band_words("").empty());
}

TEST_CASE("What two rows share is left out of what tells them apart") {
    CHECK(band_words("term > 180; ltv > 95", "term > 180; ltv > 90, <= 95") == "LTV over 95 %");
    CHECK(band_words("term > 180; ltv > 95", "term > 180; ltv > 95").empty());
}
