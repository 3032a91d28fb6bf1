// Desk: the loaded price book and lending data, immutable, shared by every caller and thread.
#pragma once

#include <quoin/inquiry/lending.hpp>
#include <quoin/pricebook/price_book.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

struct Desk {
    PriceBook book;
    Lending lending;
};

/// The kinds of files that people write.
enum class FileKind { unknown, price_book, inquiry, program, rate_sheet, place, apr_problem };
template <>
inline constexpr auto
    codes<FileKind> = coded<FileKind>({{FileKind::unknown, "unknown", "file"},
                                       {FileKind::price_book, "price_book", "price book"},
                                       {FileKind::inquiry, "inquiry"},
                                       {FileKind::program, "program", "loan program"},
                                       {FileKind::rate_sheet, "rate_sheet", "rate sheet"},
                                       {FileKind::place, "place"},
                                       {FileKind::apr_problem, "apr_problem", "APR problem"}});
[[nodiscard]] FileKind kind_of(const Document& document);

} // namespace quoin
