// Promises: what holds is let pass, what does not says what was promised and what was found.
#include <shown.hpp>

#include <quoin/exact/broken.hpp>
#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>

using namespace quoin;

TEST_CASE("A promise that holds costs nothing, one that does not is told in its words") {
    CHECK_NOTHROW(ensure(true, "two and two are four"));
    CHECK_THROWS_WITH(ensure(false, "two and two are five"), "two and two are five");
    CHECK_NOTHROW(ensure_equal(Money::cents(5), Money::cents(5), "five cents are five"));
}

TEST_CASE("Two figures that do not agree are both told, as they are written") {
    const auto told = [](const auto& a, const auto& b) -> std::string {
        try {
            ensure_equal(a, b, "they agree");
        } catch (const Broken& broken) {
            return broken.what();
        }
        return "";
    };
    CHECK(told(Money::cents(41'290'000), Money::cents(41'290'001)) ==
          "they agree: 412900.00 is not 412900.01");
    CHECK(told(-Money::cents(5), Money{}) == "they agree: -0.05 is not 0.00");
    CHECK(told(Decimal::billionths(500'000'000), Decimal::whole(1)) == "they agree: 0.5 is not 1");
    CHECK(told(Percent(Decimal::whole(5)), Percent()) == "they agree: 5 is not 0");
    CHECK(told(Rate::millionths(6'125'000), Rate{}) == "they agree: 6.125 is not 0");
    CHECK(told(Months(360), Months(180)) == "they agree: 360 is not 180");
    CHECK(told(Date::parse("2026-11-24").value(), Date::parse("2026-11-25").value()) ==
          "they agree: 2026-11-24 is not 2026-11-25");
    CHECK(told(std::size_t{3}, std::size_t{4}) == "they agree: 3 is not 4");
    CHECK(told(true, false) == "they agree: yes is not no");
    CHECK(told(std::string("oak"), std::string("ash")) == "they agree: oak is not ash");
    CHECK(told(7, 7).empty());
}
