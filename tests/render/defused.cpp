// Words that another program would take for more: formulas in CSV, the direction of writing in
// HTML.
#include <shown.hpp>

#include <quoin/render/listing.hpp>

#include "render/html.hpp"
#include "support/small_book.hpp"

using namespace quoin;
using namespace quoin::test;

TEST_CASE("A cell of words never begins a formula, an amount stays a number") {
    PriceBook book = small_book(); // to be changed
    for (const char* name : {"=1+1", "+1", "-2+3", "@SUM(A1)", "=cmd|'/c calc'!A1,\"x\""}) {
        book.plans[0].name = name;
        const std::string csv = listing_csv(book, Listing::plans);
        CAPTURE(name, csv);
        CHECK(csv.find(std::string(",") + name) == std::string::npos);
        CHECK(csv.find("'" + std::string(name).substr(0, 4)) != std::string::npos);
    }
    book.lots[0].premium = Money::dollars(-2500);
    book.lots[0].note = "-5 feet to the back";
    const std::string lots = listing_csv(book, Listing::lots);
    CHECK(lots.find(",-2500.00,") != std::string::npos);
    CHECK(lots.find(",'-5 feet to the back") != std::string::npos);
}

TEST_CASE("What runs from the right is set apart in HTML, in elements alone") {
    CHECK(in_element("for דנה לוי: 5") == "for <bdi>דנה לוי</bdi>: 5");
    CHECK(in_element("Ann & Co") == "Ann &amp; Co");
    CHECK(in_element("<مريم>") == "&lt;<bdi>مريم</bdi>&gt;");
    CHECK(escaped("דנה") == "דנה");
    CHECK(text_element("li", "דנה") == "<li><bdi>דנה</bdi></li>\n");
}
