// Rate and the interest of one month.
#include <shown.hpp>

#include <optional>

#include <quoin/exact/rate.hpp>

using namespace quoin;

namespace {

std::optional<Rate> read(const char* percent) {
    return Rate::percent(Decimal::parse(percent).value());
}

Money interest(const char* balance, const char* percent) {
    return monthly_interest(Money::parse(balance).value(), read(percent).value());
}

} // namespace

TEST_CASE("Rates of 0 to 100 percent, to a millionth") {
    CHECK(read("0") == Rate{});
    CHECK(read("6.125")->millionths() == 6'125'000);
    CHECK(read("6.123456")->millionths() == 6'123'456);
    CHECK(read("0.000001")->millionths() == 1);
    CHECK(read("100") == Rate::millionths(Rate::max_millionths));
    CHECK(read("6.125")->text() == "6.125");
    CHECK(read("7.000")->text() == "7");
    CHECK(read("6.125")->percent() == Decimal::parse("6.125"));
    CHECK(read("6.125") < read("6.25"));
    for (const char* refused : {"100.000001", "-0.000001", "-6", "6.1234567", "0.0000001", "600"}) {
        CAPTURE(refused);
        CHECK_FALSE(read(refused));
    }
}

TEST_CASE("A month's interest is balance x rate / 12, half away from zero") {
    struct Row {
        const char* balance;
        const char* percent;
        const char* interest; ///< worked by hand
    };
    const Row rows[] = {
        {"200000", "6.125", "1020.83"},   // 1020.8333...
        {"162000", "3.875", "523.13"},    // 523.125
        {"161999.99", "3.875", "523.12"}, // 523.12496...
        {"0.01", "100", "0.00"},          // 0.00083...
        {"0.06", "100", "0.01"},          // 0.005
        {"0.05", "100", "0.00"},          // 0.00416...
        {"-162000", "3.875", "-523.13"},
        {"0.60", "10", "0.01"},    // 0.005
        {"0.59", "10", "0.00"},    // 0.004916...
        {"6000", "0.001", "0.01"}, // 0.005
        {"5999.99", "0.001", "0.00"},
        {"106605", "7.5", "666.28"}, // 666.28125
        {"0", "7.5", "0.00"},
        {"123456.78", "0", "0.00"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.balance, row.percent);
        CHECK(interest(row.balance, row.percent).text() == row.interest);
    }
}

TEST_CASE("Interest on the largest balance stays in range") {
    constexpr std::int64_t most = INT64_MAX;
    CHECK(monthly_interest(Money::cents(most), Rate::millionths(Rate::max_millionths)) ==
          Money::cents(most / 12 + 1)); // most is 7 more than a multiple of 12
    CHECK(most % 12 == 7);
}
