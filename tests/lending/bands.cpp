// One band as text: which values it holds, at, just below and just above each edge.
#include <shown.hpp>

#include "lending/band.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

bool holds(Dimension dimension, const char* band, const char* value) {
    const auto parsed = parse_band(dimension, band);
    REQUIRE(parsed.has_value());
    return parsed->holds(decimal(value).billionths());
}

} // namespace

TEST_CASE("A comparison is open or closed as it is written, to the billionth") {
    struct Row {
        const char* band;
        const char* value;
        bool held;
    };
    for (const Row& row : {
             Row{"<= 90", "90", true},
             Row{"<= 90", "90.000000001", false},
             Row{"<= 90", "89.999999999", true},
             Row{"<= 90", "-1", true},
             Row{"< 90", "90", false},
             Row{"< 90", "89.999999999", true},
             Row{">= 580", "580", true},
             Row{">= 580", "579.999999999", false},
             Row{">= 580", "900", true},
             Row{"> 90", "90", false},
             Row{"> 90", "90.000000001", true},
             Row{"= 360", "360", true},
             Row{"= 360", "359.999999999", false},
             Row{"= 360", "360.000000001", false},
             Row{"> 90, <= 95", "90", false},
             Row{"> 90, <= 95", "90.01", true},
             Row{"> 90, <= 95", "95", true},
             Row{"> 90, <= 95", "95.01", false},
             Row{">= 5, < 10", "5", true},
             Row{">= 5, < 10", "4.99", false},
             Row{">= 5, < 10", "9.999999999", true},
             Row{">= 5, < 10", "10", false},
             Row{"> 0, <= 0.5", "0.25", true},
             Row{"> -2, < 2", "-2", false},
             Row{"any", "0", true},
             Row{"any", "-9000000000", true},
         }) {
        CAPTURE(row.band, row.value);
        CHECK(holds(Dimension::ltv, row.band, row.value) == row.held);
    }
}

TEST_CASE("Blanks do not matter, and several comparisons narrow one band") {
    for (const char* band :
         {">90,<=95", " > 90 , <= 95 ", "<= 95, > 90", "> 80, > 90, <= 95", "> 90, <= 95, <= 99"}) {
        CAPTURE(band);
        CHECK_FALSE(holds(Dimension::ltv, band, "90"));
        CHECK(holds(Dimension::ltv, band, "90.000000001"));
        CHECK(holds(Dimension::ltv, band, "95"));
        CHECK_FALSE(holds(Dimension::ltv, band, "95.000000001"));
    }
    CHECK(holds(Dimension::ltv, " any ", "50"));
}

TEST_CASE("A named dimension takes its names and no comparison") {
    struct Row {
        Dimension dimension;
        std::vector<const char*> names;
    };
    for (const Row& row : {
             Row{Dimension::use, {"first", "subsequent", "exempt"}},
             Row{Dimension::area, {"baseline", "ceiling"}},
         }) {
        CAPTURE(name_of(row.dimension));
        for (std::size_t i = 0; i < row.names.size(); ++i) {
            const auto band = parse_band(row.dimension, row.names[i]);
            REQUIRE(band.has_value());
            for (std::size_t k = 0; k < row.names.size(); ++k) {
                CHECK(band->holds(Decimal::whole(static_cast<int>(k)).billionths()) == (i == k));
            }
        }
        for (const char* text : {"= 0", ">= 1", "First", "primary home", "", "first, second"}) {
            CAPTURE(text);
            CHECK_FALSE(parse_band(row.dimension, text).has_value());
        }
        CHECK(parse_band(row.dimension, "any").has_value());
    }
}

TEST_CASE("What is no band of a number") {
    for (const char* text : {"",
                             " ",
                             "80",
                             "<",
                             "<=",
                             "> ",
                             "=> 80",
                             "=< 80",
                             "== 80",
                             "<> 80",
                             "< 80 > 70",
                             "<= 90; > 80",
                             "<= eighty",
                             "<= 90%",
                             "<= 1,000",
                             "<= 80,",
                             ", <= 80",
                             "> 90, < 90",
                             "> 90, <= 90",
                             ">= 90, < 90",
                             "> 95, <= 90",
                             "= 80, = 90",
                             "any, <= 90",
                             "first",
                             "<= 0.0000000001",
                             "<= 99999999999"}) {
        CAPTURE(text);
        CHECK_FALSE(parse_band(Dimension::ltv, text).has_value());
    }
}

TEST_CASE("Every dimension goes by its name") {
    for (std::size_t i = 0; i < dimension_count; ++i) {
        const auto dimension = static_cast<Dimension>(i);
        CHECK(meaning_in(codes<Dimension>, name_of(dimension)) == dimension);
    }
    CHECK_FALSE(meaning_in(codes<Dimension>, "LTV").has_value());
    CHECK_FALSE(meaning_in(codes<Dimension>, "").has_value());
}

TEST_CASE("A value that is not known is in no band but any") {
    for (const char* band : {"<= 90", "< 0", ">= -1", "> 0", "= 0"}) {
        CHECK_FALSE(parse_band(Dimension::score, band)->holds(Case::unset));
    }
    CHECK(parse_band(Dimension::score, "any")->holds(Case::unset));
}
