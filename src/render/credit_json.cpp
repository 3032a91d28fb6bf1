// What a builder's money can do, as JSON.
#include <quoin/answers/credit.hpp>

#include "credit_words.hpp"
#include "own_cautions.hpp"
#include "shared_fields.hpp"

namespace quoin {

/// What of the loan's is paid in cash at closing that would else be financed or paid monthly.
enum class PaidInCash { none, upfront_fee, single_premium };
template <>
inline constexpr auto
    codes<PaidInCash> = coded<PaidInCash>({{PaidInCash::none, "none"},
                                           {PaidInCash::upfront_fee, "upfront_fee"},
                                           {PaidInCash::single_premium, "single_premium"}});

namespace {

PaidInCash paid_in_cash(const CreditMix& mix, const CreditScenario& s) {
    if (!mix.fee_in_cash) return PaidInCash::none;
    return s.is_single_premium ? PaidInCash::single_premium : PaidInCash::upfront_fee;
}

std::optional<std::string> buydown_of(const CreditMix& mix) {
    return mix.buydown.empty() ? std::nullopt : std::optional(buydown_name(mix.buydown));
}

/// Takes back what buydown_name() made: "2-1", or "1-0" of a single year.
std::vector<Percent> buydown_in(const std::optional<std::string>& told) {
    std::vector<Percent> steps;
    std::string_view name = told ? std::string_view(*told) : std::string_view{};
    while (!name.empty()) {
        const std::string_view step = name.substr(0, name.find('-'));
        const Decimal percent = Decimal::parse(step).value_or(Decimal{});
        if (percent > Decimal{}) steps.emplace_back(percent);
        name.remove_prefix(std::min(step.size() + 1, name.size()));
    }
    return steps;
}

void pays_fields(auto& v, auto& pays) {
    v("points", pays[CreditUse::points]);
    v("buydown", pays[CreditUse::buydown]);
    v("upfront_fee", pays[CreditUse::upfront_fee]);
    v("closing_costs", pays[CreditUse::closing_costs]);
    v("prepaids", pays[CreditUse::prepaids]);
}

constexpr std::string_view mix_name = "Mix";

/// A mix as it is told of its scenario.
void mix_fields(auto& v, auto& mix, auto& s) {
    v("off_price", mix.off_price);
    v("rate", mix.rate);
    v("points", mix.points);
    v.apr("apr", mix.apr);
    v.held(
        "buydown", [&] { return buydown_of(mix); },
        [&](const auto& name) { mix.buydown = buydown_in(name); });
    v.held(
        "paid_in_cash", [&] { return paid_in_cash(mix, s); },
        [&](auto what) {
            mix.fee_in_cash = what != PaidInCash::none;
            if (mix.fee_in_cash) s.is_single_premium = what == PaidInCash::single_premium;
        });
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
    v("every_incentive_allows", mix.every_incentive_allows);
}

void scenario_fields(auto& v, auto& s, const CreditAsk& ask) {
    const auto mix = [&](auto& one) { mix_fields(v, one, s); };
    v("terms", s.terms);
    v("refusals", s.refusals);
    v.unless_refused(s.available(), [&] {
        v.maybe("contribution_cap", s.cap, [&](auto& percent) {
            v("percent", percent);
            v.either("of", s.cap_by_price, "price", "value");
            v("amount", s.cap_amount);
            v("taken", s.cap_taken);
            v("concessions_alone", s.cap_on_concessions);
        });
        v.object(
            "without", [&] { mix(s.today); }, mix_name);
        v.each("each_use", s.pure, [&](auto& pure, std::size_t) {
            v("use", pure.way);
            v.words("name", [&](const Catalogue& say) { return use_name(pure, s, say); });
            v.maybe("mix", pure.mix, mix, mix_name);
            v.words("why_not", [&](const Catalogue& say) {
                return pure.mix ? std::nullopt : std::optional(why_not(pure, ask, say));
            });
        });
        v.object(
            "lowest_payment", [&] { mix(s.lowest_payment); }, mix_name);
        v.unless(
            "least_cash", s.cash_is_given, [&] { mix(s.least_cash); }, mix_name);
        v.object(
            "least_cost", [&] { mix(s.least_cost); }, mix_name);
        v.each(
            "frontier", s.frontier, [&](auto& one, std::size_t) { mix(one); }, mix_name);
    });
}

} // namespace

void fields(auto& v, Of<CreditAnswer> auto& answer) {
    v.named("Credit");
    v.constant("question", "credit");
    v("heading", answer.heading);
    v("amount", answer.ask.amount);
    v("years", answer.ask.years);
    v("contract_price", answer.contract_price);
    v("any_incentive", answer.any_incentive);
    v("allowed_uses", answer.allowed_uses);
    v.each("scenarios", answer.scenarios,
           [&](auto& s, std::size_t) { scenario_fields(v, s, answer.ask); });
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const CreditAnswer&, const Catalogue&);

template const Shape& shape_of<CreditAnswer>();
template std::optional<CreditAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
