// The bar and the head of a file that is taken home, as they stand there before any script runs.
#pragma once

#include <quoin/answers/quote.hpp>
#include <quoin/words/catalogue.hpp>

#include "home_document.hpp"

namespace quoin::apps {

/// Title, community, price, month, cash and terms under one loan, by the places of the document.
[[nodiscard]] Placed bar_values(const Heading& heading, const ScenarioAnswer& loan,
                                const HomeDocument& document, const Catalogue& say);

} // namespace quoin::apps
