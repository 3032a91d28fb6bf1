// The parts of reading an inquiry: the home that is asked about, and the ways to pay for it.
#pragma once

#include <string_view>

#include <quoin/inquiry/inquiry.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// Plan, elevation, lot, stage, selections, wishes, requests, incentives; then the rules on them.
void read_home(Reader& root, const Desk& desk, Inquiry& inquiry);

/// An amount that cannot be below zero is said to be so where it is.
void not_negative(Reader& item, std::string_view key, Money amount);

void read_scenarios(Reader& root, const Lending& lending, Inquiry& inquiry);

} // namespace quoin
