// Making a program stand alone.
#include "program_in_play.hpp"

#include <quoin/lending/program.hpp>

#include "edited.hpp"

namespace quoin::apps {
namespace {

/// A list of another's, where the own one is missing or empty.
void take_over(Value& own, const Value& other, std::string_view list) {
    const Value* there = own.find(list);
    const Value* rules = other.find(list);
    if (rules == nullptr || (there != nullptr && !there->items.empty())) return;
    set(own, list, Value(*rules));
}

} // namespace

Value program_in_play(Value program, const Value* rules_of, const std::set<int>& terms_months) {
    if (rules_of != nullptr) {
        for (std::size_t rule = 0; rule < rule_count; ++rule) {
            take_over(*member(program, "rules"), *rules_of->find("rules"),
                      name_of(static_cast<Rule>(rule)));
        }
        take_over(program, *rules_of, "ratios");
        take_out(program, "rules_of");
    }
    keep_items(program, "terms_months", [&](const Value& months) {
        return std::any_of(terms_months.begin(), terms_months.end(), [&](int one) {
            return Decimal::parse(months.literal) == Decimal::whole(one);
        });
    });
    return program;
}

} // namespace quoin::apps
