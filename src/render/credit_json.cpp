// What a builder's money can do, as JSON.
#include <quoin/render/credit.hpp>

#include "credit_words.hpp"
#include "shared_fields.hpp"

namespace quoin {

/// What of the loan's is paid in cash at closing that would else be financed or paid monthly.
enum class PaidInCash { none, upfront_fee, single_premium };
template <>
inline constexpr auto
    codes<PaidInCash> = coded<PaidInCash>({{PaidInCash::none, "none"},
                                           {PaidInCash::upfront_fee, "upfront_fee"},
                                           {PaidInCash::single_premium, "single_premium"}});

/// A mix as it is told of its scenario.
struct ToldMix {
    CreditMix mix;
    PaidInCash paid_in_cash = PaidInCash::none;
};

template <>
inline constexpr std::string_view shape_name<CreditAnswer> = "Credit";
template <>
inline constexpr std::string_view shape_name<CreditScenario> = "CreditScenario";
template <>
inline constexpr std::string_view shape_name<ToldMix> = "Mix";

namespace {

ToldMix told(const CreditMix& mix, const CreditScenario& s) {
    if (!mix.fee_in_cash) return {mix, PaidInCash::none};
    return {mix, s.is_single_premium ? PaidInCash::single_premium : PaidInCash::upfront_fee};
}

std::optional<ToldMix> told(const std::optional<CreditMix>& mix, const CreditScenario& s) {
    return mix ? std::optional(told(*mix, s)) : std::nullopt;
}

std::vector<ToldMix> told(const std::vector<CreditMix>& mixes, const CreditScenario& s) {
    std::vector<ToldMix> list;
    for (const CreditMix& mix : mixes) list.push_back(told(mix, s));
    return list;
}

template <class V, class Pays>
void pays_fields(V& v, Pays& pays) {
    const auto use = [&](std::string_view key, CreditUse what) {
        v.said(key, [&] { return pays[what]; });
    };
    use("points", CreditUse::points);
    use("buydown", CreditUse::buydown);
    use("upfront_fee", CreditUse::upfront_fee);
    use("closing_costs", CreditUse::closing_costs);
    use("prepaids", CreditUse::prepaids);
}

} // namespace

template <class V, Of<ToldMix> A>
void fields(V& v, A& told) {
    auto& mix = told.mix;
    v("off_price", mix.off_price);
    v("rate", mix.rate);
    v("points", mix.points);
    v.apr("apr", mix.apr);
    v.said("buydown", [&] {
        return mix.buydown.empty() ? std::nullopt : std::optional(buydown_name(mix.buydown));
    });
    v("paid_in_cash", told.paid_in_cash);
    v.object("pays", [&] { pays_fields(v, mix.pays); });
    v("without_use", mix.without_use);
    v("over_cap", mix.over_cap);
    v("loan", mix.loan);
    v("monthly_now", mix.monthly_now);
    v("monthly_after_three_years", mix.monthly_later);
    v("cash_needed", mix.cash_needed);
    v("cash_to_close", mix.to_close);
    v.object("cost_over_years", [&] {
        for (std::size_t i = 0; i < credit_years.size(); ++i) {
            v(std::to_string(credit_years[i]), mix.cost[i]);
        }
    });
    v("cost_over_asked_years", mix.cost_asked);
}

namespace {

template <class V, class Scenario>
void cap_fields(V& v, Scenario& s) {
    v.said("percent", [&] { return *s.cap; });
    v.either("of", s.cap_by_price, "price", "value");
    v("amount", s.cap_amount);
    v("taken", s.cap_taken);
    v("concessions_alone", s.cap_on_concessions);
}

template <class V, class Scenario>
void scenario_fields(V& v, Scenario& s, const CreditAsk& ask) {
    v("terms", s.terms);
    v("refusals", s.refusals);
    v.unless_refused(s.available(), [&] {
        v.maybe("contribution_cap", s.cap.has_value(), [&] { cap_fields(v, s); });
        v.said("without", [&] { return told(s.today, s); });
        v.each("each_use", s.pure, [&](auto& pure, std::size_t) {
            v.said("use", [&] { return pure.way; });
            v.said("name", [&] { return use_name(pure, s); });
            v.said("mix", [&] { return told(pure.mix, s); });
            v.said("why_not",
                   [&] { return pure.mix ? std::nullopt : std::optional(why_not(pure, ask)); });
        });
        v.said("lowest_payment", [&] { return told(s.lowest_payment, s); });
        v.said("least_cash", [&] {
            return s.cash_is_given ? std::nullopt : std::optional(told(s.least_cash, s));
        });
        v.said("least_cost", [&] { return told(s.least_cost, s); });
        v.said("frontier", [&] { return told(s.frontier, s); });
    });
}

} // namespace

template <class V, Of<CreditAnswer> A>
void fields(V& v, A& answer) {
    v.constant("question", "credit");
    v("heading", answer.heading);
    v("amount", answer.ask.amount);
    v("years", answer.ask.years);
    v("contract_price", answer.contract_price);
    v.each("scenarios", answer.scenarios,
           [&](auto& s, std::size_t) { scenario_fields(v, s, answer.ask); });
    v.said("cautions", [&] { return cautions_of(answer); });
}

std::string json_text_of(const CreditAnswer& answer) { return json_of_fields(answer); }

template Shape shape_of<CreditAnswer>();

} // namespace quoin
