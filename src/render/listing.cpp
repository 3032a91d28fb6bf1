// Rendering lists out of a price book: one table of cells, written three ways.
#include <quoin/render/listing.hpp>

#include <algorithm>
#include <span>

#include "words/listing.hpp"
#include "words/parts.hpp"
#include <quoin/home/priced_home.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

struct ListColumn {
    std::string_view code; ///< in JSON and CSV
    Phrase<> ListingWords::*words;
    bool right = false; ///< figures, set to the right
};

/// Rows of plain cells under named columns.
struct Rows {
    std::span<const ListColumn> columns;
    std::vector<std::vector<std::string>> rows;
};

/// How cells are written: amounts plain for other programs, with signs and commas for people;
/// codes in JSON, words for people and in their spreadsheets.
struct Manner {
    bool plain_amounts;
    const Catalogue* say; ///< nullptr: codes

    [[nodiscard]] std::string operator()(Money amount) const {
        return plain_amounts ? amount.text() : dollars(amount);
    }
    [[nodiscard]] std::string operator()(Decimal number) const {
        return plain_amounts ? number.text() : grouped(number);
    }
    [[nodiscard]] std::string operator()(LotStatus status) const {
        return say ? say->parts.lot_status(status) : std::string(code_of(status));
    }
    [[nodiscard]] std::string operator()(Grade grade) const {
        return say ? say->parts.grade(grade) : std::string(code_of(grade));
    }
    [[nodiscard]] std::string operator()(OptionKind kind) const {
        return say ? say->listing.kind_of(kind) : std::string(code_of(kind));
    }
    [[nodiscard]] std::string operator()(Unit unit) const {
        return say ? say->parts.unit(unit) : std::string(code_of(unit));
    }
    [[nodiscard]] std::string every_plan() const { return say ? say->listing.every_plan() : "all"; }
    [[nodiscard]] std::string whether(bool holds) const {
        if (!say) return holds ? "yes" : "no";
        return holds ? say->listing.yes() : say->listing.no();
    }
    [[nodiscard]] std::string range(Money low, Money high) const {
        const std::string from = (*this)(low);
        const std::string to = (*this)(high);
        return say ? say->listing.price_range(from, to) : from + " to " + to;
    }
};
constexpr Manner for_programs{true, nullptr};

constexpr ListColumn plan_columns[] = {{"plan", &ListingWords::plan},
                                       {"name", &ListingWords::name},
                                       {"style", &ListingWords::style},
                                       {"sq_ft", &ListingWords::square_feet, true},
                                       {"bedrooms", &ListingWords::bedrooms, true},
                                       {"bathrooms", &ListingWords::bathrooms, true},
                                       {"base_price", &ListingWords::base_price, true},
                                       {"elevation", &ListingWords::elevation},
                                       {"elevation_price", &ListingWords::elevation_price, true}};

Rows plan_rows(const PriceBook& book, const Manner& written) {
    Rows list{plan_columns, {}};
    for (const Plan& plan : book.plans) {
        for (const Elevation& elevation : plan.elevations) {
            list.rows.push_back({plan.id, plan.name, plan.style, written(plan.square_feet),
                                 plan.bedrooms.text(), plan.bathrooms.text(),
                                 written(plan.base_price), elevation.id, written(elevation.price)});
        }
    }
    return list;
}

std::string plans_of(const PriceBook& book, const Lot& lot, const Manner& written) {
    if (lot.plans.empty()) return written.every_plan();
    std::string text;
    for (const Index<Plan> plan : lot.plans) {
        text += (text.empty() ? "" : " ") + at(book.plans, plan).id;
    }
    return text;
}

constexpr ListColumn lot_columns[] = {{"lot", &ListingWords::lot},
                                      {"status", &ListingWords::status},
                                      {"premium", &ListingWords::premium, true},
                                      {"grade", &ListingWords::grade},
                                      {"plans", &ListingWords::plans},
                                      {"flood_zone", &ListingWords::flood_zone},
                                      {"note", &ListingWords::note}};

Rows lot_rows(const PriceBook& book, const Manner& written) {
    Rows list{lot_columns, {}};
    for (const Lot& lot : book.lots) {
        list.rows.push_back({lot.id, written(lot.status), written(lot.premium), written(lot.grade),
                             plans_of(book, lot, written), written.whether(lot.flood_zone),
                             lot.note});
    }
    return list;
}

