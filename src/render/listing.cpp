// Rendering lists out of a price book: one table of cells, written three ways.
#include <quoin/render/listing.hpp>

#include <fmt/format.h>

#include <quoin/home/priced_home.hpp>
#include <quoin/render/table.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

/// Rows of plain cells under named columns.
struct Rows {
    std::vector<std::string> columns;
    std::vector<bool> right; ///< figures, set to the right
    std::vector<std::vector<std::string>> rows;
};

/// How cells are written: amounts plain for other programs, with signs and commas for people;
/// codes in JSON, words for people and in their spreadsheets.
struct Manner {
    bool plain_amounts;
    bool codes;

    [[nodiscard]] std::string operator()(Money amount) const {
        return plain_amounts ? amount.text() : dollars(amount);
    }
    template <CodedEnum Enum>
    [[nodiscard]] std::string operator()(Enum meaning) const {
        return std::string(codes ? code_of(meaning) : name_of(meaning));
    }
};
constexpr Manner for_people{false, false};
constexpr Manner for_spreadsheets{true, false};
constexpr Manner for_programs{true, true};

Rows plan_rows(const PriceBook& book, const Manner& written) {
    Rows list{{"plan", "name", "style", "sq_ft", "bedrooms", "bathrooms", "base_price", "elevation",
               "elevation_price"},
              {false, false, false, true, true, true, true, false, true},
              {}};
    for (const Plan& plan : book.plans) {
        for (const Elevation& elevation : plan.elevations) {
            list.rows.push_back({plan.id, plan.name, plan.style, plan.square_feet.text(),
                                 plan.bedrooms.text(), plan.bathrooms.text(),
                                 written(plan.base_price), elevation.id, written(elevation.price)});
        }
    }
    return list;
}

std::string plans_of(const PriceBook& book, const Lot& lot) {
    if (lot.plans.empty()) return "all";
    std::string text;
    for (const Index<Plan> plan : lot.plans) {
        text += (text.empty() ? "" : " ") + at(book.plans, plan).id;
    }
    return text;
}

Rows lot_rows(const PriceBook& book, const Manner& written) {
    Rows list{{"lot", "status", "premium", "grade", "plans", "flood_zone", "note"},
              {false, false, true, false, false, false, false},
              {}};
    for (const Lot& lot : book.lots) {
        list.rows.push_back({lot.id, written(lot.status), written(lot.premium), written(lot.grade),
                             plans_of(book, lot), lot.flood_zone ? "yes" : "no", lot.note});
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
    return *low == *high ? written(*low) : written(*low) + " to " + written(*high);
}

std::string kind_words(OptionKind kind) {
    switch (kind) {
    case OptionKind::upgrade:
        return "upgrade";
    case OptionKind::levels:
        return "level";
    case OptionKind::choice:
        return "choice at no cost";
    case OptionKind::allowance:
        return "allowance";
    case OptionKind::package:
        return "package";
    }
    return {};
}

Rows option_rows(const PriceBook& book, const Manner& written) {
    Rows list{{"option", "area", "kind", "name", "price", "unit", "cutoff"},
              {false, false, false, false, true, false, false},
              {}};
    const auto add = [&](const Option& option, const std::string& id, const std::string& name,
                         const std::string& price) {
        const std::string cutoff = option.cutoff ? at(book.stages, *option.cutoff).id : "";
        list.rows.push_back({id, at(book.areas, option.area).id,
                             written.codes ? written(option.kind) : kind_words(option.kind), name,
                             price, written(option.unit), cutoff});
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

std::string listing_text(const PriceBook& book, Listing what) {
    const Rows list = rows_of(book, what, for_people);
    std::vector<Column> columns;
    for (std::size_t i = 0; i < list.columns.size(); ++i) {
        std::string heading = list.columns[i];
        std::replace(heading.begin(), heading.end(), '_', ' ');
        columns.push_back({heading, list.right[i] ? Align::right : Align::left});
    }
    Table table(std::move(columns));
    for (const auto& row : list.rows) table.row(row);
    return fmt::format("{}, {}: price book {}, in force {} to {}\n\n{}", book.community.name,
                       book.community.builder, book.version, book.effective.text(),
                       book.expires.text(), table.text());
}

std::string listing_csv(const PriceBook& book, Listing what) {
    const Rows list = rows_of(book, what, for_spreadsheets);
    std::string out;
    const auto write = [&](const std::vector<std::string>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i)
            out += (i > 0 ? "," : "") + csv_cell(list.right[i] ? cells[i] : csv_words(cells[i]));
        out += "\r\n";
    };
    write(list.columns);
    for (const auto& row : list.rows) write(row);
    return out;
}

std::string listing_json(const PriceBook& book, Listing what) {
    const Rows list = rows_of(book, what, for_programs);
    JsonWriter json;
    json.list([&] {
        for (const auto& row : list.rows) {
            json.object([&] {
                for (std::size_t i = 0; i < row.size(); ++i) json.text(list.columns[i], row[i]);
            });
        }
    });
    return json.take() + "\n";
}

} // namespace quoin
