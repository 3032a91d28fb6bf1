// The cash of a scenario as JSON.
#include <quoin/answers/cash.hpp>

#include "cash_words.hpp"
#include "own_cautions.hpp"
#include "shared_fields.hpp"
#include "words/parts.hpp"

namespace quoin {

void fields(auto& v, Of<CostLine> auto& line) {
    v("section", line.section);
    v("name", line.name);
    v("amount", line.amount);
    v("paid_by", line.paid_by);
    v("finance_charge", line.finance_charge);
    v("before_closing", line.before_closing);
}

void fields(auto& v, Of<PrepaidLine> auto& line) {
    v("what", line.what);
    v.words("name", [&](const Catalogue& say) { return prepaid_words(line, say); });
    v("count", line.count);
    v("per_day", line.per_day);
    v("due", line.due);
    v("amount", line.amount);
}

void fields(auto& v, Of<EscrowOutlook> auto& outlook) {
    v.named("EscrowOutlook");
    v("deposit", outlook.first.deposit);
    v("initial_deposit", outlook.first.initial_deposit);
    v.each("year_ends", outlook.ends, [&](auto& end, std::size_t year) {
        v("balance", end.balance);
        v("shortage", end.shortage);
        v("refund", end.refund);
        v.held(
            "next_deposit", [&] { return end.payment(); },
            [&](auto deposit) { end.next.deposit = deposit; });
        v.said("change", [&] { return outlook.change(year); });
    });
}

void fields(auto& v, Of<EscrowBill> auto& bill) {
    v("what", bill.item);
    v.words("name", [&](const Catalogue& say) { return bill_words(bill.item, say); });
    v("due", bill.due);
    v("amount", bill.amount);
}

void fields(auto& v, Of<EscrowMonth> auto& month) {
    v("month", month.month);
    v("deposit", month.deposit);
    v("paid", month.paid);
    v("balance", month.balance);
}

void fields(auto& v, Of<NewHomeEscrow> auto& outlook) {
    v("from_settled", outlook.from_settled);
    v("from_first_bills", outlook.from_first_bills);
}

void fields(auto& v, Of<HousingEscrow> auto& escrow) {
    v("deposit", escrow.account.deposit);
    v("initial_deposit", escrow.account.initial_deposit);
    v("cushion", escrow.account.cushion);
    v("bills", escrow.bills);
    v("months", escrow.account.months);
    v.given("outlook", escrow.outlook, [&](auto& outlook) { v("outlook", outlook); });
}

void fields(auto& v, Of<CalendarDay> auto& day) {
    v("date", day.date);
    v("what", day.what);
    v.words("words", [&](const Catalogue& say) { return say.parts.due(day.what); });
    v("amount", day.amount);
}

namespace {

void credits_fields(auto& v, auto& answer) {
    v.each("used", answer.credits, [&](auto& line, std::size_t) {
        v("use", line.use);
        v.words("words",
                [&](const Catalogue& say) { return words(line.use, answer.scenario, say); });
        v("amount", line.amount);
    });
    v("without_use", answer.scenario.credits.without_use);
    v("over_cap", answer.scenario.credits.over_cap);
    v("cap_percent", answer.contribution_cap);
    v.when(answer.contribution_cap.has_value(),
           [&] { v.either("cap_of", answer.cap_by_price, "price", "value"); });
    v("counts_towards_cap", answer.scenario.credits.interested_parties);
    v("ltv_if_given", answer.effects.ltv_if_given);
}

} // namespace

void fields(auto& v, Of<CashAnswer> auto& answer) {
    v.named("Cash");
    v.constant("question", "cash");
    v("heading", answer.heading);
    v("scenario", answer.scenario);
    v("costs", answer.costs);
    v("prepaids", answer.prepaids);
    v("escrow", answer.escrow);
    v.object("credits", [&] { credits_fields(v, answer); });
    v("appraisal_gap", answer.effects.appraisal_gap);
    v("calendar", answer.calendar);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const CashAnswer&, const Catalogue&);

template const Shape& shape_of<CashAnswer>();
template std::optional<CashAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
