// The words of a quote's lines, requests, choices and incentives, shared by text and HTML.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/quote.hpp>

namespace quoin {

[[nodiscard]] std::string line_name(const QuoteLine& line);   ///< "Deck: cedar *"
[[nodiscard]] std::string times_text(const QuoteLine& line);  ///< "6 x $85.00", or empty
[[nodiscard]] std::string amount_text(const QuoteLine& line); ///< "$510.00", "no cost", ...

[[nodiscard]] std::string request_text(const QuoteRequest& request);
[[nodiscard]] std::string choice_text(const OpenChoice& choice);
/// Credits, the conditions of what is used, and the lenders it is tied to.
[[nodiscard]] std::vector<std::string> incentive_texts(const QuoteAnswer& answer);

[[nodiscard]] std::vector<std::string> cautions_of(const QuoteAnswer& answer);

} // namespace quoin
