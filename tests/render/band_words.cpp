// Rows of band tables as people read them.
#include <shown.hpp>

#include "render/band_words.hpp"
#include <quoin/words/catalogue.hpp>

using namespace quoin;

namespace {

std::string told(std::string_view row, std::string_view beside = {}) {
    return band_words(row, beside, catalogue_in(Language::english).jumps);
}

} // namespace

TEST_CASE("The bands of a row are told in words, with the units of their figures") {
    CHECK(told("ltv > 90, <= 95") == "LTV over 90% and up to 95%");
    CHECK(told("dwelling_value > 300000, <= 400000") ==
          "dwelling value over $300,000 and up to $400,000");
    CHECK(
        told("term > 180; base_loan <= 726200; score >= 720, < 760") ==
        "loan term over 180 months, base loan amount up to $726,200, credit score at least 720 and "
        "under 760");
    CHECK(told("use first") == "use first");
    CHECK(told("any").empty());
    CHECK(told("").empty());
}

TEST_CASE("What two rows share is left out of what tells them apart") {
    CHECK(told("term > 180; ltv > 95", "term > 180; ltv > 90, <= 95") == "LTV over 95%");
    CHECK(told("term > 180; ltv > 95", "term > 180; ltv > 95").empty());
}
