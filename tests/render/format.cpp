// How figures are written for people.
#include <shown.hpp>

#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

TEST_CASE("Dollars have a sign before them, commas, and always two decimals") {
    struct Row {
        std::int64_t cents;
        const char* plain;
        const char* with_sign;
    };
    for (const Row& row : {
             Row{0, "$0.00", "$0.00"},
             Row{1, "$0.01", "+$0.01"},
             Row{-5, "-$0.05", "-$0.05"},
             Row{99'999, "$999.99", "+$999.99"},
             Row{100'000, "$1,000.00", "+$1,000.00"},
             Row{-123'456, "-$1,234.56", "-$1,234.56"},
             Row{123'456'789, "$1,234,567.89", "+$1,234,567.89"},
             Row{INT64_MAX, "$92,233,720,368,547,758.07", "+$92,233,720,368,547,758.07"},
         }) {
        CHECK(dollars(Money::cents(row.cents)) == row.plain);
        CHECK(signed_dollars(Money::cents(row.cents)) == row.with_sign);
    }
}

TEST_CASE("Dollars as written for people are read back as the same amount") {
    // As far as input goes; sums can grow beyond it.
    for (const std::int64_t cents : {0L, 7L, -7L, 100'000L, -123'456'789L, 900'000'000'000L}) {
        CHECK(Money::parse(dollars(Money::cents(cents))) == Money::cents(cents));
    }
}

TEST_CASE("Quantities are grouped and keep their own decimals") {
    CHECK(grouped(decimal("1612")) == "1,612");
    CHECK(grouped(decimal("2.5")) == "2.5");
    CHECK(grouped(decimal("-1234567.125")) == "-1,234,567.125");
    CHECK(grouped(decimal("0")) == "0");
}

TEST_CASE("A number of fixed places is filled up, or rounded half away from zero") {
    struct Row {
        const char* number;
        int places;
        const char* text;
    };
    for (const Row& row : {
             Row{"6.5", 3, "6.500"},
             Row{"6", 3, "6.000"},
             Row{"6.1234", 3, "6.123"},
             Row{"6.1235", 3, "6.124"},
             Row{"-6.1235", 3, "-6.124"},
             Row{"0.0004", 3, "0.000"},
             Row{"-0.0004", 3, "0.000"}, // no minus before nothing
             Row{"94.995", 2, "95.00"},
             Row{"99.5", 0, "100"},
             Row{"99.4", 0, "99"},
             Row{"0.000000001", 9, "0.000000001"},
         }) {
        CAPTURE(row.number, row.places);
        CHECK(fixed(decimal(row.number), row.places) == row.text);
    }
    CHECK(percent_text(decimal("6.125"), 3) == "6.125%");
}

TEST_CASE("An APR as the forms print it: three decimals, rounded once, its last zeros dropped") {
    struct Row {
        const char* exact;
        const char* printed;
    };
    for (const Row& row : {
             // Source: 12 CFR 1026.37(o)(4)(ii) and its comment.
             Row{"2.4999", "2.5%"},
             Row{"7.005", "7.005%"},
             Row{"7.000", "7%"},
             // By hand.
             Row{"6.3765", "6.377%"},
             Row{"6.376499999", "6.376%"},
             Row{"10.0004", "10%"},
             Row{"100", "100%"},
             Row{"0.0005", "0.001%"},
             Row{"0", "0%"},
             Row{"-0.25", "-0.25%"},
         }) {
        CAPTURE(row.exact);
        CHECK(disclosed_text(decimal(row.exact)) == row.printed);
    }
    CHECK(disclosed(decimal("6.500")) == "6.5");
}

TEST_CASE("Dates and terms in words") {
    CHECK(english_date(date("2026-11-24")) == "November 24, 2026");
    CHECK(english_date(date("2028-02-29")) == "February 29, 2028");
    CHECK(english_date(date("2027-01-01")) == "January 1, 2027");
    CHECK(term_text(Months(360)) == "30 years");
    CHECK(term_text(Months(12)) == "1 year");
    CHECK(term_text(Months(181)) == "181 months");
    CHECK(term_text(Months(1)) == "1 month");
}

TEST_CASE("The line of terms names everything that must stand beside a payment") {
    ScenarioTerms terms;
    terms.program = "A fixed loan";
    terms.term = Months(180);
    terms.lock_days = 45;
    terms.rate = rate("6.125");
    terms.points = Points(decimal("-0.25"));
    terms.apr = rate("6.301499");
    terms.down_payment = money("20625.50");
    terms.down_percent = Percent(decimal("5.0001"));
    terms.ltv = Ltv(decimal("95"));
    CHECK(
        terms_line(terms) ==
        "A fixed loan: interest rate 6.125%, lender credit of 0.250 points, APR 6.301%, loan term "
        "15 years, down payment $20,625.50 (5.00%), LTV 95.00%, 45-day rate lock");
    terms.apr = rate("6.499999"); // the rate beside it keeps its three decimals
    terms.points = Points(decimal("1"));
    CHECK(terms_line(terms).find("rate 6.125%, 1.000 points, APR 6.5%, loan term 15 years") !=
          std::string::npos);
    terms.apr.reset();
    CHECK(terms_line(terms).find("APR not available") != std::string::npos);
}
