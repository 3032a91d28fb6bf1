// Desk: the loaded price book and lending data, immutable, shared by every caller and thread.
#pragma once

#include <quoin/inquiry/lending.hpp>
#include <quoin/pricebook/drawing.hpp>
#include <quoin/pricebook/price_book.hpp>
#include <quoin/pricebook/site_map.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// What is drawn of a community.
struct Drawings {
    PerItem<Plan, std::optional<PlanDrawing>> plans; ///< empty where none were asked for
    std::optional<SiteMap> map;

    /// Of a plan, or nullptr.
    [[nodiscard]] const PlanDrawing* of(Index<Plan> plan) const {
        return !plans.empty() && plans[plan] ? &*plans[plan] : nullptr;
    }
};

struct Desk {
    PriceBook book;
    Lending lending;
    Drawings drawings;
};

/// The kinds of files that people write.
enum class FileKind {
    unknown,
    price_book,
    inquiry,
    program,
    rate_sheet,
    place,
    apr_problem,
    drawing,
    site_map
};
template <>
inline constexpr auto
    codes<FileKind> = coded<FileKind>({{FileKind::unknown, "unknown", "file"},
                                       {FileKind::price_book, "price_book", "price book"},
                                       {FileKind::inquiry, "inquiry"},
                                       {FileKind::program, "program", "loan program"},
                                       {FileKind::rate_sheet, "rate_sheet", "rate sheet"},
                                       {FileKind::place, "place"},
                                       {FileKind::apr_problem, "apr_problem", "APR problem"},
                                       {FileKind::drawing, "drawing", "plan drawing"},
                                       {FileKind::site_map, "site_map", "site map"}});
[[nodiscard]] FileKind kind_of(const Document& document);

} // namespace quoin
