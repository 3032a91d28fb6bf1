// The words of a quote's lines, requests, choices and incentives, shared by text and HTML.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/quote.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// "Deck: cedar *"
[[nodiscard]] std::string line_name(const QuoteLine& line,
                                    const Catalogue& say = catalogue_in(Language::english));
/// "6 x $85.00", or empty
[[nodiscard]] std::string times_text(const QuoteLine& line,
                                     const Catalogue& say = catalogue_in(Language::english));
/// "$510.00", "no cost", ...
[[nodiscard]] std::string amount_text(const QuoteLine& line,
                                      const Catalogue& say = catalogue_in(Language::english));

[[nodiscard]] std::string request_text(const QuoteRequest& request,
                                       const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string choice_text(const OpenChoice& choice,
                                      const Catalogue& say = catalogue_in(Language::english));
/// Credits, the conditions of what is used, and the lenders it is tied to.
[[nodiscard]] std::vector<std::string>
incentive_texts(const QuoteAnswer& answer, const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
