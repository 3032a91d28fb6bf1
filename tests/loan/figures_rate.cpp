// The rate and its points: rungs of the ladder, adjustments, locks, quotes from elsewhere.
#include <shown.hpp>

#include "support/purchase.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

using namespace quoin;
using namespace quoin::test;

namespace {

BandTable points_table(const std::string& rows) {
    const Document document = json(R"({"status": "sample", "source": "invented", "value": "points",
        "dimensions": ["score", "ltv"], "rows": [)" +
                                   rows + "]}");
    Findings findings;
    Reader reader(document.root, Path{}, findings);
    BandTable table = read_band_table(reader);
    if (!findings.none()) throw Refused(std::move(findings));
    return table;
}

void add_points(Purchase& home, const char* program, const std::string& rows) {
    home.sheet.adjustments.push_back({{program}, points_table(rows)});
}

/// "6.25 at 0.25", or "none".
std::string chosen(const Purchase& home) {
    const LoanFigures f = home.figures();
    if (why_not(f) == std::vector{Barred::rate_not_offered}) return "none";
    REQUIRE(f.available());
    return f.rate.text() + " at " + f.points.value().text();
}

} // namespace

TEST_CASE("The lowest rate whose points are no higher than the limit") {
    // The ladder: 6 at 1.5, 6.25 at 0.25, 6.5 at -1.
    Purchase home("conventional");
    home.down_percent("20");
    struct Row {
        const char* limit;
        const char* chosen;
    };
    for (const Row& row : {
             Row{"2", "6 at 1.5"},
             Row{"1.5", "6 at 1.5"},
             Row{"1.499", "6.25 at 0.25"},
             Row{"0.25", "6.25 at 0.25"},
             Row{"0.249", "6.5 at -1"},
             Row{"0", "6.5 at -1"},
             Row{"-1", "6.5 at -1"},
             Row{"-1.001", "none"},
         }) {
        CAPTURE(row.limit);
        CHECK(chosen(home.by_points(row.limit)) == row.chosen);
    }
}

TEST_CASE("A note rate is a rung to the letter") {
    Purchase home("conventional");
    home.down_percent("20");
    CHECK(chosen(home.by_note("6.25")) == "6.25 at 0.25");
    CHECK(chosen(home.by_note("6.250")) == "6.25 at 0.25");
    CHECK(chosen(home.by_note("6.125")) == "none");
    CHECK(chosen(home.by_note("6.2501")) == "none");
}

TEST_CASE("A quoted rate keeps its own points, whatever the sheet says") {
    Purchase home("conventional");
    home.down_percent("20");
    add_points(home, "conventional", R"({"value": "5"})");
    CHECK(chosen(home.quoted("7.125", "0.625")) == "7.125 at 0.625");
    home.scenario.lock_days = 720;
    CHECK(chosen(home.quoted("7.125")) == "7.125 at 0");
    home.sheet.ladders.clear();
    CHECK(chosen(home) == "7.125 at 0");
}

TEST_CASE("The ladder goes by program, term and lock") {
    Purchase home("conventional");
    home.down_percent("20").by_points("2");
    home.scenario.lock_days = 60;
    CHECK(chosen(home) == "6 at 1.5");
    home.scenario.lock_days = 61;
    CHECK(chosen(home) == "none");
    home.sheet.ladders.push_back({"conventional", 360, 90, {{rate("6.75"), Points(decimal("2"))}}});
    CHECK(chosen(home) == "6.75 at 2");
    home.scenario.lock_days = 1;
    CHECK(chosen(home) == "6 at 1.5"); // the shorter lock
    home.years(15);
    CHECK(chosen(home) == "none");
}

TEST_CASE("Adjustments of the program add up, before the rung is chosen") {
    Purchase home("conventional");
    home.down_percent("20").by_points("1");
    add_points(home, "conventional", R"({"score": ">= 720", "ltv": "<= 80", "value": "0.75"},
        {"score": ">= 720", "ltv": "> 80", "value": "-0.5"},
        {"score": "< 720", "value": "1.125"})");
    add_points(home, "conventional", R"({"ltv": "<= 80", "value": "-0.125"})");
    add_points(home, "fha", R"({"value": "9"})");
    CHECK(chosen(home) == "6.25 at 0.875"); // 0.25 + 0.75 - 0.125
    home.scenario.score = 719;
    CHECK(chosen(home) == "6.5 at 0"); // -1 + 1.125 - 0.125; 6.25 would be 1.25
    home.scenario.score = 720;
    CHECK(chosen(home.base_loan("320040")) == "6 at 1"); // 80.01: 1.5 - 0.5, no row in the other
}

TEST_CASE("An adjustment counts on its days only") {
    Purchase home("conventional");
    home.down_percent("20").by_note("6.25");
    add_points(home, "conventional", R"({"value": "0.5"})");
    BandTable& table = home.sheet.adjustments.back().table;
    table.after = After::ends;
    table.until = date("2026-11-24"); // the day of the quote is the first without it
    CHECK(chosen(home) == "6.25 at 0.25");
    table.until = date("2026-11-25");
    CHECK(chosen(home) == "6.25 at 0.75");
    table.effective = date("2027-05-14");
    table.until.reset();
    CHECK_FALSE(home.figures().available()); // what was before it is not known
    table.by_closing = true;                 // and the closing is on its first day
    CHECK(chosen(home) == "6.25 at 0.75");
}

TEST_CASE("Points are a share of the whole loan, half a cent away from zero") {
    struct Row {
        const char* base;
        const char* points;
        const char* paid;
    };
    for (const Row& row : {
             Row{"320000", "1", "3200"},
             Row{"320000", "0.125", "400"},
             Row{"320001", "0.125", "400.00"}, // 400.00125
             Row{"320004", "0.125", "400.01"}, // 400.005
             Row{"320000", "0", "0"},
         }) {
        CAPTURE(row.base, row.points);
        const LoanFigures f =
            Purchase("conventional").base_loan(row.base).quoted("6.5", row.points).figures();
        CHECK(f.cash[CashPart::points] == money(row.paid));
    }
    // Of the loan with the financed fee: 1% of 392,755.
    CHECK(Purchase("fha").down_percent("3.5").quoted("6.5", "1").figures().cash[CashPart::points] ==
          money("3927.55"));
}

TEST_CASE("A lender credit pays closing costs and prepaids, and is never paid out") {
    Purchase home("conventional");
    home.base_loan("320000").quoted("6.5", "-1"); // 3,200
    CHECK(home.figures().cash[CashPart::prepaid_interest] == money("1040.04"));
    CHECK(home.figures().cash[CashPart::prepaid_bills] == money("960")); // 0.3% of 320,000
    CHECK(home.figures().cash[CashPart::points] == money("-2000.04"));
    CHECK(home.figures().lender_credit_without_use == money("1199.96"));
    home.place.closing_costs.push_back({});
    home.place.closing_costs.back().amount = money("1000");
    CHECK(home.figures().cash[CashPart::points] == money("-3000.04"));
    home.place.closing_costs.back().amount = money("3200");
    CHECK(home.figures().cash[CashPart::points] == money("-3200"));
    home.place.closing_costs.back().amount = money("5000");
    CHECK(home.figures().cash[CashPart::points] == money("-3200"));
    home.place.closing_costs.back().paid_by = PaidBy::seller;
    CHECK(home.figures().cash[CashPart::points] == money("-2000.04"));
}