/// The lowest and highest charge over the plans that are offered it.
std::string price_range(const PriceBook& book, const Option& option,
                        std::optional<Index<Level>> level, const Manner& written) {
    std::optional<Money> low;
    std::optional<Money> high;
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        const auto price = unit_price(option, level, plan);
        if (!price) continue;
        low = std::min(low.value_or(*price), *price);
        high = std::max(high.value_or(*price), *price);
    }
    if (!low) return "";
    return *low == *high ? written(*low) : written.range(*low, *high);
}

constexpr ListColumn option_columns[] = {
    {"option", &ListingWords::option},     {"area", &ListingWords::area},
    {"kind", &ListingWords::kind},         {"name", &ListingWords::name},
    {"price", &ListingWords::price, true}, {"unit", &ListingWords::unit},
    {"cutoff", &ListingWords::cutoff}};

Rows option_rows(const PriceBook& book, const Manner& written) {
    Rows list{option_columns, {}};
    const auto add = [&](const Option& option, const std::string& id, const std::string& name,
                         const std::string& price) {
        const std::string cutoff = option.cutoff ? at(book.stages, *option.cutoff).id : "";
        list.rows.push_back({id, at(book.areas, option.area).id, written(option.kind), name, price,
                             written(option.unit), cutoff});
    };
    for (const Option& option : book.options) {
        for (const Index<Level> index : indexes_of(option.levels)) {
            const Level& level = at(option.levels, index);
            add(option, option.id + ":" + level.id, option.name + ": " + level.name,
                price_range(book, option, index, written));
        }
        if (option.levels.empty()) {
            add(option, option.id, option.name,
                option.kind == OptionKind::choice
                    ? ""
                    : price_range(book, option, std::nullopt, written));
        }
    }
    return list;
}

Rows rows_of(const PriceBook& book, Listing what, const Manner& written) {
    switch (what) {
    case Listing::plans:
        return plan_rows(book, written);
    case Listing::lots:
        return lot_rows(book, written);
    case Listing::options:
        return option_rows(book, written);
    }
    return {};
}

/// A cell of words is never to be taken for a formula by a spreadsheet: an apostrophe says so, as
/// it does where a person types one. A column of figures stays as it is.
std::string csv_words(const std::string& text) {
    const bool formula = text.find_first_of("=+-@\t\r") == 0;
    return formula ? "'" + text : text;
}

std::string csv_cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string out = "\"";
    for (const char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + "\"";
}

} // namespace

Blocks listing_text(const PriceBook& book, Listing what, const Catalogue& say) {
    const Rows list = rows_of(book, what, {false, &say});
    std::vector<Column> columns;
    for (const ListColumn& column : list.columns) {
        columns.push_back(
            {(say.listing.*column.words)(), column.right ? Align::right : Align::left});
    }
    Table table(std::move(columns));
    for (const auto& row : list.rows) table.row(row);
    return Blocks(say.listing.book(book.community.name, book.community.builder, book.version,
                                   book.effective, book.expires) +
                  "\n\n") +
           table;
}

std::string listing_csv(const PriceBook& book, Listing what, const Catalogue& say) {
    const Rows list = rows_of(book, what, {true, &say});
    std::string out;
    const auto write = [&](const std::vector<std::string>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i)
            out += (i > 0 ? "," : "") +
                   csv_cell(list.columns[i].right ? cells[i] : csv_words(cells[i]));
        out += "\r\n";
    };
    std::vector<std::string> headings;
    for (const ListColumn& column : list.columns) {
        headings.emplace_back(column.code); // the same in every language
    }
    write(headings);
    for (const auto& row : list.rows) write(row);
    return out;
}

std::string listing_json(const PriceBook& book, Listing what) {
    const Rows list = rows_of(book, what, for_programs);
    JsonWriter json;
    json.list([&] {
        for (const auto& row : list.rows) {
            json.object([&] {
                for (std::size_t i = 0; i < row.size(); ++i) {
                    json.text(list.columns[i].code, row[i]);
                }
            });
        }
    });
    return json.take() + "\n";
}

} // namespace quoin
