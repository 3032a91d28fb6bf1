// The level payment: the fast path against the exact integers, and these against discounting.
#include <shown.hpp>

#include <limits>
#include <vector>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/level_payment.hpp>

#include "oracle.hpp"
#include "seeded.hpp"

using namespace quoin;

namespace {

struct Tally {
    std::int64_t cases = 0;
    std::int64_t decided = 0; ///< by the fast path
    std::int64_t wrong = 0;
};

/// Fast against exact for `count` loans that share a rate and a term.
void compare(Seeded& seeded, Rate rate, Months term, int count, std::int64_t largest,
             Tally& tally) {
    std::vector<Money> loans;
    for (int i = 0; i < count; ++i) loans.push_back(seeded.loan(largest));
    const std::vector<Money> exact = level_payments_exact(loans, rate, term);
    for (std::size_t i = 0; i < loans.size(); ++i) {
        const auto fast = level_payment_fast(loans[i], rate, term);
        ++tally.cases;
        if (fast) ++tally.decided;
        if (fast && *fast != exact[i] && ++tally.wrong < 5) {
            UNSCOPED_INFO(loans[i].text() << " at " << rate.text() << " % for " << term.count());
        }
    }
}

/// Fast = exact over rates and terms of homes and of no home at all.
Tally compare_many(std::uint64_t seed, int rates_and_terms, int loans_each) {
    Seeded seeded(seed);
    Tally tally;
    for (int i = 0; i < rates_and_terms; ++i) {
        const bool home = i % 2 == 0;
        const Rate rate = home ? seeded.eighth() : seeded.any_rate();
        const Months term = home ? seeded.home_term() : seeded.any_term();
        const std::int64_t largest = i % 8 == 7 ? std::int64_t{1} << 53 : 1'000'000'000;
        compare(seeded, rate, term, loans_each, largest, tally);
    }
    return tally;
}

} // namespace

TEST_CASE("Fast and exact payments agree on three million loans") {
    const Tally tally = compare_many(20'260'101, 3'000, 1'000);
    CHECK(tally.cases == 3'000'000);
    CHECK(tally.wrong == 0);
    // What it leaves: rates of zero, and loans of billions, whose cents a double cannot hold.
    CHECK(tally.decided > 2'900'000);
}

TEST_CASE("Fast and exact payments agree on a hundred million loans", "[.long]") {
    const Tally tally = compare_many(20'260'102, 50'000, 2'000);
    CHECK(tally.wrong == 0);
    CHECK(tally.decided > 96'000'000);
}

