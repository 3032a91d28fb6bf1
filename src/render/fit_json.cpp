// The wishes that fit, as JSON.
#include <quoin/answers/fit.hpp>

#include "fit_words.hpp"
#include "own_cautions.hpp"
#include "shared_fields.hpp"
#include <quoin/words/reasons.hpp>

namespace quoin {

void fields(auto& v, Of<FitWish> auto& wish) {
    v.named("FitWish");
    v("id", wish.id);
    v("name", wish.name);
    v("level", wish.level);
    v("rank", wish.rank);
    v("must", wish.must);
    v("worth", wish.worth);
    v("quantity", wish.quantity);
    v("unit", wish.unit);
}

void fields(auto& v, Of<FitLeftOut> auto& left) {
    v.named("FitLeftOut");
    v("wish", left.wish);
    v("reason", left.reason);
    v.words("rule", [&](const Catalogue& say) { return words_of(left.rule, say); });
    v("along", left.along);
    v.told(
        "instead_of", [&](const Catalogue& say) { return instead_words(left, say); },
        [&](const auto& names) { left.instead = names; });
    v.given("price", left.added, [&](auto& added) {
        v("price", left.price);
        v.when(!added.available(), [&] { v("refusals", added.refusals); });
        v.when(added.available(), [&] {
            v("per_month", added.per_month);
            v("cash", added.cash);
            v("over_monthly", left.over_monthly);
            v("over_cash", left.over_cash);
            v.words("jumps", [&](const Catalogue& say) { return jump_words(added, say); });
        });
    });
}

void fields(auto& v, Of<FitNext> auto& next) {
    v("wish", next.wish);
    v("raise_monthly", next.raise_monthly);
    v("raise_cash", next.raise_cash);
    v("limit_monthly", next.limit_monthly);
    v("limit_cash", next.limit_cash);
    v("can_be_chosen", next.can_be_chosen);
    v("give_up", next.give_up);
    v("gained", next.gained);
    v("worth", next.worth);
    v("proven", next.proven);
}

void fields(auto& v, Of<FitMiss> auto& miss) {
    v("least_over_monthly", miss.least_monthly);
    v("least_over_cash", miss.least_cash);
    v("in_one_home", miss.in_one_home);
    v("proven", miss.proven);
}

void fields(auto& v, Of<FitAlong> auto& along) {
    v("id", along.id);
    v("name", along.name);
    v("price", along.price);
}

void fields(auto& v, Of<FitHome> auto& home) {
    v.named("FitHome");
    v("lot", home.lot);
    v.words("barred", [&](const Catalogue& say) {
        return home.barred ? words(*home.barred, say) : std::string{};
    });
    v("fits", home.fits);
    v("proven", home.proven);
    v("cheapest", home.cheapest);
    v("worth", home.worth);
    v("most_worth", home.most);
    v.said("gap", [&] { return home.most - home.worth; });
    v("nodes", home.nodes);
    v.each("chosen", home.chosen, [&](auto& wish, std::size_t) {
        v.all_of(wish);
        v("price", wish.price);
    });
    v("needed", home.along);
    v("held", home.held);
    v("left_out", home.left_out);
    v("next", home.next);
    v("incentives_lost", home.incentives_lost);
    v("over_monthly", home.over_monthly);
    v("over_cash", home.over_cash);
    v("miss", home.miss);
    v.only("price", home.scenario.has_value(), home.price);
    v("scenario", home.scenario);
}

void fields(auto& v, Of<FitScenario> auto& scenario) {
    v("terms", scenario.terms);
    v.place("best_lot", scenario.best, scenario.homes,
            [](const FitHome& home) -> const std::string& { return home.lot; });
    v("homes", scenario.homes);
}

void fields(auto& v, Of<FitAnswer> auto& answer) {
    v.named("Fit");
    v.constant("question", "fit");
    v("heading", answer.heading);
    v.object("limits", [&] {
        v("monthly", answer.limits.monthly);
        v("cash", answer.limits.cash);
    });
    v("lots", answer.lots);
    v("scenarios", answer.scenarios);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const FitAnswer&, const Catalogue&);

template const Shape& shape_of<FitAnswer>();
template std::optional<FitAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
