// Using credits, one after the other.
#include <quoin/loan/credits.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

bool is_not_negative(const CreditAmounts& amounts) {
    return std::all_of(credit_uses.begin(), credit_uses.end(),
                       [&](CreditUse use) { return amounts[use] >= Money{}; });
}

/// What is still to be paid, and what the cap still allows; beside it, what would still be to be
/// paid if there were no cap.
class Pot {
  public:
    Pot(CreditAmounts room, std::optional<Money> cap, bool concessions_alone)
        : room_(room), uncapped_room_(room), cap_left_(cap), concessions_alone_(concessions_alone) {
    }

    void use(const Credit& credit) {
        Money left = credit.amount;
        Money uncapped_left = credit.amount;
        used_.last = {};
        for (const CreditUse use : credit_uses) {
            if (!credit.may_pay(use)) continue;
            const Money uncapped = std::min(uncapped_left, uncapped_room_[use]);
            uncapped_room_[use] -= uncapped;
            uncapped_left -= uncapped;
            const Money wanted = std::min(left, room_[use]);
            const Money allowed = counts(credit, use) ? std::min(wanted, cap()) : wanted;
            pay(credit, use, allowed);
            left -= allowed;
        }
        // What the cap alone kept from every use; held back at one, it may have paid a later one.
        const Money over = std::max(left - uncapped_left, Money{});
        used_.over_cap += over;
        used_.without_use += left - over;
        used_.last.over_cap = over;
        used_.last.without_use = left - over;
    }
    /// What was used. What was to be paid is never overpaid, nor the cap passed.
    [[nodiscard]] const CreditsUsed& used() const {
        ensure(is_not_negative(room_), "a credit pays no more than there is to pay");
        ensure(cap() >= Money{}, "interested parties give no more than the cap");
        return used_;
    }

  private:
    [[nodiscard]] bool counts(const Credit& credit, CreditUse use) const {
        if (!is_interested_party(credit.from) || !cap_left_) return false;
        return !concessions_alone_ || is_concession(use);
    }
    [[nodiscard]] Money cap() const { return cap_left_.value_or(Money{}); }

    void pay(const Credit& credit, CreditUse use, Money amount) {
        room_[use] -= amount;
        used_.by_use[use] += amount;
        used_.last.by_use[use] += amount;
        if (is_sellers_points(use) && is_interested_party(credit.from)) {
            used_.sellers_points += amount;
        }
        if (!counts(credit, use)) return;
        used_.interested_parties += amount;
        cap_left_ = cap() - amount;
    }

    CreditAmounts room_;
    CreditAmounts uncapped_room_;
    std::optional<Money> cap_left_;
    bool concessions_alone_;
    CreditsUsed used_;
};

} // namespace

bool Credit::may_pay(CreditUse use) const {
    return std::find(uses.begin(), uses.end(), use) != uses.end();
}

CreditsUsed use_credits(const std::vector<const Credit*>& credits, CreditAmounts room,
                        std::optional<Money> cap, bool concessions_alone) {
    ensure(is_not_negative(room), "there is never less than nothing to pay");
    if (credits.empty()) return {};
    ensure(!cap || *cap >= Money{}, "a cap is not under zero");
    Pot pot(room, cap, concessions_alone);
    Money given;
    for (const Credit* credit : credits) {
        pot.use(*credit);
        given += credit->amount;
    }
    const CreditsUsed& used = pot.used();
    const Money paid = used.by_use.total();
    ensure_equal(paid + used.without_use + used.over_cap, given,
                 "credits are paid, without use or over the cap, and nothing besides");
    ensure(used.sellers_points <= paid, "seller's points are of what credits paid");
    return used;
}

} // namespace quoin