TEST_CASE("The fast path decides all but one in ten thousand payments on a home") {
    Seeded seeded(4);
    int decided = 0;
    constexpr int cases = 1'000'000;
    for (int i = 0; i < cases; ++i) {
        const Money loan = Money::cents(seeded.between(2'000'000, 300'000'000));
        const Rate rate = Rate::millionths(seeded.between(16, 96) * 125'000); // 2 to 12%
        if (level_payment_fast(loan, rate, seeded.home_term())) ++decided;
    }
    CHECK(decided > cases - cases / 10'000);
}

TEST_CASE("Exact payments agree with discounting each payment") {
    Seeded seeded(5);
    for (int i = 0; i < 3'000; ++i) {
        const LoanTerms terms = seeded.terms();
        const Money expected = oracle::discounted(terms.rate, terms.term).payment(terms.loan);
        CAPTURE(terms.loan.text(), terms.rate.text(), terms.term.count());
        REQUIRE(level_payment_exact(terms.loan, terms.rate, terms.term) == expected);
        REQUIRE(level_payment(terms.loan, terms.rate, terms.term) == expected);
    }
}

TEST_CASE("Exact payments of many loans are the payments of each") {
    Seeded seeded(6);
    std::vector<Money> loans{Money{}};
    for (int i = 0; i < 500; ++i) loans.push_back(seeded.loan(1'000'000'000'000));
    for (const std::int64_t rate : {0, 1, 6'125'000, 100'000'000}) {
        const auto payments = level_payments_exact(loans, Rate::millionths(rate), Months(360));
        REQUIRE(payments.size() == loans.size());
        for (std::size_t i = 0; i < loans.size(); ++i) {
            REQUIRE(payments[i] ==
                    level_payment_exact(loans[i], Rate::millionths(rate), Months(360)));
        }
    }
    CHECK(level_payments_exact({}, Rate{}, Months(360)).empty());
}

TEST_CASE("A rate of zero divides the loan by the months, ties away from zero") {
    struct Row {
        std::int64_t loan;
        int term;
        std::int64_t payment;
    };
    const Row rows[] = {
        {36'000'000, 360, 100'000},
        {1, 2, 1},
        {1, 3, 0},
        {3, 2, 2},
        {180, 360, 1},
        {179, 360, 0},
        {540, 360, 2},
        {539, 360, 1},
        {100, 480, 0},
        {240, 480, 1},
        {0, 360, 0},
        {100, 1, 100},
    };
    for (const Row& row : rows) {
        CAPTURE(row.loan, row.term);
        CHECK(level_payment(Money::cents(row.loan), Rate{}, Months(row.term)).count() ==
              row.payment);
        CHECK_FALSE(level_payment_fast(Money::cents(row.loan), Rate{}, Months(row.term)));
    }
}

TEST_CASE("One-dollar loans at every eighth and term") {
    for (int eighths = 0; eighths <= 200; eighths += 8) {
        const Rate rate = Rate::millionths(eighths * 125'000);
        for (const int term : {1, 2, 12, 120, 180, 240, 360, 479, 480}) {
            const Money dollar = Money::dollars(1);
            const Money expected = oracle::discounted(rate, Months(term)).payment(dollar);
            CAPTURE(rate.text(), term);
            CHECK(level_payment(dollar, rate, Months(term)) == expected);
        }
    }
}

TEST_CASE("The fast path withholds what it cannot know") {
    const Money loan = Money::dollars(250'000);
    const Rate rate = Rate::millionths(6'500'000);
    CHECK(level_payment_fast(loan, rate, Months(360)) == Money::parse("1580.17"));
    CHECK(level_payment_fast(Money{}, rate, Months(360)) == Money{});

    CHECK_FALSE(level_payment_fast(loan, Rate::millionths(1), Months(12)));
    CHECK_FALSE(level_payment_fast(loan, Rate::millionths(1), Months(480)));
    constexpr std::int64_t exact_limit = std::int64_t{1} << 53;
    CHECK_FALSE(level_payment_fast(Money::cents(exact_limit + 1), rate, Months(360)));
    CHECK_FALSE(level_payment_fast(Money::cents(-1), rate, Months(360)));
    CHECK_FALSE(level_payment_fast(loan, rate, Months(0)));
    CHECK_FALSE(level_payment_fast(loan, rate, Months(481)));

    for (const std::int64_t cents : {exact_limit, exact_limit + 1, std::int64_t{1} << 60}) {
        CHECK(level_payment(Money::cents(cents), rate, Months(360)) ==
              level_payment_exact(Money::cents(cents), rate, Months(360)));
    }
    CHECK(level_payment(loan, Rate::millionths(1), Months(480)) ==
          level_payment_exact(loan, Rate::millionths(1), Months(480)));
}

TEST_CASE("Payments refuse what is no loan, and what leaves the range of money") {
    const Rate rate = Rate::millionths(6'500'000);
    const Money largest = Money::cents(std::numeric_limits<std::int64_t>::max());
    CHECK_THROWS_AS(level_payment(Money::dollars(1), rate, Months(0)), Broken);
    CHECK_THROWS_AS(level_payment(Money::dollars(1), rate, Months(481)), Broken);
    CHECK_THROWS_AS(level_payment(Money::cents(-1), rate, Months(360)), Broken);
    CHECK_THROWS_AS(level_payment(Money::cents(-1), Rate{}, Months(360)), Broken);
    CHECK(level_payment(largest, Rate{}, Months(1)) == largest);
    CHECK_THROWS_AS(level_payment(largest, rate, Months(1)), Overflow);
    CHECK_THROWS_WITH(level_payment(largest, rate, Months(1)), "a level payment is too large");
}
