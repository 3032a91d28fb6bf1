// The cash of a scenario: its lines sum to its parts, its parts to the whole, and so do its days.
#include <shown.hpp>

#include <quoin/answers/cash.hpp>
#include <quoin/answers/quote.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Money costs_of(const CashAnswer& answer, PaidBy payer) {
    Money sum;
    for (const CostLine& line : answer.costs) {
        if (line.paid_by == payer) sum += line.amount;
    }
    return sum;
}

void check_sums(const CashAnswer& answer) {
    const CashToClose& cash = answer.scenario.cash;
    CHECK(costs_of(answer, PaidBy::buyer) == cash[CashPart::closing_costs]);
    Money prepaid;
    for (const PrepaidLine& line : answer.prepaids) prepaid += line.amount;
    CHECK(prepaid == cash[CashPart::prepaid_interest] + cash[CashPart::prepaid_bills]);
    Money credits;
    for (const CreditLine& line : answer.credits) credits += line.amount;
    CHECK(credits == cash[CashPart::credits]);
    Money days;
    for (const CalendarDay& day : answer.calendar) days += day.amount;
    CHECK(days == cash.needed());
    CHECK(cash.needed() - cash[CashPart::deposits] == cash.to_close());
    CHECK(cash[CashPart::down_payment] == answer.scenario.price - answer.scenario.base_loan);
    if (answer.escrow) CHECK(answer.escrow->account.initial_deposit == cash[CashPart::escrow]);
}

} // namespace

TEST_CASE("Lines sum to parts, parts to the cash needed, days to it too") {
    Homes homes(21);
    int checked = 0;
    for (int i = 0; i < 25; ++i) {
        const Inquiry inquiry = homes.next();
        const Sitting sitting(six_programs().desk, inquiry);
        for (std::size_t s = 0; s < inquiry.scenarios.size(); ++s) {
            const CashAnswer answer = cash(sitting, s);
            if (!answer.scenario.available()) continue;
            ++checked;
            check_sums(answer);
        }
    }
    CHECK(checked > 80);
}

TEST_CASE("The cash answer and the quote have the same cash") {
    const Sitting sitting = six_programs().sitting();
    const QuoteAnswer home = quote(sitting);
    for (std::size_t s = 0; s < home.scenarios.size(); ++s) {
        const CashAnswer answer = cash(sitting, s);
        CHECK(answer.scenario.cash.needed() == home.scenarios[s].cash.needed());
        CHECK(answer.scenario.cash.to_close() == home.scenarios[s].cash.to_close());
        CHECK(answer.scenario.monthly == home.scenarios[s].monthly);
    }
}

TEST_CASE("A low appraisal: percent down is of the value, and the gap is made up in cash") {
    Inquiry inquiry = six_programs().inquiry;
    const Money price = quote(six_programs().sitting()).contract_price;
    inquiry.facts.appraised_value = price - money("12000");
    const Sitting sitting(six_programs().desk, inquiry);
    for (std::size_t s = 0; s < inquiry.scenarios.size(); ++s) {
        const CashAnswer was = cash(six_programs().sitting(), s);
        const CashAnswer now = cash(sitting, s);
        CAPTURE(now.scenario.terms.name);
        CHECK(now.effects.appraisal_gap == money("12000"));
        CHECK(was.effects.appraisal_gap == Money{});
        CHECK(now.scenario.value == price - money("12000"));
        CHECK(now.scenario.terms.ltv == was.scenario.terms.ltv); // the same share of the value
        CHECK(now.scenario.cash[CashPart::down_payment] >
              was.scenario.cash[CashPart::down_payment]);
    }
    // A high one changes nothing.
    inquiry.facts.appraised_value = price + money("12000");
    for (std::size_t s = 0; s < inquiry.scenarios.size(); ++s) {
        CHECK(cash(Sitting(six_programs().desk, inquiry), s).scenario.cash.needed() ==
              cash(six_programs().sitting(), s).scenario.cash.needed());
    }
}

TEST_CASE("Deposits are part of the cash needed and come off what is left to bring") {
    Inquiry inquiry = six_programs().inquiry;
    const CashAnswer by_book = cash(six_programs().sitting(), 0);
    const QuoteAnswer home = quote(six_programs().sitting());
    CHECK(by_book.scenario.cash[CashPart::deposits] == home.earnest_deposit + home.option_deposit);
    inquiry.facts.deposits_paid = money("5000");
    const CashAnswer paid = cash(Sitting(six_programs().desk, inquiry), 0);
    CHECK(paid.scenario.cash.needed() == by_book.scenario.cash.needed());
    CHECK(paid.scenario.cash.to_close() == paid.scenario.cash.needed() - money("5000"));
}

TEST_CASE("Credits over the cap, or with nothing to pay, are told and not used") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.selection.incentives.clear();
    inquiry.scenarios.resize(1); // 5% down: interested parties may give 3% of the value
    const Money value = quote(Sitting(six_programs().desk, inquiry)).scenarios.front().value;
    const Money cap = percent_of(value, Percent(decimal("3")), Rounding::down);
    const auto with = [&](CreditFrom from, Money amount, std::vector<CreditUse> uses) {
        inquiry.facts.credits = {{"credit", from, amount, std::move(uses)}};
        return cash(Sitting(six_programs().desk, inquiry), 0);
    };
    const CashAnswer seller =
        with(CreditFrom::seller, money("60000"), {CreditUse::closing_costs, CreditUse::prepaids});
    const CreditsUsed& used = seller.scenario.credits;
    CHECK(seller.scenario.cash[CashPart::credits] <= cap);
    CHECK(used.interested_parties == seller.scenario.cash[CashPart::credits]);
    CHECK(used.over_cap + used.without_use + seller.scenario.cash[CashPart::credits] ==
          money("60000"));
    CHECK(seller.scenario.cash[CashPart::credits] > Money{});

    const CashAnswer points = with(CreditFrom::builder, money("60000"), {CreditUse::points});
    CHECK(points.scenario.cash[CashPart::credits] <=
          std::max(points.scenario.cash[CashPart::points], Money{}));

    // What a program gives is not held to the cap.
    const CashAnswer program = with(CreditFrom::program, money("18000"), {CreditUse::down_payment});
    CHECK(program.scenario.cash[CashPart::credits] == money("18000"));
    CHECK(program.scenario.credits.interested_parties == Money{});
}
