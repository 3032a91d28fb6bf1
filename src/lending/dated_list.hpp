// Reading a list of dated rules.
#pragma once

#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

#include <quoin/lending/dated.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// The list `key` of dated rules, no two of which may be in force on the same day.
auto read_dated_list(Reader& reader, std::string_view key, auto read) {
    std::vector<decltype(read(reader))> rules;
    reader.each(key, [&](Reader& item) {
        auto rule = read(item);
        const bool clash = std::any_of(rules.begin(), rules.end(),
                                       [&](const Dated& other) { return other.meets(rule); });
        if (clash) item.report(problems::dates_overlap(item.here(), key));
        rules.push_back(std::move(rule));
    });
    return rules;
}

} // namespace quoin
