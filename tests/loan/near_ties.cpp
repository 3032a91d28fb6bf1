// Loans sought out so that the exact payment lies on half a cent, or next to it.
#include <shown.hpp>

#include <optional>
#include <vector>

#include <quoin/loan/level_payment.hpp>

#include "oracle.hpp"
#include "seeded.hpp"

using namespace quoin;
using oracle::Fraction;
using oracle::Quotient;
using oracle::Whole;

namespace {

/// The smallest x >= 0 with low <= step x mod modulus <= high, found as Euclid would.
/// Precondition: 0 <= step < modulus, 0 <= low <= high < modulus.
std::optional<Whole> first_in_window(Whole step, Whole modulus, Whole low, Whole high) {
    if (low == 0) return Whole(0);
    if (step == 0) return std::nullopt;
    const Whole turns = (low + step - 1) / step;
    if (turns * step <= high) return turns;
    // No multiple lies in the window on the first lap, so one must come round from a later lap y:
    // step x - modulus y in [low, high], that is modulus y mod step in [-high, -low] mod step.
    const Whole lowest = (step - high % step) % step;
    const Whole highest = (step - low % step) % step;
    const auto laps = first_in_window(modulus % step, step, lowest, highest);
    if (!laps) return std::nullopt;
    return (low + modulus * *laps + step - 1) / step;
}

/// One rate and term, and what a loan of one cent pays under them.
struct Market {
    Rate rate;
    Months term;
    Quotient cent = oracle::discounted(rate, term);
};

/// The smallest loan, in cents, whose payment is within 1 / `parts` of half a cent.
std::optional<Whole> first_near_tie(const Market& market, const Whole& parts) {
    const Whole& bottom = market.cent.bottom;
    const Whole reach = 2 * bottom / parts;
    return first_in_window(2 * market.cent.top % (2 * bottom), 2 * bottom, bottom - reach,
                           bottom + reach);
}

/// Whether the payment of `loan` is within 1 / `parts` of half a cent.
bool is_near_tie(const Market& market, Money loan, const Whole& parts) {
    const auto& [top, bottom] = market.cent;
    const Whole from_tie = 2 * loan.count() * top % (2 * bottom) - bottom;
    return abs(from_tie) * parts <= 2 * bottom;
}

struct Found {
    int near_ties = 0;
    int withheld = 0; ///< by the fast path
};

/// The near tie itself and its neighbours, all ways against discounting.
void check_around(Money near_tie, const Market& market, Found& found) {
    for (const int step : {-1, 0, 1}) {
        const Money loan = near_tie + Money::cents(step);
        const Money expected = market.cent.payment(loan);
        CAPTURE(loan.text(), market.rate.text(), market.term.count());
        REQUIRE(level_payment_exact(loan, market.rate, market.term) == expected);
        REQUIRE(level_payment(loan, market.rate, market.term) == expected);
        const auto fast = level_payment_fast(loan, market.rate, market.term);
        if (fast) REQUIRE(*fast == expected);
        if (step == 0 && !fast) ++found.withheld;
    }
    ++found.near_ties;
}

/// Near ties, ever nearer, among loans of up to ten million million dollars.
void search(const Market& market, Found& found) {
    Whole parts = 10'000;
    for (int zeros = 5; zeros <= 15; ++zeros) {
        parts *= 10;
        const auto cents = first_near_tie(market, parts);
        if (!cents || *cents > 1'000'000'000'000'000) continue;
        const Money loan = oracle::to_money(*cents);
        REQUIRE(is_near_tie(market, loan, parts));
        check_around(loan, market, found);
    }
}

} // namespace

TEST_CASE("Near ties are rounded rightly by every way to a payment") {
    Seeded seeded(8);
    Found found;
    for (int i = 0; i < 1'000; ++i) {
        const bool home = i % 2 == 0;
        const Rate rate = home ? seeded.eighth() : seeded.any_rate();
        search(Market{rate, home ? seeded.home_term() : seeded.any_term()}, found);
    }
    CHECK(found.near_ties > 7'000);
    CHECK(found.withheld > 1'000);                   // close enough to need the integers
    CHECK(found.near_ties - found.withheld > 1'000); // and just far enough to do without
}

TEST_CASE("Payments of exactly half a cent go away from zero") {
    // In lowest terms payment = loan N / D. With D even, a loan of an odd number of D/2 cents pays
    // an odd number of half cents.
    int ties = 0;
    for (const int term : {1, 2, 3, 4, 6, 12}) {
        for (std::int64_t units = 0; units <= 25'000'000; units += 125'000) {
            const Market market{Rate::millionths(units), Months(term)};
            const Fraction cent(market.cent.top, market.cent.bottom);
            const Whole d = denominator(cent);
            for (const int odd : {1, 3, 5, 101}) {
                if (d % 2 != 0 || d / 2 * odd > 1'000'000'000'000'000) continue;
                const Money loan = oracle::to_money(d / 2 * odd);
                const Whole half_cents = odd * numerator(cent);
                REQUIRE(half_cents % 2 == 1);
                CHECK(level_payment(loan, market.rate, market.term) ==
                      oracle::to_money((half_cents + 1) / 2));
                CHECK_FALSE(level_payment_fast(loan, market.rate, market.term));
                ++ties;
            }
        }
    }
    CHECK(ties > 1'000);
}
