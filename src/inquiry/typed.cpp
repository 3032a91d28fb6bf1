// Reading figures that a person typed.
#include <quoin/inquiry/typed.hpp>

#include <quoin/text/problems.hpp>

namespace quoin {

void refuse(Problem problem) {
    Findings findings;
    findings.add(std::move(problem));
    throw Refused(std::move(findings));
}

void refuse_typed(const std::string& name, const std::string& text, Wanted expected) {
    refuse(problems::payment_input(name, text, expected));
}

Money amount_typed(const std::string& name, const std::string& text, Money least, Money most,
                   Wanted expected) {
    const auto amount = Money::parse(text);
    if (amount && *amount >= least && *amount <= most) return *amount;
    constexpr std::int64_t of_a_cent = Decimal::one / 100;
    expected.least = Decimal::billionths(least.count() * of_a_cent);
    expected.most = Decimal::billionths(most.count() * of_a_cent);
    refuse_typed(name, text, std::move(expected));
}

Decimal number_typed(const std::string& name, const std::string& text, Decimal least, Decimal most,
                     Wanted expected) {
    const auto number = Decimal::parse(text);
    if (number && *number >= least && *number <= most) return *number;
    expected.least = least;
    expected.most = most;
    refuse_typed(name, text, std::move(expected));
}

int whole_typed(const std::string& name, const std::string& text, int least, int most,
                Wanted::Kind what) {
    const Wanted expected{
        .kind = what, .least = Decimal::whole(least), .most = Decimal::whole(most)};
    const Decimal number = number_typed(name, text, expected.least, expected.most, expected);
    if (number.is_whole()) return static_cast<int>(number.rounded(Rounding::down));
    refuse_typed(name, text, expected);
}

Rate rate_typed(const std::string& name, const std::string& text, Wanted expected) {
    const auto percent = Decimal::parse(text);
    const auto rate = percent ? Rate::percent(*percent) : std::nullopt;
    if (rate) return *rate;
    refuse_typed(name, text, std::move(expected));
}

Date day_typed(const std::string& name, const std::string& text) {
    if (const auto day = Date::parse(text)) return *day;
    refuse_typed(name, text, {.kind = Wanted::Kind::day, .such = "2026-11-24"});
}

} // namespace quoin
