// What the parts of the price-book reader share.
#pragma once

#include <vector>

#include <quoin/pricebook/price_book.hpp>
#include <quoin/text/names.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {

/// A price for all plans, or one for each: "4200" or {"sorrel": "4200", "*": "4800"}.
PriceByPlan price_by_plan(Reader& reader, std::string_view key, const PriceBook& book);

std::vector<Measure> measures(Reader& reader, std::string_view key);

/// The name of a file in the price book's folder or below it; empty where there is none.
std::string file_below(Reader& reader, std::string_view key);
/// A color that letters on white paper may have; empty where there is none.
std::string color_for_letters(Reader& item, std::string_view key);

/// "picture" and "color" of something that can be chosen.
Look read_look(Reader& item);

[[nodiscard]] Only read_only(Reader& option, const PriceBook& book);
void read_lots(Reader& root, const Document* list, PriceBook& book);
void read_options(Reader& root, PriceBook& book);
void read_offers(Reader& root, PriceBook& book); ///< incentives and deposits
void read_model(Reader& root, PriceBook& book);

} // namespace quoin
