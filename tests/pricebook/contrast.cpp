// Which colors can be read on white: the same verdict as the published formula gives.
#include <shown.hpp>

#include "pricebook/contrast.hpp"

using namespace quoin;

TEST_CASE("a color is dark enough for letters from a contrast of 4.5 on") {
    // Contrasts worked out by the formula of the guidelines in exact decimals, to two places.
    CHECK(is_readable_on_white("#000000"));       // 21
    CHECK(is_readable_on_white("#767676"));       // 4.54
    CHECK_FALSE(is_readable_on_white("#777777")); // 4.48
    CHECK(is_readable_on_white("#2f5d50"));       // 7.49
    CHECK_FALSE(is_readable_on_white("#ffffff")); // 1
    CHECK_FALSE(is_readable_on_white("#ff0000")); // 4.00
    CHECK(is_readable_on_white("#ee0000"));       // 4.53
    CHECK(is_readable_on_white("#0000ff"));       // 8.59
    CHECK_FALSE(is_readable_on_white("#00ff00")); // 1.37
    CHECK(is_readable_on_white("#008000"));       // 5.14
    CHECK_FALSE(is_readable_on_white("#e0b040")); // 2.01
}
