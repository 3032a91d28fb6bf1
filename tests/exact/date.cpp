// Date: days that exist, month steps held at the month's end, day counts.
#include <catch.hpp>

#include <quoin/exact/date.hpp>

using namespace quoin;

namespace {

Date date(const char* text) { return Date::parse(text).value(); }

} // namespace

TEST_CASE("Days that exist are read and written back") {
    for (const char* text :
         {"2026-11-24", "2024-02-29", "2000-02-29", "1900-01-01", "2200-12-31", "2026-01-31"}) {
        CAPTURE(text);
        const auto day = Date::parse(text);
        REQUIRE(day);
        CHECK(day->text() == text);
    }
    CHECK(date("2026-11-24").year() == 2026);
    CHECK(date("2026-11-24").month() == 11);
    CHECK(date("2026-11-24").day() == 24);
}

TEST_CASE("What is no day is refused") {
    for (const char* text :
         {"",           "2026",       "2026-11",    "2026-11-24 ",      " 2026-11-24", "2026-1-24",
          "2026-11-4",  "2026/11/24", "11/24/2026", "24-11-2026",       "2026-11-31",  "2026-02-29",
          "1900-02-29", "2100-02-29", "2026-00-10", "2026-13-10",       "2026-10-00",  "2026-10-32",
          "1899-12-31", "2201-01-01", "-026-11-24", "+026-11-24",       "2026--1-24",  "2026-+1-24",
          "2026-11-+4", "2026-11-2x", "20x6-11-24", "2026-11-24T00:00", "99999-01-01"}) {
        CAPTURE(text);
        CHECK_FALSE(Date::parse(text));
    }
    CHECK_FALSE(Date::of(2026, 2, 30));
}

TEST_CASE("Month steps are held at the month's end") {
    struct Row {
        const char* from;
        int months;
        const char* to;
    };
    const Row rows[] = {
        {"2027-01-31", 1, "2027-02-28"},  {"2028-01-31", 1, "2028-02-29"},
        {"2027-01-31", 2, "2027-03-31"},  {"2027-01-30", 1, "2027-02-28"},
        {"2027-03-31", 1, "2027-04-30"},  {"2026-11-24", 1, "2026-12-24"},
        {"2026-11-24", 2, "2027-01-24"},  {"2026-11-24", 360, "2056-11-24"},
        {"2026-11-24", 0, "2026-11-24"},  {"2027-01-15", -1, "2026-12-15"},
        {"2027-03-31", -1, "2027-02-28"}, {"2024-02-29", 12, "2025-02-28"},
        {"2024-02-29", 48, "2028-02-29"}, {"2026-11-01", 480, "2066-11-01"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.from, row.months);
        CHECK(plus_months(date(row.from), Months(row.months)).text() == row.to);
    }
    CHECK(first_of_month(date("2026-11-24")) == date("2026-11-01"));
}

TEST_CASE("Days between dates") {
    CHECK(days_between(date("2026-11-24"), date("2026-11-24")) == 0);
    CHECK(days_between(date("2026-11-24"), date("2026-12-01")) == 7);
    CHECK(days_between(date("2026-12-01"), date("2026-11-24")) == -7);
    CHECK(days_between(date("2024-02-01"), date("2024-03-01")) == 29);
    CHECK(days_between(date("1900-01-01"), date("2200-12-31")) == 109'937);
    CHECK(date("2026-11-24") < date("2026-12-01"));
}

TEST_CASE("Every day from 1900 to 2200 is read back from its text") {
    int days = 0;
    Date last = date("1900-01-01");
    for (int year = 1900; year <= 2200; ++year) {
        for (unsigned month = 1; month <= 12; ++month) {
            for (unsigned day = 1; day <= 31; ++day) {
                const auto made = Date::of(year, month, day);
                if (!made) continue;
                if (days > 0 && days_between(last, *made) != 1) FAIL(made->text());
                if (Date::parse(made->text()) != made) FAIL(made->text());
                last = *made;
                ++days;
            }
        }
    }
    CHECK(days == 109'938);
}
