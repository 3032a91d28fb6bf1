// Price books and wishes drawn from a fixed seed, with every rule in them, and the best choice by
// trying all.
#pragma once

#include <map>
#include <random>

#include <quoin/answers/fit.hpp>
#include <quoin/home/rules.hpp>

#include "support/files.hpp"

namespace quoin::test {

/// A desk and an inquiry of its own, both to be changed at will.
struct FitCase {
    Desk desk = six_programs().desk;
    Inquiry inquiry = six_programs().inquiry;
    FitQuestion question;

    [[nodiscard]] FitHome answer() const {
        return fit(Sitting(desk, inquiry), question).scenarios.front().homes.front();
    }
    /// An option on every plan, at one price.
    int add_option(const std::string& id, Money price) {
        Option option;
        option.id = id;
        option.name = id;
        option.price = on_every_plan(price);
        desk.book.options.push_back(option);
        return static_cast<int>(desk.book.options.size()) - 1;
    }
    [[nodiscard]] PriceByPlan on_every_plan(Money price) const {
        return PriceByPlan(std::vector<std::optional<Money>>(desk.book.plans.size(), price));
    }
    Wish& wish(int option) {
        Wish wish;
        wish.pick.option = option;
        wish.rank = static_cast<int>(inquiry.wishes.size()) + 1;
        inquiry.wishes.push_back(wish);
        return inquiry.wishes.back();
    }
};

/// The example's plan and lot with nothing selected and no options but those a test adds.
inline FitCase bare_case() {
    FitCase one;
    one.desk.book.options.clear();
    one.desk.book.model.reset();
    for (Included& included : one.desk.book.included) included.option = -1;
    one.inquiry.selection.picks.clear();
    one.inquiry.selection.requests.clear();
    one.inquiry.selection.incentives.clear();
    one.inquiry.wishes.clear();
    one.question.limits = {Money::dollars(1'000'000), Money::dollars(10'000'000)};
    one.question.scenario = 0;
    return one;
}

/// How the options of a drawn book hang together.
enum class FitRules {
    loose,   ///< a few of every rule
    tangled, ///< most need others, in several ways; few helpers shared by many; packages bring them
};

class FitCases {
  public:
    explicit FitCases(std::uint64_t seed, FitRules rules = FitRules::loose)
        : random_(seed), rules_(rules) {}

    FitCase next(int wishes) { return next(wishes, wishes + below(4)); }
    FitCase next(int wishes, int options) {
        FitCase one = bare_case();
        add_options(one, options);
        select_some(one);
        add_wishes(one, wishes);
        pay(one);
        set_limits(one);
        return one;
    }
    int below(int end) { return static_cast<int>(random_() % static_cast<std::uint64_t>(end)); }

