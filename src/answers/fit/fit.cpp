// Answering which wishes fit: each scenario and lot searched, and what was left out explained.
#include <quoin/answers/fit.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

#include "answers/add_item.hpp"
#include "answers/difference.hpp"
#include "nearest.hpp"
#include "search.hpp"

namespace quoin {
namespace {

Money over(Money amount, Money limit) { return std::max(amount - limit, Money{}); }

/// One lot under one scenario.
class Fitting {
  public:
    Fitting(const Sitting& sitting, std::size_t scenario, Index<Lot> lot,
            const FitQuestion& question, const FitWatch& watch)
        : sitting_(sitting), book_(sitting.book()), rules_(sitting.rules()[scenario]),
          question_(question), watch_(watch), selection_(sitting.inquiry().selection) {
        selection_.lot = lot;
        home_.lot = at(book_.lots, lot).id;
    }

    FitHome home() {
        lose_incentives();
        if (falls_out()) return std::move(home_);
        items_ = fit_items(book_, sitting_.inquiry(), selection_);
        for (const FitAside& aside : items_.aside) set_aside(aside);
        if (!home_.barred) search();
        return std::move(home_);
    }

  private:
    void lose_incentives() {
        std::erase_if(selection_.incentives, [&](const IncentivePick& pick) {
            const Incentive& incentive = at(book_.incentives, pick.incentive);
            if (allows(incentive.lots, selection_.lot)) return false;
            home_.incentives_lost.push_back(incentive.name);
            return true;
        });
    }

    /// The selections stay, so that a lot on which one cannot stand is none to choose on.
    bool falls_out() {
        const auto found = conflicts(book_, selection_);
        if (found.empty()) return false;
        const Conflict& first = found.front();
        home_.barred = FitBarred{
            FitBarred::Kind::selection,
            {{at(book_.options, first.of.option).name, why_not(book_, first, Naming::names), {}}}};
        return true;
    }

    [[nodiscard]] const Wish& wish_at(Index<Wish> index) const {
        return at(sitting_.inquiry().wishes, index);
    }

    [[nodiscard]] FitWish described_wish(Index<Wish> index) const {
        const Wish& wish = wish_at(index);
        const Option& option = at(book_.options, wish.pick.option);
        FitWish answer;
        answer.id = name_of(book_, {wish.pick.option, wish.pick.level});
        answer.name = option.name;
        answer.level = form_name(option, wish.pick);
        answer.rank = wish.rank;
        answer.must = wish.must;
        answer.worth = sitting_.inquiry().worth_of(wish);
        answer.quantity = quantity_of(option, wish.pick, selection_.plan);
        answer.unit = option.unit;
        return answer;
    }

    void set_aside(const FitAside& aside) {
        FitWish wish = described_wish(aside.wish);
        if (aside.held) {
            home_.held.push_back(std::move(wish));
            return;
        }
        FitLeftOut left;
        left.reason = FitReason::rule;
        left.rule = aside.why;
        if (wish.must) {
            home_.barred = FitBarred{FitBarred::Kind::must_have, {{wish.name, *aside.why, {}}}};
        }
        left.wish = std::move(wish);
        home_.left_out.push_back(std::move(left));
    }

    [[nodiscard]] FitPlace place(std::optional<FitLimits> limits) const {
        return {&sitting_, &rules_, &selection_, &items_, limits};
    }

    [[nodiscard]] FitSearchWatch watch(FitStage stage) const {
        if (!watch_) return {};
        return [this, stage](const FitFound& so_far) {
            return watch_({stage, rules_.scenario.name, home_.lot, so_far.nodes,
                           Decimal::billionths(so_far.worth),
                           Decimal::billionths(std::max<std::int64_t>(so_far.most, 0)),
                           so_far.any});
        };
    }

