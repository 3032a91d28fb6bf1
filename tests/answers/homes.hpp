// Homes of the shipped example drawn from a fixed seed, always within the price book's rules.
#pragma once

#include <cstdint>
#include <random>

#include <quoin/home/rules.hpp>

#include "support/files.hpp"

namespace quoin::test {

class Homes {
  public:
    explicit Homes(std::uint64_t seed) : random_(seed) {}

    /// The example's inquiry about another home: a plan on a free lot that it fits, and picks put
    /// in one by one, each with what it needs.
    Inquiry next() {
        Inquiry inquiry = six_programs().inquiry;
        Selection& selection = inquiry.selection;
        selection = {};
        selection.plan = index_in(book().plans);
        selection.elevation = index_in(at(book().plans, selection.plan).elevations);
        do {
            selection.lot = index_in(book().lots);
        } while (at(book().lots, selection.lot).status != LotStatus::free ||
                 !allows(at(book().lots, selection.lot).plans, selection.plan));
        for (int tries = below(40); tries > 0; --tries) {
            const Change change = with_pick(book(), selection, any_pick());
            if (change.blocked.empty()) selection = change.selection;
        }
        selection.incentives = any_incentives(selection);
        if (below(3) == 0) inquiry.facts.appraised_value = Money::dollars(380'000 + below(200'000));
        return inquiry;
    }
    /// Any option in any form, on the plan or not.
    Pick any_pick() {
        Pick pick;
        pick.option = index_in(book().options);
        const Option& option = at(book().options, pick.option);
        if (option.kind == OptionKind::levels) pick.level = index_in(option.levels);
        if (option.kind == OptionKind::choice) pick.choice = index_in(option.choices);
        if (option.kind == OptionKind::allowance) pick.spend = Money::dollars(below(6000));
        if (option.quantity.from == Quantity::From::buyer && below(2) == 1) {
            pick.quantity = any_quantity(option.quantity);
        }
        return pick;
    }
    int below(std::size_t end) { return static_cast<int>(random_() % end); }
    template <class Item>
    Index<Item> index_in(const std::vector<Item>& list) {
        return Index<Item>(below(list.size()));
    }
    static const PriceBook& book() { return six_programs().desk.book; }

  private:
    /// None, or one that the plan and lot allow, put to any use it has.
    std::vector<IncentivePick> any_incentives(const Selection& selection) {
        const int drawn = below(book().incentives.size() + 1) - 1;
        if (drawn < 0) return {};
        const Index<Incentive> index(drawn);
        const Incentive& incentive = at(book().incentives, index);
        if (!allows(incentive.plans, selection.plan) || !allows(incentive.lots, selection.lot)) {
            return {};
        }
        return {{index, at(incentive.uses, below(incentive.uses.size())), {}}};
    }
    Decimal any_quantity(const Quantity& limits) {
        Decimal quantity = limits.lowest;
        for (int steps = below(12); steps > 0 && quantity + limits.step <= limits.highest;
             --steps) {
            quantity = quantity + limits.step;
        }
        return quantity;
    }

    std::mt19937_64 random_;
};

} // namespace quoin::test