  private:
    void add_options(FitCase& one, int count) {
        auto& options = one.desk.book.options;
        for (int i = 0; i < count; ++i) {
            const Money price = Money::cents(below(12) == 0 ? -90'000 : 20'000 + below(1'500'000));
            one.add_option("option-" + std::to_string(i), price);
            Option& option = options.back();
            option.structural = below(3) == 0;
            const int form = below(10);
            if (form == 0) make_levels(one, option);
            if (form == 1) make_counted(one, option);
            if (rules_ == FitRules::tangled) {
                if (form >= 2 && form <= 4 && i > 1) make_package(option, helpers(i));
                tangle(option, i);
                continue;
            }
            if (form == 2 && i > 1) make_package(option, i);
            relate(option, i);
        }
    }
    void make_levels(const FitCase& one, Option& option) {
        option.kind = OptionKind::levels;
        option.included_level.assign(one.desk.book.plans.size(), 0);
        Money price;
        for (const char* id : {"plain", "good", "best"}) {
            Level level;
            level.id = id;
            level.name = id;
            level.price = one.on_every_plan(price);
            option.levels.push_back(level);
            price += Money::dollars(500 + below(4000));
        }
    }
    void make_counted(const FitCase& one, Option& option) {
        option.quantity.from = Quantity::From::buyer;
        option.quantity.highest = Decimal::whole(12);
        option.quantity.usual = Decimal::whole(2);
        option.price = one.on_every_plan(Money::dollars(90 + below(300)));
    }
    void make_package(Option& option, int before) {
        option.kind = OptionKind::package;
        for (int i = 0; i < 2; ++i) option.parts.push_back({below(before), 0});
        for (OptionRef& part : option.parts) part.level = -1;
    }
    /// Needs point backwards, so that they never come round.
    void relate(Option& option, int before) {
        if (before == 0) return;
        if (below(4) == 0) {
            option.needs.push_back({{below(before), -1}});
            if (below(2) == 0) option.needs.back().push_back({below(before), -1});
        }
        if (below(6) == 0) option.excludes.push_back(below(before));
        if (below(5) == 0) option.one_of = below(2) == 0 ? "left" : "right";
        if (below(14) == 0) option.only.lots = {0};
    }
    /// The first few options are what the others need.
    static int helpers(int before) { return std::min(before, 7); }
    void tangle(Option& option, int before) {
        if (before == 0) return;
        for (int needs = below(3); needs > 0; --needs) {
            std::vector<OptionRef> need;
            for (int ways = 1 + below(3); ways > 0; --ways)
                need.push_back({drawn_helper(before), -1});
            option.needs.push_back(std::move(need));
        }
        if (below(4) == 0) option.excludes.push_back(below(before));
        if (below(6) == 0) option.one_of = below(2) == 0 ? "left" : "right";
    }
    /// Now and then one of the latest options, a package maybe, instead of the first few.
    int drawn_helper(int before) {
        return below(4) == 0 ? std::max(before - 1 - below(4), 0) : below(helpers(before));
    }
    /// In half of the cases a few options are in the home already.
    void select_some(FitCase& one) {
        const auto& options = one.desk.book.options;
        for (int tries = below(2) * below(5); tries > 0; --tries) {
            Pick pick;
            pick.option = below(static_cast<int>(options.size()));
            if (at(options, pick.option).kind == OptionKind::levels) pick.level = 1;
            const Change change = with_pick(one.desk.book, one.inquiry.selection, pick);
            if (change.blocked.empty()) one.inquiry.selection = change.selection;
        }
    }
    void add_wishes(FitCase& one, int count) {
        const auto& options = one.desk.book.options;
        for (int i = 0; i < count; ++i) {
            const int option = below(static_cast<int>(options.size()));
            Wish& wish = one.wish(option);
            if (at(options, option).kind == OptionKind::levels) wish.pick.level = 1 + below(2);
            if (at(options, option).quantity.from == Quantity::From::buyer) {
                wish.pick.quantity = Decimal::whole(1 + below(12));
            }
            if (below(2) == 0) wish.weight = Decimal::billionths((1 + below(80)) * 125'000'000LL);
            wish.must = false;
        }
        if (below(3) == 0) one.inquiry.wishes[0].must = true;
    }
    /// Down payments that leave the loan next to an edge of the insurance tables.
    void pay(FitCase& one) {
        Inquiry& inquiry = one.inquiry;
        one.question.scenario = static_cast<std::size_t>(below(6));
        DownPayment& down = inquiry.scenarios[*one.question.scenario].down;
        const Money price = price_home(one.desk.book, inquiry.selection).contract_price;
        const int percents[] = {3, 5, 10, 15, 20};
        const Percent share(Decimal::whole(percents[below(5)]));
        const int how = below(4);
        if (how == 1) {
            const Money near =
                percent_of(price + Money::dollars(below(20'000)), share, Rounding::down);
            down = {DownPayment::By::amount, {}, near};
        } else if (how == 2) {
            down = {DownPayment::By::percent, share, {}};
        } else if (how == 3) {
            down = {DownPayment::By::cash,
                    {},
                    percent_of(price, share, Rounding::down) +
                        Money::dollars(20'000 + below(9000))};
        }
        if (below(4) == 0) inquiry.facts.appraised_value = price + Money::dollars(below(20'000));
        const auto& incentives = one.desk.book.incentives;
        if (below(2) == 0 && !incentives.empty()) {
            const int index = below(static_cast<int>(incentives.size()));
            if (!allows(at(incentives, index).lots, inquiry.selection.lot)) return;
            if (!allows(at(incentives, index).plans, inquiry.selection.plan)) return;
            const auto& uses = at(incentives, index).uses;
            inquiry.selection.incentives = {
                {index, at(uses, below(static_cast<int>(uses.size()))), {}}};
        }
    }
    /// What some home comes to, to the cent, so that the limit lies on the very edge.
    void set_limits(FitCase& one) {
        const Sitting sitting(one.desk, one.inquiry);
        const Money options = Money::cents(below(3'000'000));
        const LoanFigures figures =
            loan_figures(sitting.rules()[*one.question.scenario],
                         home_at(one.desk.book, one.inquiry.selection, options), one.inquiry.facts);
        if (!figures.available()) return;
        const int which = below(3);
        if (which != 0) one.question.limits.monthly = figures.monthly.total();
        if (which != 1) one.question.limits.cash = figures.cash.needed();
    }

    std::mt19937_64 random_;
    FitRules rules_;
};

/// The greatest worth by trying every choice of the wishes and of the options that those need.
class TryAll {
  public:
    explicit TryAll(const FitCase& one)
        : one_(one), sitting_(one.desk, one.inquiry),
          rules_(sitting_.rules()[*one.question.scenario]) {
        for (const Wish& wish : one.inquiry.wishes) {
            picks_.push_back(wish.pick);
            worths_.push_back(one.inquiry.worth_of(wish).billionths());
            musts_.push_back(wish.must && !is_held(wish.pick));
        }
        for (std::size_t i = 0; i < picks_.size(); ++i) {
            if (is_kept_out(picks_[i])) continue; // so that nothing is needed for it
            for (const auto& need : at(one.desk.book.options, picks_[i].option).needs) {
                if (met_without(need, picks_[i])) continue;
                for (const OptionRef& ref : need) add_helper(ref);
            }
        }
    }
    [[nodiscard]] std::size_t size() const { return picks_.size(); }

    /// The month and the cash of every home that holds the must-haves, and whose loan can be had.
    std::vector<FitLimits> homes() {
        std::vector<FitLimits> found;
        for (std::uint64_t set = std::uint64_t{1} << picks_.size(); set-- > 0;) {
            bool musts = true;
            for (std::size_t i = 0; i < picks_.size(); ++i) {
                musts = musts && ((set >> i & 1) != 0 || !musts_[i]);
            }
            const auto selection = musts ? selection_of(set) : std::nullopt;
            if (!selection || !conflicts(one_.desk.book, *selection).empty()) continue;
            const LoanFigures figures =
                loan_figures(rules_, price_home(one_.desk.book, *selection), one_.inquiry.facts);
            if (!figures.available()) continue;
            found.push_back({figures.monthly.total(), figures.cash.needed()});
        }
        return found;
    }

    /// Billionths; -1 where nothing fits.
    std::int64_t best() {
        std::int64_t best = -1;
        for (std::uint64_t set = std::uint64_t{1} << picks_.size(); set-- > 0;) {
            std::int64_t worth = 0;
            bool musts = true;
            for (std::size_t i = 0; i < picks_.size(); ++i) {
                const bool in = (set >> i & 1) != 0;
                if (in) worth += worths_[i];
                musts = musts && (in || !musts_[i]);
            }
            if (worth > best && musts && stands(set)) best = worth;
        }
        return best;
    }
    /// A selection as the answer says it, held to the limits.
    [[nodiscard]] bool within(const Selection& selection) {
        if (!conflicts(one_.desk.book, selection).empty()) return false;
        const PricedHome home = price_home(one_.desk.book, selection);
        const auto known = verdicts_.find(home.options);
        if (known != verdicts_.end()) return known->second;
        const LoanFigures figures = loan_figures(rules_, home, one_.inquiry.facts);
        return verdicts_[home.options] = figures.available() &&
                                         figures.monthly.total() <= one_.question.limits.monthly &&
                                         figures.cash.needed() <= one_.question.limits.cash;
    }

  private:
    /// By the selections, or by the plan and the lot.
    [[nodiscard]] bool is_kept_out(const Pick& pick) const {
        Selection with = one_.inquiry.selection;
        if (with.find(pick.option) != nullptr) return false;
        with.picks.push_back(pick);
        const auto found = conflicts(one_.desk.book, with);
        return std::any_of(found.begin(), found.end(),
                           [](const Conflict& one) { return one.barrier != Barrier::needs; });
    }
    /// By the selections, or by what the pick brings itself.
    [[nodiscard]] bool met_without(const std::vector<OptionRef>& need, const Pick& pick) const {
        Selection with = one_.inquiry.selection;
        with.picks.push_back(pick);
        return std::any_of(need.begin(), need.end(),
                           [&](OptionRef ref) { return holds(one_.desk.book, with, ref); });
    }
    void add_helper(OptionRef ref) {
        Pick pick;
        pick.option = ref.option;
        if (at(one_.desk.book.options, ref.option).kind == OptionKind::levels) pick.level = 0;
        for (const Pick& known : picks_) {
            if (known.option == pick.option && known.level == pick.level) return;
        }
        picks_.push_back(pick);
        worths_.push_back(0);
        musts_.push_back(false);
    }
    bool stands(std::uint64_t set) {
        const auto selection = selection_of(set);
        return selection && within(*selection);
    }
    [[nodiscard]] std::optional<Selection> selection_of(std::uint64_t set) const {
        Selection selection = one_.inquiry.selection;
        for (std::size_t i = 0; i < picks_.size(); ++i) {
            if ((set >> i & 1) == 0) continue;
            if (one_.inquiry.selection.find(picks_[i].option) == nullptr) {
                if (selection.find(picks_[i].option) != nullptr) return std::nullopt;
                selection.picks.push_back(picks_[i]);
            } else if (!replace(selection, picks_[i])) {
                return std::nullopt;
            }
        }
        return selection;
    }

    [[nodiscard]] bool is_more(const Pick& pick, const Pick& selected) const {
        const Option& option = at(one_.desk.book.options, pick.option);
        return pick.level > selected.level || pick.quantity.value_or(option.quantity.usual) >
                                                  selected.quantity.value_or(option.quantity.usual);
    }
    [[nodiscard]] bool is_held(const Pick& pick) const {
        const Pick* selected = one_.inquiry.selection.find(pick.option);
        return selected != nullptr && !is_more(pick, *selected);
    }
    /// More of a selected option, once.
    [[nodiscard]] bool replace(Selection& selection, const Pick& pick) const {
        for (std::size_t i = 0; i < one_.inquiry.selection.picks.size(); ++i) {
            const Pick& selected = one_.inquiry.selection.picks[i];
            if (selected.option != pick.option) continue;
            if (!is_more(pick, selected) || !(selection.picks[i] == selected)) return false;
            selection.picks[i] = pick;
        }
        return true;
    }

    const FitCase& one_;
    Sitting sitting_;
    const ScenarioRules& rules_;
    std::vector<Pick> picks_;
    std::vector<std::int64_t> worths_;
    std::vector<bool> musts_;
    std::map<Money, bool> verdicts_;
};

} // namespace quoin::test
