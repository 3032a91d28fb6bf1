// Payments and schedules as a spreadsheet engine reckoned them: spreadsheet.csv, by spreadsheet.py.
#include <shown.hpp>

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/schedule.hpp>

using namespace quoin;

namespace {

struct Reckoned {
    LoanTerms terms;
    Money payment;
    std::string last_payment; ///< empty where no schedule was laid out
    std::string total_interest;
};

Reckoned read_row(const std::string& line) {
    std::stringstream cells(line);
    std::string loan, percent, months, payment, last, interest;
    std::getline(cells, loan, ',');
    std::getline(cells, percent, ',');
    std::getline(cells, months, ',');
    std::getline(cells, payment, ',');
    std::getline(cells, last, ',');
    std::getline(cells, interest, ',');
    return {{Money::parse(loan).value(), Rate::percent(Decimal::parse(percent).value()).value(),
             Months(std::stoi(months))},
            Money::parse(payment).value(),
            last,
            interest};
}

std::vector<Reckoned> read_table() {
    std::ifstream file(QUOIN_SOURCE_DIR "/tests/published/spreadsheet.csv");
    std::vector<Reckoned> rows;
    std::string line;
    std::getline(file, line); // who wrote it
    std::getline(file, line); // the names of the columns
    while (std::getline(file, line)) rows.push_back(read_row(line));
    return rows;
}

} // namespace

TEST_CASE("Two thousand payments as a spreadsheet's PMT has them") {
    const auto table = read_table();
    CHECK(table.size() == 2'000);
    for (const Reckoned& row : table) {
        CAPTURE(row.terms.loan, row.terms.rate, row.terms.term.count());
        CHECK(level_payment(row.terms.loan, row.terms.rate, row.terms.term) == row.payment);
    }
}

TEST_CASE("Sixty schedules as a spreadsheet has them, each month in a cell of its own") {
    int schedules = 0;
    for (const Reckoned& row : read_table()) {
        if (row.last_payment.empty()) continue;
        CAPTURE(row.terms.loan, row.terms.rate, row.terms.term.count());
        const Schedule schedule = amortize(row.terms);
        CHECK(schedule.last_payment() == Money::parse(row.last_payment));
        CHECK(schedule.total_interest() == Money::parse(row.total_interest));
        ++schedules;
    }
    CHECK(schedules == 60);
}
