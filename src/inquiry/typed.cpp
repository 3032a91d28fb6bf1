// Reading figures that a person typed.
#include <quoin/inquiry/typed.hpp>

#include <fmt/format.h>

#include <quoin/text/problems.hpp>

namespace quoin {

void refuse(Problem problem) {
    Findings findings;
    findings.add(std::move(problem));
    throw Refused(std::move(findings));
}

void refuse_typed(const std::string& name, const std::string& text, const std::string& expected) {
    refuse(problems::payment_input(name, text, expected));
}

Money amount_typed(const std::string& name, const std::string& text, Money least, Money most,
                   const std::string& expected) {
    const auto amount = Money::parse(text);
    if (amount && *amount >= least && *amount <= most) return *amount;
    refuse_typed(name, text, expected);
}

Decimal number_typed(const std::string& name, const std::string& text, Decimal least, Decimal most,
                     const std::string& expected) {
    const auto number = Decimal::parse(text);
    if (number && *number >= least && *number <= most) return *number;
    refuse_typed(name, text, expected);
}

int whole_typed(const std::string& name, const std::string& text, int least, int most,
                const std::string& unit) {
    const std::string expected = fmt::format("a whole number{}{} from {} to {}",
                                             unit.empty() ? "" : " of ", unit, least, most);
    const Decimal number =
        number_typed(name, text, Decimal::whole(least), Decimal::whole(most), expected);
    if (number.is_whole()) return static_cast<int>(number.rounded(Rounding::down));
    refuse_typed(name, text, expected);
}

Rate rate_typed(const std::string& name, const std::string& text, const std::string& expected) {
    const auto percent = Decimal::parse(text);
    const auto rate = percent ? Rate::percent(*percent) : std::nullopt;
    if (rate) return *rate;
    refuse_typed(name, text, expected);
}

Date day_typed(const std::string& name, const std::string& text) {
    if (const auto day = Date::parse(text)) return *day;
    refuse_typed(name, text, "a day, year first, such as 2026-11-24");
}

} // namespace quoin