    void search() {
        FitSearch search(place(question_.limits));
        found_ = search.best(question_.nodes, watch(FitStage::best));
        if (found_.any && found_.proven()) {
            found_ = search.cheapest(question_.nodes, watch(FitStage::cheapest));
        }
        if (!found_.any) near();
        home_.fits = found_.any;
        home_.proven = found_.proven();
        home_.cheapest = found_.cheapest;
        home_.nodes = found_.nodes;
        home_.worth = Decimal::billionths(found_.worth);
        home_.most = Decimal::billionths(std::max<std::int64_t>(found_.most, 0));
        if (found_.any) {
            tell_home(found_.taken);
            check_choice();
            tell_left_out();
            ensure_equal(home_.chosen.size() + home_.held.size() + home_.left_out.size(),
                         sitting_.inquiry().wishes.size(), "every wish is told of once");
            tell_next(search);
        } else if (nearest_.stands) {
            tell_miss();
        }
    }

    /// The figures of the home with these items, and what each costs in it.
    void tell_home(const std::vector<int>& taken) {
        chosen_ = with_items(items_, selection_, taken);
        const PricedHome priced = price_home(book_, chosen_);
        figures_ = loan_figures(rules_, priced, sitting_.inquiry().facts);
        home_.price = priced.contract_price;
        ensure_equal(home_at(book_, selection_, priced.options).contract_price, home_.price,
                     "a home's price follows from its options' total");
        home_.scenario = scenario_answer(sitting_, rules_, figures_);
        for (const int index : taken) {
            const FitItem& item = at(items_.items, index);
            const auto line =
                std::find_if(priced.lines.begin(), priced.lines.end(), [&](const Line& one) {
                    return one.pick && one.option == item.pick.option;
                });
            ensure(line != priced.lines.end(), "what is taken has its line in the home");
            const Money amount = line->amount;
            if (!item.wish) {
                home_.along.push_back({name_of(book_, {item.pick.option, item.pick.level}),
                                       at(book_.options, item.pick.option).name, amount});
                continue;
            }
            FitWish wish = described_wish(*item.wish);
            wish.price = amount;
            home_.chosen.push_back(std::move(wish));
        }
    }

    /// The promise of a choice: it stands by the rules, holds the must-haves, keeps to the limits
    /// and is worth what its wishes are.
    void check_choice() const {
        ensure(conflicts(book_, chosen_).empty(), "a choice stands by the rules");
        for (const FitItem& item : items_.items) {
            ensure(!item.must || chosen_.find(item.pick.option) != nullptr,
                   "a choice holds every must-have");
        }
        ensure(figures_.available(), "a choice has its loan");
        ensure(over(figures_.monthly.total(), question_.limits.monthly).is_zero(),
               "a choice keeps to the month");
        ensure(over(figures_.cash.needed(), question_.limits.cash).is_zero(),
               "a choice keeps to the cash");
        Decimal worth;
        for (const FitWish& wish : home_.chosen) worth = worth + wish.worth;
        ensure_equal(worth, home_.worth, "a choice is worth what its wishes are");
        ensure(home_.worth <= home_.most, "no choice is worth more than any could be");
    }

    /// Where no choice was found: the one that misses by the least. A stopped search may have
    /// missed one that fits.
    void near() {
        const FitPlace here = place(question_.limits);
        nearest_ = nearest_to_limits(here, watch(FitStage::nearest));
        if (!nearest_.stands) {
            if (nearest_.proven) home_.barred = contradiction(here, watch(FitStage::nearest));
            return;
        }
        home_.miss = nearest_.miss;
        const bool fits = home_.miss && home_.miss->in_one_home &&
                          home_.miss->least_monthly.is_zero() && home_.miss->least_cash.is_zero();
        if (!fits) return;
        home_.miss.reset();
        found_.any = true;
        found_.taken = nearest_.taken;
        for (const int index : found_.taken) found_.worth += at(items_.items, index).worth;
    }

