// The least month, the least cash and the home between them: each found by lowering one limit to
// just under what was found, until a search proves that no home is below it.
#include "nearest.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/home/priced_home.hpp>

namespace quoin {
namespace {

constexpr Money no_limit = Money::dollars(1'000'000'000'000);

class Nearing {
  public:
    Nearing(const FitPlace& place, const FitSearchWatch& watch)
        : place_(place), watch_(watch), limits_(*place.limits) {}

    FitNearest find() {
        const FitFound standing = any(std::nullopt);
        found_.stands = standing.any;
        found_.proven = standing.any || standing.most < 0;
        if (!standing.any) return found_;
        found_.taken = standing.taken;
        found_.proven = true;
        auto first = home_within({no_limit, no_limit});
        if (!first && !found_.proven) first = as_it_stands();
        if (!first) return found_;
        found_.available = true;
        const Home month = lower(*first, &FitLimits::monthly, {no_limit, no_limit});
        const Home cash = lower(month.cash <= first->cash ? month : *first, &FitLimits::cash,
                                {no_limit, no_limit});
        settle(month, cash);
        return found_;
    }

  private:
    struct Home {
        std::vector<int> taken;
        Money monthly;
        Money cash;
    };

    FitFound any(std::optional<FitLimits> limits) const {
        FitPlace place = place_;
        place.limits = limits;
        return FitSearch(place).any(watch_);
    }

    std::optional<Home> home_within(const FitLimits& limits) {
        FitFound one = any(limits);
        if (!one.any) {
            found_.proven = found_.proven && one.most < 0;
            return std::nullopt;
        }
        return Home{std::move(one.taken), one.figures.monthly, one.figures.cash};
    }

    /// Where the search stopped: the home that stands by the rules, if its loan can be had.
    [[nodiscard]] std::optional<Home> as_it_stands() const {
        const Selection home = with_items(*place_.items, *place_.selection, found_.taken);
        const LoanFigures figures =
            loan_figures(*place_.rules, price_home(place_.sitting->book(), home),
                         place_.sitting->inquiry().facts);
        if (!figures.available()) return std::nullopt;
        return Home{found_.taken, figures.monthly.total(), figures.cash.needed()};
    }

    /// The home of the least month, or cash, within `limits`; down to the buyer's limit will do.
    Home lower(Home home, Money FitLimits::*which, FitLimits limits) {
        constexpr int most_tries = 60;
        for (int i = 0; i < most_tries; ++i) {
            const Money here = which == &FitLimits::monthly ? home.monthly : home.cash;
            if (here <= limits_.*which) return home;
            limits.*which = here - Money::cents(1);
            auto next = home_within(limits);
            if (!next) return home;
            home = std::move(*next);
        }
        found_.proven = false;
        return home;
    }

    /// One home that is over by the least in both, if there is one; else the least over the month
    /// and, of those, the cash.
    void settle(const Home& month, const Home& cash) {
        const auto over = [](Money amount, Money limit) {
            return std::max(amount - limit, Money{});
        };
        FitMiss miss;
        miss.least_monthly = over(month.monthly, limits_.monthly);
        miss.least_cash = over(cash.cash, limits_.cash);
        const FitLimits raised{limits_.monthly + miss.least_monthly,
                               limits_.cash + miss.least_cash};
        std::optional<Home> both = home_within(raised);
        miss.in_one_home = both.has_value();
        if (!both) both = lower(month, &FitLimits::cash, {raised.monthly, no_limit});
        ensure(both->monthly <= raised.monthly, "the nearest home keeps to the raised month");
        miss.proven = found_.proven;
        found_.taken = both->taken;
        found_.miss = miss;
    }

    const FitPlace& place_;
    const FitSearchWatch& watch_;
    FitLimits limits_;
    FitNearest found_;
};

/// The fewest must-haves that cannot stand together: each is left out that is not needed for that.
std::vector<int> fewest(const FitPlace& place, FitItems& items, const FitSearchWatch& watch) {
    FitPlace rules{place.sitting, place.rules, place.selection, &items, std::nullopt};
    std::vector<int> musts;
    for (std::size_t i = 0; i < items.items.size(); ++i) {
        if (!items.items[i].must) continue;
        items.items[i].must = false;
        const FitFound found = FitSearch(rules).any(watch);
        if (!found.any && found.most < 0) continue;
        items.items[i].must = true;
        musts.push_back(static_cast<int>(i));
    }
    return musts;
}

class Explaining {
  public:
    Explaining(const FitPlace& place, const FitItems& items)
        : book_(place.sitting->book()), selection_(*place.selection), items_(items) {}

    FitBarred barred(const std::vector<int>& musts) {
        for (const int must : musts) concern(must);
        for (std::size_t i = 0; i < concerned_.size(); ++i) tell_needs(concerned_[i]);
        for (std::size_t i = 0; i < concerned_.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) tell_clash(concerned_[k], concerned_[i]);
        }
        FitBarred barred{FitBarred::Kind::contradiction, std::move(told_)};
        for (const int must : musts) barred.must_haves.push_back(name(must));
        return barred;
    }

  private:
    [[nodiscard]] Index<Option> option(int item) const {
        return at(items_.items, item).pick.option;
    }
    [[nodiscard]] std::string name(int item) const { return at(book_.options, option(item)).name; }

    void concern(int item) {
        if (std::find(concerned_.begin(), concerned_.end(), item) == concerned_.end()) {
            concerned_.push_back(item);
        }
    }
    void tell(Index<Option> option, const Conflict& conflict) {
        told_.push_back(
            {at(book_.options, option).name, why_not(book_, conflict, Naming::names), {}});
    }

    /// What an item needs, and what keeps out the ways to meet it.
    void tell_needs(int item) {
        for (const auto& need : at(book_.options, option(item)).needs) {
            const bool held = std::any_of(need.begin(), need.end(), [&](const OptionRef& ref) {
                return holds(book_, selection_, ref);
            });
            if (held) continue;
            tell(option(item), {Barrier::needs, {option(item)}, need});
            for (const OptionRef& ref : need) {
                Pick pick;
                pick.option = ref.option;
                const auto barred = barriers(book_, selection_, pick);
                if (!barred.empty()) tell(ref.option, barred.front());
                for (const Pick& other : selection_.picks) tell_between(other.option, ref.option);
            }
        }
        for (const auto& by : at(items_.items, item).needs) {
            for (const int one : by) concern(one);
        }
    }
    void tell_clash(int a, int b) {
        if (option(a) != option(b)) tell_between(option(a), option(b));
    }
    void tell_between(Index<Option> a, Index<Option> b) {
        const auto conflict = conflict_between(book_, b, a);
        if (!conflict) return;
        told_.push_back({at(book_.options, a).name, why_not(book_, *conflict, Naming::names),
                         at(book_.options, b).name});
    }

    const PriceBook& book_;
    const Selection& selection_;
    const FitItems& items_;
    std::vector<int> concerned_;
    std::vector<FitRule> told_;
};

} // namespace

FitNearest nearest_to_limits(const FitPlace& place, const FitSearchWatch& watch) {
    return Nearing(place, watch).find();
}

FitBarred contradiction(const FitPlace& place, const FitSearchWatch& watch) {
    FitItems items = *place.items;
    const std::vector<int> musts = fewest(place, items, watch);
    return Explaining(place, items).barred(musts);
}

} // namespace quoin
