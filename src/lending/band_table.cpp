// Reading band tables, and proving that each case has one row.
#include <quoin/lending/band_table.hpp>

#include <algorithm>

#include "band.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/lending/told_points.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {
namespace {

const Words<bool> dated_words = {{false, "as of"}, {true, "closing"}};

/// The last dimension of a grid: one band for each value of a row.
struct Across {
    std::size_t dimension = 0; ///< position among the table's dimensions
    std::vector<Band> bands;
    std::vector<std::string> written;
};

std::optional<Band> read_band(Dimension dimension, const Spot& spot, Findings& findings) {
    const auto text = as_text(spot, findings);
    if (!text) return std::nullopt;
    const auto band = parse_band(dimension, *text);
    if (!band) findings.add(problems::not_a_band(spot));
    return band;
}

std::optional<Across> read_across(Reader& reader, const BandTable& table) {
    std::optional<Across> across;
    reader.object("across", [&](Reader& item) {
        const auto dimension = meaning_in(codes<Dimension>, item.text("dimension"));
        const auto& all = table.dimensions;
        const auto at = dimension ? std::find(all.begin(), all.end(), *dimension) : all.end();
        if (at == all.end()) {
            item.report(problems::dimension_unknown(item.spot("dimension")));
            return;
        }
        across.emplace();
        across->dimension = static_cast<std::size_t>(at - all.begin());
        item.items("bands", [&](const Spot& spot) {
            const auto band = read_band(*dimension, spot, item.findings());
            across->bands.push_back(band.value_or(Band{}));
            across->written.push_back(spot.value->literal);
        });
    });
    return across;
}

std::optional<Decimal> read_value(const Spot& spot, const BandTable& table, Findings& findings) {
    if (table.unit == "months" && spot.value->literal == "term") return whole_term;
    return as_decimal(spot, findings);
}

std::string row_words(const BandTable& table, const std::vector<std::string>& texts) {
    std::string words;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        if (texts[i].empty() || texts[i] == "any") continue;
        words += (words.empty() ? "" : "; ") + std::string(name_of(table.dimensions[i])) + " " +
                 texts[i];
    }
    return words.empty() ? "any" : words;
}

struct Row {
    std::vector<Band> bands;
    std::vector<std::string> written;
};

Row read_row_bands(Reader& item, const BandTable& table, const std::optional<Across>& across) {
    Row row;
    row.bands.resize(table.dimensions.size());
    row.written.resize(table.dimensions.size());
    for (std::size_t i = 0; i < table.dimensions.size(); ++i) {
        const std::string_view name = name_of(table.dimensions[i]);
        if ((across && across->dimension == i) || !item.has(name)) continue;
        const auto band = read_band(table.dimensions[i], item.spot(name), item.findings());
        row.bands[i] = band.value_or(Band{});
        row.written[i] = item.spot(name).value->literal;
    }
    return row;
}

void add_row(BandTable& table, const Row& row, Decimal value) {
    table.bands.insert(table.bands.end(), row.bands.begin(), row.bands.end());
    table.written.push_back(row_words(table, row.written));
    table.values.push_back(value);
}

/// A grid's row: one value for each band across.
void add_grid_row(Reader& item, BandTable& table, Row row, const Across& across,
                  std::vector<Mark>& marks) {
    std::size_t column = 0;
    item.items("values", [&](const Spot& spot) {
        const auto value = read_value(spot, table, item.findings());
        if (column < across.bands.size()) {
            row.bands[across.dimension] = across.bands[column];
            row.written[across.dimension] = across.written[column];
            add_row(table, row, value.value_or(Decimal{}));
            marks.emplace_back(spot);
        }
        ++column;
    });
    if (column != across.bands.size()) {
        item.report(problems::not_one_value_a_band(item.spot("values"), across.bands.size()));
    }
}

std::vector<Mark> read_rows(Reader& reader, BandTable& table, const std::optional<Across>& across) {
    std::vector<Mark> marks;
    reader.each(
        "rows",
        [&](Reader& item) {
            Row row = read_row_bands(item, table, across);
            if (across) {
                add_grid_row(item, table, std::move(row), *across, marks);
                return;
            }
            const bool has_value = item.has("value");
            if (!has_value) item.report(problems::member_missing(item.here(), "value"));
            const auto value =
                has_value ? read_value(item.spot("value"), table, item.findings()) : std::nullopt;
            add_row(table, row, value.value_or(Decimal{}));
            marks.emplace_back(item.here());
        },
        true);
    return marks;
}

bool overlap(const BandTable& table, std::size_t a, std::size_t b) {
    const std::size_t width = table.dimensions.size();
    for (std::size_t i = 0; i < width; ++i) {
        const Band& one = table.bands[a * width + i];
        const Band& other = table.bands[b * width + i];
        if (one.highest < other.lowest || other.highest < one.lowest) return false;
    }
    return true;
}