    void tell_miss() {
        tell_home(nearest_.taken);
        if (!nearest_.available) home_.proven = nearest_.proven;
        if (!figures_.available()) return;
        home_.over_monthly = over(figures_.monthly.total(), question_.limits.monthly);
        home_.over_cash = over(figures_.cash.needed(), question_.limits.cash);
        if (!home_.miss) return;
        ensure(home_.over_monthly <= home_.miss->least_monthly,
               "the nearest home is over the month by the least");
        ensure(!home_.miss->in_one_home || home_.over_cash <= home_.miss->least_cash,
               "where one home is nearest in both, it is over the cash by the least");
    }

    [[nodiscard]] bool is_selected(Index<Option> option) const {
        return selection_.find(option) != nullptr;
    }

    void tell_left_out() {
        for (std::size_t i = 0; i < items_.items.size(); ++i) {
            const FitItem& item = items_.items[i];
            const int index = static_cast<int>(i);
            const auto& taken = found_.taken;
            if (!item.wish || std::find(taken.begin(), taken.end(), index) != taken.end()) {
                continue;
            }
            home_.left_out.push_back(left_out(item));
        }
        std::stable_sort(
            home_.left_out.begin(), home_.left_out.end(),
            [](const FitLeftOut& a, const FitLeftOut& b) { return a.wish.worth > b.wish.worth; });
    }

    [[nodiscard]] FitLeftOut left_out(const FitItem& item) const {
        FitLeftOut left;
        left.wish = described_wish(*item.wish);
        const Change change = with_pick(book_, chosen_, item.pick);
        const auto goes = [&](Index<Option> option) { return is_selected(option); };
        if (!change.blocked.empty() ||
            std::any_of(change.also_removed.begin(), change.also_removed.end(), goes)) {
            left.reason = FitReason::rule;
            left.rule = change.blocked.empty()
                            ? WhyNot{.kind = WhyNot::Kind::selection_would_go,
                                     .names = {option_names(book_, change.also_removed).front()}}
                            : why_not(book_, change.blocked.front(), Naming::names);
            return left;
        }
        left.along = option_names(book_, change.also_added);
        left.instead = option_names(book_, change.also_removed);
        const Pick* other = chosen_.find(item.pick.option);
        if (other != nullptr && !is_selected(item.pick.option)) {
            left.as_chosen = at(book_.options, item.pick.option).name;
        }
        const PricedHome priced = price_home(book_, change.selection);
        const LoanFigures then = loan_figures(rules_, priced, sitting_.inquiry().facts);
        left.price = priced.contract_price - home_.price;
        left.added = difference(rules_, figures_, then);
        if (!then.available()) {
            left.reason = FitReason::loan;
            return left;
        }
        left.over_monthly = over(then.monthly.total(), question_.limits.monthly);
        left.over_cash = over(then.cash.needed(), question_.limits.cash);
        const bool within = left.over_monthly.is_zero() && left.over_cash.is_zero();
        left.reason = within ? FitReason::rule : FitReason::limits;
        if (within) left.rule = WhyNot{WhyNot::Kind::outweighed};
        return left;
    }

    /// The dearest wish that the limits keep out: how far they would have to go, and what the best
    /// choice that holds it would give up.
    void tell_next(FitSearch& search) {
        const auto left =
            std::find_if(home_.left_out.begin(), home_.left_out.end(),
                         [](const FitLeftOut& one) { return one.reason == FitReason::limits; });
        if (left == home_.left_out.end()) return;
        const auto item =
            std::find_if(items_.items.begin(), items_.items.end(), [&](const FitItem& one) {
                return one.wish && described_wish(*one.wish).id == left->wish.id &&
                       wish_at(*one.wish).rank == left->wish.rank;
            });
        ensure(item != items_.items.end(), "a wish left out by the limits is an item");
        const int index = static_cast<int>(item - items_.items.begin());
        const FitFound with = search.best(question_.nodes, watch(FitStage::next), index);
        FitNext next;
        next.wish = left->wish;
        next.raise_monthly = left->over_monthly;
        next.raise_cash = left->over_cash;
        next.can_be_chosen = with.any;
        next.limit_monthly = question_.limits.monthly + next.raise_monthly;
        next.limit_cash = question_.limits.cash + next.raise_cash;
        if (with.any) {
            next.give_up = wishes_lacking(found_.taken, with.taken, index);
            next.gained = wishes_lacking(with.taken, found_.taken, index);
        }
        next.worth = Decimal::billionths(with.worth);
        next.proven = with.proven();
        home_.next = std::move(next);
    }

