// A loan month by month: extra principal, and the end of mortgage insurance.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/month_by_month.hpp>
#include <quoin/render/answers.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::size_t scenario_of(const char* program, const Inquiry& inquiry) {
    for (std::size_t i = 0; i < inquiry.scenarios.size(); ++i) {
        if (inquiry.scenarios[i].program == program) return i;
    }
    throw std::runtime_error("no such scenario");
}

/// The last payment that carries mortgage insurance; 0: none.
int last_insured(const MonthByMonthAnswer& answer) {
    int last = 0;
    for (const MonthRow& row : answer.rows) {
        if (row.insurance > Money{}) last = row.month;
    }
    return last;
}

/// The years are the same rows, twelve at a time.
void check_years(const MonthByMonthAnswer& answer) {
    Money payment;
    Money interest;
    Money insurance;
    for (const YearRow& year : answer.years) {
        payment += year.payment;
        interest += year.interest;
        insurance += year.insurance;
        const std::size_t last = std::min(answer.rows.size(), std::size_t(year.year) * 12) - 1;
        REQUIRE(year.balance == answer.rows[last].balance);
        REQUIRE(year.last_due == answer.rows[last].due);
        REQUIRE(year.payment == year.interest + year.principal);
    }
    CHECK(answer.years.size() == (answer.rows.size() + 11) / 12);
    CHECK(payment == answer.scenario.loan + answer.total_interest);
    CHECK(interest == answer.total_interest);
    CHECK(insurance == answer.total_insurance);
}

/// What every schedule keeps: rows in order, sums, the balance runs out.
void check_rows(const MonthByMonthAnswer& answer) {
    Money balance = answer.scenario.loan;
    Money interest;
    Money insurance;
    for (std::size_t i = 0; i < answer.rows.size(); ++i) {
        const MonthRow& row = answer.rows[i];
        REQUIRE(row.month == static_cast<int>(i) + 1);
        REQUIRE(row.due == plus_months(answer.scenario.first_payment, Months(row.month - 1)));
        REQUIRE(row.payment == row.interest + row.principal);
        REQUIRE(row.interest == monthly_interest(balance, answer.scenario.terms.rate));
        REQUIRE(row.balance == balance - row.principal);
        balance = row.balance;
        interest += row.interest;
        insurance += row.insurance;
    }
    CHECK(balance == Money{});
    CHECK(interest == answer.total_interest);
    CHECK(insurance == answer.total_insurance);
    check_years(answer);
}

} // namespace

TEST_CASE("Extra principal: each payment is larger by it, and what it saves is the difference") {
    const Sitting sitting = six_programs().sitting();
    for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
        const MonthByMonthAnswer plain = month_by_month(sitting, s, {Money{}});
        const MonthByMonthAnswer ahead = month_by_month(sitting, s, {money("150")});
        CAPTURE(plain.scenario.terms.name);
        check_rows(plain);
        check_rows(ahead);
        CHECK_FALSE(plain.saves.has_value());
        REQUIRE(ahead.saves.has_value());
        CHECK(ahead.rows.front().payment == plain.rows.front().payment + money("150"));
        CHECK(ahead.rows.front().interest == plain.rows.front().interest);
        CHECK(ahead.saves->payments == static_cast<int>(ahead.rows.size()));
        CHECK(ahead.saves->payments_saved ==
              static_cast<int>(plain.rows.size()) - static_cast<int>(ahead.rows.size()));
        CHECK(ahead.saves->payments_saved > 0);
        CHECK(ahead.saves->interest_saved == plain.total_interest - ahead.total_interest);
        CHECK(ahead.saves->insurance_saved == plain.total_insurance - ahead.total_insurance);
        CHECK(ahead.saves->last_due == ahead.rows.back().due);
    }
}

TEST_CASE("A scenario's own extra principal is used unless another amount is asked for") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.scenarios[0].extra_principal = money("200");
    const Sitting sitting(six_programs().desk, inquiry);
    CHECK(month_by_month(sitting, 0).saves->extra == money("200"));
    CHECK(month_by_month(sitting, 0, {money("75")}).saves->extra == money("75"));
    CHECK_FALSE(month_by_month(sitting, 0, {Money{}}).saves.has_value());
    CHECK(month_by_month(sitting, 0).scenario.monthly ==
          month_by_month(sitting, 0, {Money{}}).scenario.monthly); // the payment due stays the same
}

