// The fields of what the answers share.
#include "shared_fields.hpp"

#include "cash_words.hpp"

namespace quoin {

void fields(auto& v, Of<PaymentStep> auto& step) {
    v("from_payment", step.from_payment);
    v("rate", step.rate);
    v("payment", step.payment);
}

/// What a rate that changes may do.
void fields(auto& v, Of<AdjustableAnswer> auto& adjustable) {
    v("initial_months", adjustable.initial);
    v("reset_months", adjustable.reset);
    v.object("index", [&] {
        v("name", adjustable.index.name);
        v("value", adjustable.index.value);
        v("date", adjustable.index.date);
    });
    v("margin", adjustable.margin);
    v.object("caps", [&] {
        v("first", adjustable.caps.first);
        v("periodic", adjustable.caps.periodic);
        v("life", adjustable.caps.life);
    });
    v("fully_indexed_rate", adjustable.fully_indexed);
    v("highest_rate", adjustable.ceiling);
    v("if_the_index_stays", adjustable.as_indexed);
    v("worst_case", adjustable.worst);
}

void fields(auto& v, Of<BuydownYear> auto& year) {
    v("rate", year.rate);
    v("payment", year.payment);
    v("subsidy", year.subsidy);
}

void fields(auto& v, Of<Buydown> auto& buydown) {
    v.said("subsidy", [&] { return buydown.total_subsidy(); });
    v("note_payment", buydown.note_payment);
    v("qualifying_rate", buydown.note.rate);
    v("years", buydown.years);
}

void fields(auto& v, Of<InsuranceAnswer> auto& insurance) {
    v("name", insurance.name);
    v("annual_percent", insurance.annual_percent);
    v("first_monthly", insurance.first_monthly);
    v("payments", insurance.payments);
    v("paid_up", insurance.paid_up);
    v("last_date", insurance.last_date);
    v("whole_term", insurance.whole_term);
    v("on_request_payment", insurance.on_request_payment);
    v("on_request_date", insurance.on_request_date);
}

void fields(auto& v, Of<PaymentLevel> auto& level) {
    v("from", level.from);
    v("to", level.to);
    v("payment", level.payment);
}

void fields(auto& v, Of<CostOfCredit> auto& cost) {
    v("prepaid_finance_charge", cost.prepaid_finance_charge);
    v("amount_financed", cost.amount_financed);
    v("finance_charge", cost.finance_charge);
    v("total_of_payments", cost.total_of_payments);
    v.disclosed("total_interest_percentage", cost.total_interest_percentage);
    v("disclosed_in_five_years", cost.disclosed_in_five_years);
    v("disclosed_principal_in_five_years", cost.disclosed_principal_in_five_years);
    v("buyers_buydown", cost.buydown.put_up);
    v("payment_levels", cost.levels);
    v.object("first_period", [&] {
        v("months", cost.first_period.months);
        v("odd_days", cost.first_period.odd_days);
    });
    v.apr("apr", cost.apr);
}

void fields(auto& v, Of<CashToClose> auto& cash) {
    for (const CashPartRow& row : needed_parts) v(row.code, cash[row.part]);
    v.said("needed", [&] { return cash.needed(); });
    for (const CashPartRow& row : paid_before_parts) v(row.code, cash[row.part]);
    v.said("to_close", [&] { return cash.to_close(); });
}

namespace {

/// What is told of a scenario that can be had.
void figures(auto& v, Of<ScenarioAnswer> auto& a) {
    v("price", a.price);
    v("value", a.value);
    v("base_loan", a.base_loan);
    v.object("upfront_fee", [&] {
        v.told(
            "name", [&](const Catalogue& say) { return upfront_fee_words(a, say); },
            [&](const auto& name) { a.upfront_name = name; });
        v("percent", a.upfront_percent);
        v("amount", a.upfront_fee);
        v("financed", a.financed_fee);
    });
    v("loan", a.loan);
    v("monthly", a.monthly);
    v.object("first_year", [&] {
        v("months", a.first_year_months);
        v("monthly", a.first_year);
    });
    v("temporary_buydown", a.buydown);
    v("mortgage_insurance", a.insurance);
    v("cash", a.cash);
    v("credits_without_use", a.credits.without_use);
    v("credits_over_cap", a.credits.over_cap);
    v("lender_credit_without_use", a.lender_credit_without_use);
    v("cost_of_credit", a.cost_of_credit);
    v("first_payment", a.first_payment);
    v("payments", a.payments);
    v("last_payment", a.last_payment);
    v("total_interest", a.total_interest);
    v("paid_in_five_years", a.paid_in_five_years);
    v("paid_over_loan", a.paid_over_loan);
    v("balance_after_five_years", a.balance_after_five_years);
    v("balance_after_ten_years", a.balance_after_ten_years);
}

} // namespace

void fields(auto& v, Of<Heading> auto& h) {
    v.named("Heading");
    v("community", h.community);
    v("builder", h.builder);
    v("buyer", h.buyer);
    v("prepared_by", h.prepared_by);
    v("originator", h.originator);
    v("plan", h.plan);
    v("elevation", h.elevation);
    v("lot", h.lot);
    v("price_book_version", h.price_book_version);
    v("price_book_expires", h.price_book_expires);
    v("as_of", h.as_of);
    v("contract", h.contract);
    v("closing", h.closing);
    v("place", h.place);
    v("sample_place", h.sample_place);
    v("rate_sheet", h.rate_sheet);
    v("rates_date", h.rates_date);
    v("rates_good_through", h.rates_good_through);
    v("lender", h.lender);
    v("license", h.license);
    v("sample_rates", h.sample_rates);
}

void fields(auto& v, Of<ScenarioTerms> auto& terms) {
    v.named("Terms");
    v("name", terms.name);
    v("program", terms.program_id);
    v("program_name", terms.program);
    v("months", terms.term);
    v("lock_days", terms.lock_days);
    v("score", terms.score);
    v("rate", terms.rate);
    v("points", terms.points);
    v.apr("apr", terms.apr);
    v("down_payment", terms.down_payment);
    v.rounded("down_percent", terms.down_percent, 2);
    v.rounded("ltv", terms.ltv, 2);
    v("down_from_cash", terms.down_from_cash);
    v("extra_principal", terms.extra_principal);
    v("fine_print", terms.fine_print);
    v("adjustable", terms.adjustable);
}

void fields(auto& v, Of<Monthly> auto& monthly) {
    v.named("Monthly");
    for (const MonthPartRow& row : month_parts) v(row.code, monthly[row.part]);
    v.said("total", [&] { return monthly.total(); });
}

void fields(auto& v, Of<Refusal> auto& refusal) {
    v.named("Refusal");
    v("why", refusal.why);
    v("found", refusal.found);
    v("limit", refusal.limit);
    v.words("words", [&] { return words(refusal); });
    v.given("list", refusal.gap, [&](auto& gap) { v("list", gap.list); });
}

void fields(auto& v, Of<Caution> auto& caution) {
    v.named("Caution");
    v("code", caution.code);
    v("about", caution.about);
    v.words("words", [&] { return caution.words; });
}

void fields(auto& v, Of<ScenarioAnswer> auto& a) {
    v.named("Scenario");
    v("terms", a.terms);
    v.said("available", [&] { return a.available(); });
    v("refusals", a.refusals);
    v.unless_refused(a.available(), [&] { figures(v, a); });
}

template void fields(FieldsToJson&, const Heading&);
template void fields(FieldsToShape&, const Heading&);
template void fields(FieldsFromJson&, Heading&);
template void fields(FieldsToJson&, const ScenarioTerms&);
template void fields(FieldsToShape&, const ScenarioTerms&);
template void fields(FieldsFromJson&, ScenarioTerms&);
template void fields(FieldsToJson&, const Monthly&);
template void fields(FieldsToShape&, const Monthly&);
template void fields(FieldsFromJson&, Monthly&);
template void fields(FieldsToJson&, const Refusal&);
template void fields(FieldsToShape&, const Refusal&);
template void fields(FieldsFromJson&, Refusal&);
template void fields(FieldsToJson&, const Caution&);
template void fields(FieldsToShape&, const Caution&);
template void fields(FieldsToJson&, const ScenarioAnswer&);
template void fields(FieldsToShape&, const ScenarioAnswer&);
template void fields(FieldsFromJson&, ScenarioAnswer&);

} // namespace quoin
