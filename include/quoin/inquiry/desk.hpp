// Desk: the loaded price book and lending data, immutable, shared by every caller and thread.
#pragma once

#include <quoin/inquiry/lending.hpp>
#include <quoin/pricebook/price_book.hpp>

namespace quoin {

struct Desk {
    PriceBook book;
    Lending lending;
};

/// The kinds of files that people write.
enum class FileKind { unknown, price_book, inquiry, program, rate_sheet, place, apr_problem };
[[nodiscard]] FileKind kind_of(const Document& document);

} // namespace quoin
