// The parts of reading an inquiry: the home that is asked about, and the ways to pay for it.
#pragma once

#include <vector>

#include <quoin/answers/inquiry.hpp>

namespace quoin {

/// Plan, elevation, lot, stage, selections, wishes, requests, incentives; then the rules on them.
void read_home(Reader& root, const PriceBook& book, Inquiry& inquiry);

void read_scenarios(Reader& root, const Lending& lending, Inquiry& inquiry);

} // namespace quoin
