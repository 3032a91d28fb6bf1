// The words of the cash that a loan takes.
#include "cash_words.hpp"

#include "words/cash.hpp"
#include "words/parts.hpp"
#include "words/side_by_side.hpp"
#include <quoin/words/figures.hpp>

namespace quoin {

std::string prepaid_words(const PrepaidLine& line, const Catalogue& say) {
    switch (line.what) {
    case Prepaid::interest:
        return say.cash.prepaid_interest(line.count, line.per_day);
    case Prepaid::insurance:
        return say.cash.prepaid_insurance(line.count);
    case Prepaid::property_tax:
        return say.cash.tax_bill();
    }
    return {};
}

SaidDay said_day(const CalendarDay& day, const Catalogue& say) {
    if (day.amount < Money{}) return {say.side.back(), dollars(-day.amount)};
    return {say.parts.due(day.what), dollars(day.amount)};
}

std::string bill_words(MonthPart item, const Catalogue& say) {
    return item == MonthPart::property_tax ? say.cash.tax_bill() : say.parts.month(item);
}

std::string upfront_fee_words(const ScenarioAnswer& scenario, const Catalogue& say) {
    const InsuranceAnswer& insurance = scenario.insurance;
    const bool by_insurance = insurance.paid_up && scenario.upfront_name == insurance.name;
    return by_insurance ? say.cash.single_premium(insurance.name) : scenario.upfront_name;
}

} // namespace quoin
