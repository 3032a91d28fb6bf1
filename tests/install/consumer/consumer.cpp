// The level payment of a loan, as another project computes it.
#include <iostream>

#include <quoin/loan/level_payment.hpp>

int main() {
    using quoin::Money, quoin::Months, quoin::Rate;
    const Rate rate = Rate::millionths(6'500'000); // 6.5%
    std::cout << level_payment(Money::dollars(250'000), rate, Months::years(30)).text() << '\n';
}