    /// Names of the wishes in `these` that are not in `those`.
    [[nodiscard]] std::vector<std::string>
    wishes_lacking(const std::vector<int>& these, const std::vector<int>& those, int but) const {
        std::vector<std::string> names;
        for (const int index : these) {
            const FitItem& item = at(items_.items, index);
            if (!item.wish || index == but) continue;
            if (std::find(those.begin(), those.end(), index) != those.end()) continue;
            const std::string level =
                level_name(at(book_.options, item.pick.option), item.pick.level);
            names.push_back(at(book_.options, item.pick.option).name +
                            (level.empty() ? "" : ": " + level));
        }
        return names;
    }

    const Sitting& sitting_;
    const PriceBook& book_;
    const ScenarioRules& rules_;
    const FitQuestion& question_;
    const FitWatch& watch_;
    Selection selection_;
    FitItems items_;
    FitFound found_;
    FitNearest nearest_; ///< where nothing fits
    Selection chosen_;
    LoanFigures figures_;
    FitHome home_;
};

/// The inquiry's lot, and with `lots` every other that is free and that the plan fits.
std::vector<Index<Lot>> lots_to_try(const Sitting& sitting, bool lots) {
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    std::vector<Index<Lot>> tried{selection.lot};
    if (!lots) return tried;
    for (const Index<Lot> index : indexes_of(book.lots)) {
        const Lot& lot = at(book.lots, index);
        if (index == selection.lot || lot.status != LotStatus::free) continue;
        if (allows(lot.plans, selection.plan)) tried.push_back(index);
    }
    return tried;
}

/// Of two homes the better: one that fits, of more worth, of the lower month, of less cash.
bool better(const FitHome& a, const FitHome& b) {
    if (a.fits != b.fits) return a.fits;
    if (!a.fits) return a.scenario.has_value() && !b.scenario.has_value();
    if (a.worth != b.worth) return a.worth > b.worth;
    const Money month = a.scenario->monthly.total();
    const Money other = b.scenario->monthly.total();
    return month != other ? month < other : a.scenario->cash.needed() < b.scenario->cash.needed();
}

/// Once stopped, stopped for good.
FitWatch stopping(const FitWatch& watch) {
    if (!watch) return {};
    return [&watch, stopped = false](const FitProgress& progress) mutable {
        stopped = stopped || !watch(progress);
        return !stopped;
    };
}

} // namespace

FitAnswer fit(const Sitting& sitting, const FitQuestion& question, const FitWatch& watch) {
    ensure(question.limits.monthly >= Money{} && question.limits.cash >= Money{},
           "a limit is not under zero");
    ensure(!question.scenario || *question.scenario < sitting.rules().size(),
           "a search is under one of the sitting's scenarios");
    FitAnswer answer;
    answer.heading = heading_of(sitting);
    answer.limits = question.limits;
    answer.lots = question.lots;
    const PricedHome now = price_home(sitting.book(), sitting.inquiry().selection);
    const FitWatch watched = stopping(watch);
    for (std::size_t i = 0; i < sitting.rules().size(); ++i) {
        if (question.scenario && *question.scenario != i) continue;
        const ScenarioRules& rules = sitting.rules()[i];
        FitScenario scenario;
        scenario.terms =
            scenario_answer(sitting, rules, loan_figures(rules, now, sitting.inquiry().facts))
                .terms;
        for (const Index<Lot> lot : lots_to_try(sitting, question.lots)) {
            scenario.homes.push_back(Fitting(sitting, i, lot, question, watched).home());
            if (better(scenario.homes.back(), scenario.homes[scenario.best])) {
                scenario.best = scenario.homes.size() - 1;
            }
        }
        answer.scenarios.push_back(std::move(scenario));
    }
    return answer;
}

} // namespace quoin
