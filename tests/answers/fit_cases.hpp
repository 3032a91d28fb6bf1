// Price books and wishes drawn from a fixed seed, with every rule in them.
#pragma once

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
    Index<Option> add_option(const std::string& id, Money price) {
        Option option;
        option.id = id;
        option.name = id;
        option.price = on_every_plan(price);
        desk.book.options.push_back(option);
        return Index<Option>(desk.book.options.size() - 1);
    }
    [[nodiscard]] PriceByPlan on_every_plan(Money price) const {
        return PriceByPlan(std::vector<std::optional<Money>>(desk.book.plans.size(), price));
    }
    Wish& wish(Index<Option> option) {
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
    for (Included& included : one.desk.book.included) included.option.reset();
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
        if (below(3) == 0) move_to_edge(one);
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
                tangle(one, option, i);
                continue;
            }
            if (form == 2 && i > 1) make_package(option, i);
            relate(one, option, i);
        }
    }
    void make_levels(const FitCase& one, Option& option) {
        option.kind = OptionKind::levels;
        option.included_level = PerItem<Plan, std::optional<Index<Level>>>(
            {one.desk.book.plans.size(), Index<Level>{}});
        Money price;
        const int missing = below(6) == 0 ? 1 : -1; // now and then the plan is not offered "good"
        for (const char* id : {"plain", "good", "best"}) {
            Level level;
            level.id = id;
            level.name = id;
            if (static_cast<int>(option.levels.size()) != missing) {
                level.price = one.on_every_plan(price);
            }
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
        for (int i = 0; i < 2; ++i) option.parts.push_back({Index<Option>(below(before))});
    }
    /// Of an option in levels any of them will do, or one or better.
    OptionRef reference(const FitCase& one, int number) {
        OptionRef ref{Index<Option>(number)};
        const bool levels = at(one.desk.book.options, ref.option).kind == OptionKind::levels;
        const int level = levels ? below(4) - 1 : -1;
        if (level >= 0) ref.level = Index<Level>(level);
        return ref;
    }
    /// Needs point backwards, so that they never come round.
    void relate(const FitCase& one, Option& option, int before) {
        if (before == 0) return;
        if (below(4) == 0) {
            option.needs.push_back({reference(one, below(before))});
            if (below(2) == 0) option.needs.back().push_back(reference(one, below(before)));
        }
        if (below(6) == 0) option.excludes.emplace_back(below(before));
        if (below(5) == 0) option.one_of = below(2) == 0 ? "left" : "right";
        if (below(14) == 0) option.only.lots = {Index<Lot>{}};
    }
    /// The first few options are what the others need.
    static int helpers(int before) { return std::min(before, 7); }
    void tangle(const FitCase& one, Option& option, int before) {
        if (before == 0) return;
        for (int needs = below(3); needs > 0; --needs) {
            std::vector<OptionRef> need;
            for (int ways = 1 + below(3); ways > 0; --ways)
                need.push_back(reference(one, drawn_helper(before)));
            option.needs.push_back(std::move(need));
        }
        if (below(4) == 0) option.excludes.emplace_back(below(before));
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
            pick.option = Index<Option>(below(static_cast<int>(options.size())));
            if (at(options, pick.option).kind == OptionKind::levels) pick.level = Index<Level>(2);
            const Change change = with_pick(one.desk.book, one.inquiry.selection, pick);
            if (change.blocked.empty()) one.inquiry.selection = change.selection;
        }
    }
    void add_wishes(FitCase& one, int count) {
        const auto& options = one.desk.book.options;
        for (int i = 0; i < count; ++i) {
            const Index<Option> option(below(static_cast<int>(options.size())));
            Wish& wish = one.wish(option);
            if (at(options, option).kind == OptionKind::levels) {
                wish.pick.level = Index<Level>(1 + below(2));
            }
            if (at(options, option).quantity.from == Quantity::From::buyer) {
                wish.pick.quantity = Decimal::whole(1 + below(12));
            }
            if (below(2) == 0) wish.weight = Decimal::billionths((1 + below(80)) * 125'000'000LL);
            wish.must = false;
            if (is_wished_twice(one.inquiry.wishes)) one.inquiry.wishes.pop_back();
        }
        if (below(3) == 0) one.inquiry.wishes[0].must = true;
    }
    /// The last one, in the same form.
    static bool is_wished_twice(const std::vector<Wish>& wishes) {
        return std::any_of(wishes.begin(), wishes.end() - 1,
                           [&](const Wish& wish) { return wish.pick == wishes.back().pick; });
    }
    /// Down payments that leave the loan next to an edge of the insurance tables.
    void pay(FitCase& one) {
        Inquiry& inquiry = one.inquiry;
        one.question.scenario = static_cast<std::size_t>(below(6));
        DownPayment& down = inquiry.scenarios[*one.question.scenario].down;
        const Money price = price_home(one.desk.book, inquiry.selection).contract_price;
        const int percents[] = {3, 5, 10, 15, 20, 25};
        const Percent share(Decimal::whole(percents[below(6)]));
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
        Scenario& scenario = inquiry.scenarios[*one.question.scenario];
        if (below(3) == 0) scenario.single_premium = scenario.finance_premium = true;
        if (below(4) == 0) { // a lender credit, now and then of more than the costs
            scenario.rate = {RateChoice::By::quoted, Points(Decimal::whole(-1 - below(5))),
                             rate("6.875")};
        }
        if (below(4) == 0) inquiry.facts.appraised_value = price + Money::dollars(below(20'000));
        const auto& incentives = one.desk.book.incentives;
        if (below(2) == 0 && !incentives.empty()) {
            const Index<Incentive> index(below(static_cast<int>(incentives.size())));
            if (!allows(at(incentives, index).lots, inquiry.selection.lot)) return;
            if (!allows(at(incentives, index).plans, inquiry.selection.plan)) return;
            if (below(2) == 0) { // about as much as the programs let a seller give
                Incentive& incentive = at(one.desk.book.incentives, index);
                incentive.amount =
                    percent_of(price, Percent(Decimal::whole(2 + below(8))), Rounding::half_away);
            }
            const auto& uses = at(incentives, index).uses;
            inquiry.selection.incentives = {
                {index, at(uses, below(static_cast<int>(uses.size()))), {}}};
        }
    }
    /// A base price with which the loan reaches its highest amount, or its income, or whatever else
    /// it is refused by, within what the options come to.
    void move_to_edge(FitCase& one) {
        const Sitting sitting(one.desk, one.inquiry);
        const auto available = [&](Money options) {
            return loan_figures(sitting.rules()[*one.question.scenario],
                                home_at(one.desk.book, one.inquiry.selection, options),
                                one.inquiry.facts)
                .available();
        };
        Money least;
        Money most = Money::dollars(2'000'000);
        if (!available(least) || available(most)) return;
        while (most - least > Money::dollars(1)) {
            const Money middle = least + part_of(most - least, 2, Rounding::down);
            (available(middle) ? least : most) = middle;
        }
        at(one.desk.book.plans, one.inquiry.selection.plan).base_price +=
            least - Money::dollars(below(30'000));
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

} // namespace quoin::test