TEST_CASE("Asked for, insurance ends with the payment that brings the actual balance to 80%") {
    Inquiry inquiry = six_programs().inquiry;
    const std::size_t s = scenario_of("conventional", inquiry); // 5% down, 30 years
    inquiry.scenarios[s].end_mi_on_request = true;
    const Sitting sitting(six_programs().desk, inquiry);
    for (const char* extra : {"0", "150", "900"}) {
        CAPTURE(extra);
        const MonthByMonthAnswer answer = month_by_month(sitting, s, {money(extra)});
        const Money eighty =
            percent_of(answer.scenario.value, Percent(decimal("80")), Rounding::down);
        const int last = last_insured(answer);
        REQUIRE(last > 1);
        const auto row = [&](int month) {
            return answer.rows.at(static_cast<std::size_t>(month - 1));
        };
        CHECK(row(last).balance <= eighty);
        CHECK(row(last - 1).balance > eighty);
        CHECK(row(last).insurance == row(1).insurance); // level, to its end
    }
    CHECK(last_insured(month_by_month(sitting, s, {money("150")})) <
          last_insured(month_by_month(sitting, s, {Money{}})));
}

TEST_CASE("Without a request, insurance ends as first scheduled, extra principal or not") {
    const Inquiry& inquiry = six_programs().inquiry;
    const std::size_t s = scenario_of("conventional", inquiry);
    REQUIRE_FALSE(inquiry.scenarios[s].end_mi_on_request);
    const Sitting sitting = six_programs().sitting();
    const MonthByMonthAnswer plain = month_by_month(sitting, s, {Money{}});
    const MonthByMonthAnswer ahead = month_by_month(sitting, s, {money("150")});
    const int last = last_insured(plain);
    CHECK(last == plain.scenario.insurance.payments);
    CHECK(last_insured(ahead) == last);
    CHECK(ahead.saves->insurance_saved == Money{});
    // 78% of the value, on the initial schedule (12 USC 4902(b)).
    const auto balance = [&](int month) {
        return plain.rows.at(static_cast<std::size_t>(month - 1)).balance;
    };
    const Money limit = percent_of(plain.scenario.value, Percent(decimal("78")), Rounding::down);
    CHECK(balance(last) <= limit);
    CHECK(balance(last - 1) > limit);
    // A loan that has ended carries none, whatever the schedule said.
    const MonthByMonthAnswer soon = month_by_month(sitting, s, {money("20000")});
    CHECK(last_insured(soon) == static_cast<int>(soon.rows.size()));
    CHECK(soon.saves->insurance_saved > Money{});
}

TEST_CASE("FHA's premium falls every year and runs the whole term at 3.5% down") {
    const std::size_t s = scenario_of("fha", six_programs().inquiry);
    const MonthByMonthAnswer answer = month_by_month(six_programs().sitting(), s);
    CHECK(last_insured(answer) == 360);
    for (std::size_t i = 12; i < answer.rows.size(); i += 12) {
        CHECK(answer.rows[i].insurance < answer.rows[i - 1].insurance);
        CHECK(answer.rows[i].insurance == answer.rows[i + 11].insurance);
    }
}

TEST_CASE("Comma-separated values hold each row, a heading, and nothing to quote") {
    const MonthByMonthAnswer answer = month_by_month(small()->sitting(), 0);
    Findings findings;
    const Document read = parse_csv(std::make_shared<Source>("s.csv", csv_of(answer)), findings);
    REQUIRE(findings.none());
    REQUIRE(read.root.items.size() == answer.rows.size());
    for (std::size_t i = 0; i < answer.rows.size(); ++i) {
        const Value& row = read.root.items[i];
        CHECK(row.find("due")->literal == answer.rows[i].due.text());
        CHECK(money(row.find("paid")->literal.c_str()) == answer.rows[i].payment);
        CHECK(money(row.find("balance")->literal.c_str()) == answer.rows[i].balance);
        CHECK(money(row.find("mortgage_insurance")->literal.c_str()) == answer.rows[i].insurance);
    }
}
