// What credits pay, what the cap keeps from being paid, and what finds no use: by hand, and split
// in parts against the whole.
#include <shown.hpp>

#include "seeded.hpp"
#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

using Use = CreditUse;

Credit builders(const char* amount, std::vector<Use> uses) {
    return {"", CreditFrom::builder, money(amount), std::move(uses)};
}

CreditsUsed used(const std::vector<Credit>& credits, const CreditAmounts& room,
                 std::optional<Money> cap, bool va = false) {
    std::vector<const Credit*> in_order;
    for (const Credit& credit : credits) in_order.push_back(&credit);
    return use_credits(in_order, room, cap, va);
}

CreditAmounts room_of(std::initializer_list<std::pair<Use, const char*>> amounts) {
    CreditAmounts room;
    for (const auto& [use, amount] : amounts) room[use] = money(amount);
    return room;
}

void check_same(const CreditsUsed& parts, const CreditsUsed& whole) {
    for (const Use use : credit_uses) REQUIRE(parts.by_use[use] == whole.by_use[use]);
    REQUIRE(parts.interested_parties == whole.interested_parties);
    REQUIRE(parts.sellers_points == whole.sellers_points);
    REQUIRE(parts.over_cap == whole.over_cap);
    REQUIRE(parts.without_use == whole.without_use);
}

/// Rooms, caps and credits of a few cents, so that every edge is met.
class Drawn {
  public:
    explicit Drawn(std::uint64_t seed) : seeded_(seed) {}

    [[nodiscard]] int upto(int most) { return static_cast<int>(seeded_.between(0, most)); }
    [[nodiscard]] Money amount(int most) { return Money::cents(upto(most)); }
    [[nodiscard]] CreditAmounts room() {
        CreditAmounts room;
        for (const Use use : credit_uses) room[use] = upto(2) == 0 ? Money{} : amount(9);
        return room;
    }
    [[nodiscard]] std::optional<Money> cap() {
        return upto(4) == 0 ? std::nullopt : std::optional(amount(20));
    }
    [[nodiscard]] Credit credit(Money amount) {
        Credit credit{"", static_cast<CreditFrom>(upto(3)), amount, {}};
        while (credit.uses.empty()) {
            for (const Use use : credit_uses) {
                if (upto(1) == 0) credit.uses.push_back(use);
            }
        }
        return credit;
    }

  private:
    Seeded seeded_;
};

} // namespace

TEST_CASE("All that the cap holds back is over it, whatever the uses it was held back at") {
    const CreditAmounts room =
        room_of({{Use::points, "4000"}, {Use::closing_costs, "9000"}, {Use::prepaids, "6000"}});
    const CreditsUsed joined =
        used({builders("23000", {Use::points, Use::closing_costs, Use::prepaids})}, room,
             money("11000"));
    CHECK(joined.by_use.total() == money("11000"));
    CHECK(joined.over_cap == money("8000"));    // 19,000 is there to be paid
    CHECK(joined.without_use == money("4000")); // beyond that, with no cap either
    const CreditsUsed split =
        used({builders("4000", {Use::points}), builders("11000", {Use::closing_costs}),
              builders("8000", {Use::prepaids})},
             room, money("11000"));
    check_same(split, joined);
}

TEST_CASE("What the cap holds back at one use and a later use takes is not over it") {
    // VA counts a buydown and prepaids, not closing costs (VA Lenders Handbook, chapter 8).
    const CreditAmounts room =
        room_of({{Use::buydown, "5000"}, {Use::closing_costs, "3000"}, {Use::prepaids, "4000"}});
    const std::vector<Use> uses{Use::buydown, Use::closing_costs, Use::prepaids};
    const auto over = [&](const char* amount) {
        return used({builders(amount, uses)}, room, money("1000"), true);
    };
    CHECK(over("4000").over_cap == Money{}); // 1,000 and 3,000
    CHECK(over("4500").over_cap == money("500"));
    CHECK(over("12000").over_cap == money("8000")); // 4,000 of the buydown, 4,000 of prepaids
    CHECK(over("12500").over_cap == money("8000"));
    CHECK(over("12500").without_use == money("500"));
}

TEST_CASE("Two credits for what one would pay are over the cap once, and then without use") {
    const CreditAmounts room = room_of({{Use::closing_costs, "1000"}});
    const std::vector<Use> uses{Use::closing_costs};
    const CreditsUsed both = used({builders("1000", uses), builders("1000", uses)}, room, Money{});
    CHECK(both.over_cap == money("1000"));
    CHECK(both.without_use == money("1000"));
    CHECK(both.last.over_cap == Money{});
    CHECK(both.last.without_use == money("1000"));
    check_same(both, used({builders("2000", uses)}, room, Money{}));
}

TEST_CASE("A credit split in parts comes to the same as the whole, among whatever else is given") {
    Drawn drawn(7'041);
    int over = 0;
    int without_use = 0;
    for (int round = 0; round < 20'000; ++round) {
        const CreditAmounts room = drawn.room();
        const std::optional<Money> cap = drawn.cap();
        const bool va = drawn.upto(1) == 0;
        const Credit before = drawn.credit(drawn.amount(12));
        const Credit whole = drawn.credit(drawn.amount(40));
        const Credit after = drawn.credit(drawn.amount(12));
        std::vector<Credit> parts{before};
        for (Money left = whole.amount; left > Money{};) {
            Credit part = whole;
            part.amount = std::min(left, Money::cents(1 + drawn.upto(15)));
            left -= part.amount;
            parts.push_back(part);
        }
        parts.push_back(after);
        const CreditsUsed joined = used({before, whole, after}, room, cap, va);
        CAPTURE(round);
        check_same(used(parts, room, cap, va), joined);
        REQUIRE(joined.by_use.total() + joined.over_cap + joined.without_use ==
                before.amount + whole.amount + after.amount);
        if (!cap) REQUIRE(joined.over_cap == Money{});
        over += joined.over_cap > Money{} ? 1 : 0;
        without_use += joined.without_use > Money{} ? 1 : 0;
    }
    CHECK(over > 1'000);
    CHECK(without_use > 1'000);
}

TEST_CASE("One credit is over the cap by what there is for it to pay, less what it pays") {
    Drawn drawn(7'042);
    int over = 0;
    for (int round = 0; round < 20'000; ++round) {
        const CreditAmounts room = drawn.room();
        const Credit credit = drawn.credit(drawn.amount(40));
        const std::optional<Money> cap = drawn.cap();
        const CreditsUsed one = used({credit}, room, cap, drawn.upto(1) == 0);
        Money there_is;
        for (const Use use : credit.uses) there_is += room[use];
        CAPTURE(round);
        REQUIRE(one.over_cap == std::min(credit.amount, there_is) - one.by_use.total());
        REQUIRE(one.without_use == std::max(credit.amount - there_is, Money{}));
        over += one.over_cap > Money{} ? 1 : 0;
    }
    CHECK(over > 1'000);
}