/// `across` is the number of values in a row of the file.
void check_overlaps(const BandTable& table, const std::vector<Mark>& marks, std::size_t across,
                    Findings& findings) {
    for (std::size_t b = 1; b < marks.size(); ++b) {
        for (std::size_t a = 0; a < b; ++a) {
            if (!overlap(table, a, b)) continue;
            findings.add(
                problems::bands_overlap(marks[b].spot(), table.written[b], a / across + 1));
            break;
        }
    }
}

/// Where every band of a dimension begins or has just ended, inside what is covered: between two
/// such points nothing changes, so a table without a gap at them has none.
std::vector<std::int64_t> corners(const BandTable& table, std::size_t dimension, Band covered) {
    const std::int64_t step = step_of(table.dimensions[dimension]);
    std::vector<std::int64_t> points{covered.lowest};
    const std::size_t width = table.dimensions.size();
    for (std::size_t row = 0; row < table.values.size(); ++row) {
        const Band& band = table.bands[row * width + dimension];
        points.push_back(band.lowest);
        if (band.highest < covered.highest) points.push_back(band.highest + step);
    }
    std::sort(points.begin(), points.end());
    points.erase(std::unique(points.begin(), points.end()), points.end());
    std::erase_if(points, [&](std::int64_t point) { return !covered.holds(point); });
    return points;
}

std::string point_words(const BandTable& table, const Case& where) {
    std::string words;
    for (const Dimension dimension : table.dimensions) {
        const std::int64_t at = where.at(static_cast<std::size_t>(dimension));
        if (at == Case::unset) continue;
        words += (words.empty() ? "" : ", ") + std::string(name_of(dimension)) + " " +
                 value_words(dimension, at);
    }
    return words;
}

/// Tries every combination of corners of the covered dimensions.
bool find_gap(const BandTable& table, const std::vector<std::optional<Band>>& covers,
              std::size_t dimension, Case& where) {
    if (dimension == table.dimensions.size()) return !table.row(where).has_value();
    const Band whole = whole_of(table.dimensions[dimension]);
    Band covered = covers[dimension].value_or(whole);
    covered.lowest = std::max(covered.lowest, whole.lowest);
    covered.highest = std::min(covered.highest, whole.highest);
    for (const std::int64_t point : corners(table, dimension, covered)) {
        where.set(table.dimensions[dimension], Decimal::billionths(point));
        if (find_gap(table, covers, dimension + 1, where)) return true;
    }
    return false;
}

std::vector<std::optional<Band>> read_covers(Reader& reader, const BandTable& table) {
    std::vector<std::optional<Band>> covers(table.dimensions.size());
    reader.object("covers", [&](Reader& item) {
        for (std::size_t i = 0; i < table.dimensions.size(); ++i) {
            const std::string_view name = name_of(table.dimensions[i]);
            if (!item.has(name)) continue;
            covers[i] = read_band(table.dimensions[i], item.spot(name), item.findings());
        }
    });
    return covers;
}

void check_gaps(Reader& reader, const BandTable& table,
                const std::vector<std::optional<Band>>& covers) {
    const bool any = std::any_of(covers.begin(), covers.end(),
                                 [](const std::optional<Band>& band) { return band.has_value(); });
    Case where;
    if (any && find_gap(table, covers, 0, where)) {
        reader.report(problems::bands_gap(reader.spot("rows"), point_words(table, where)));
    }
}

} // namespace

std::optional<int> BandTable::row(const Case& where) const {
    const std::size_t width = dimensions.size();
    std::array<std::int64_t, dimension_count> at{};
    for (std::size_t i = 0; i < width; ++i) {
        at[i] = where.at(static_cast<std::size_t>(dimensions[i]));
    }
    for (std::size_t row = 0; row < values.size(); ++row) {
        const Band* band = bands.data() + row * width;
        std::size_t i = 0;
        while (i < width && band[i].holds(at[i])) ++i;
        if (i == width) return static_cast<int>(row);
    }
    return std::nullopt;
}

BandTable read_band_table(Reader& reader) {
    BandTable table;
    table.name = reader.name_or("name", "");
    read_dated(reader, table);
    table.unit =
        reader.word("value", Words<std::string>{{"percent", "percent"},
                                                {"points", "points"},
                                                {std::string(points_or_no_rate), points_or_no_rate},
                                                {"money", "money"},
                                                {"months", "months"},
                                                {"per thousand", "per thousand"},
                                                {"percent of base", "percent of base"}});
    table.by_closing = reader.word_or("dated_by", dated_words, false);
    const std::size_t mistakes = reader.findings().problems().size();
    table.dimensions = reader.words<Dimension>("dimensions");
    const auto across = read_across(reader, table);
    const auto marks = read_rows(reader, table, across);
    const auto covers = read_covers(reader, table);
    // A band that could not be read would seem to overlap others, or to leave a gap.
    if (reader.findings().full() || reader.findings().problems().size() > mistakes) return table;
    check_overlaps(table, marks, across ? across->bands.size() : 1, reader.findings());
    if (reader.findings().problems().size() == mistakes) check_gaps(reader, table, covers);
    return table;
}

} // namespace quoin
