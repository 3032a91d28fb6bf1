// Days on which a published rule is in force: reading them, and telling where two of them overlap.
#pragma once

#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// `effective` and `until`, each of which may be missing.
template <class Dated>
void read_days(Reader& item, Dated& rule) {
    rule.effective = item.maybe_date("effective");
    rule.until = item.maybe_date("until");
    if (rule.effective && rule.until && *rule.until <= *rule.effective) {
        item.findings().add(problems::dates_reversed(item.spot("until"), "effective", "until"));
    }
}

template <class Dated>
bool overlap(const Dated& a, const Dated& b) {
    const bool a_ends_first = a.until && b.effective && *a.until <= *b.effective;
    const bool b_ends_first = b.until && a.effective && *b.until <= *a.effective;
    return !a_ends_first && !b_ends_first;
}

/// The list `key` of dated rules, no two of which may be in force on the same day.
template <class Read>
auto read_dated(Reader& reader, std::string_view key, Read read) {
    std::vector<decltype(read(reader))> rules;
    reader.each(key, [&](Reader& item) {
        auto rule = read(item);
        const bool clash = std::any_of(rules.begin(), rules.end(),
                                       [&](const auto& other) { return overlap(rule, other); });
        if (clash) item.findings().add(problems::dates_overlap(item.here(), key));
        rules.push_back(std::move(rule));
    });
    return rules;
}

} // namespace quoin
