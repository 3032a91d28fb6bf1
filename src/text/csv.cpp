// CSV text (RFC 4180) to values with places, one object a row.
#include "utf8.hpp"
#include <quoin/text/problems.hpp>
#include <quoin/text/value.hpp>

#include <algorithm>
#include <optional>
#include <set>

namespace quoin {
namespace {

struct Cell {
    std::string text;
    Span place;
};

/// Walks a CSV text row by row.
class RowReader {
  public:
    RowReader(const Source& source, Findings& findings) : source_(source), findings_(findings) {
        if (source.text().substr(0, 3) == "\xEF\xBB\xBF") at_ = 3;
    }

    /// The next row that is not blank; nothing at the end of the text or after a broken quote.
    std::optional<std::vector<Cell>> next();

  private:
    Cell cell();
    Cell quoted();
    Span place(std::size_t begin) const {
        return {&source_, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(at_)};
    }

    const Source& source_;
    Findings& findings_;
    std::size_t at_ = 0;
    bool broken_ = false;
};

Cell RowReader::quoted() {
    const std::string_view text = source_.text();
    const std::size_t begin = at_++;
    std::string content;
    while (at_ < text.size()) {
        if (text[at_] == '"' && at_ + 1 < text.size() && text[at_ + 1] == '"') {
            content += '"';
            at_ += 2;
        } else if (text[at_] == '"') {
            ++at_;
            return {std::move(content), place(begin)};
        } else {
            content += text[at_++];
        }
    }
    at_ = begin + 1;
    findings_.add(problems::csv_quote(place(begin)));
    broken_ = true;
    return {};
}

Cell RowReader::cell() {
    const std::string_view text = source_.text();
    if (at_ < text.size() && text[at_] == '"') return quoted();
    const std::size_t begin = at_;
    at_ = std::min(text.find_first_of(",\r\n", at_), text.size());
    return {std::string(text.substr(begin, at_ - begin)), place(begin)};
}

std::optional<std::vector<Cell>> RowReader::next() {
    const std::string_view text = source_.text();
    at_ = std::min(text.find_first_not_of("\r\n", at_), text.size());
    if (broken_ || at_ == text.size()) return std::nullopt;
    std::vector<Cell> row{cell()};
    while (!broken_ && at_ < text.size() && text[at_] == ',') {
        ++at_;
        row.push_back(cell());
    }
    if (!broken_ && at_ < text.size() && text[at_] != '\r' && text[at_] != '\n') {
        findings_.add(problems::csv_quote(
            {&source_, static_cast<std::uint32_t>(at_), static_cast<std::uint32_t>(at_ + 1)}));
        broken_ = true;
    }
    if (broken_) return std::nullopt;
    return row;
}

Value text_value(const Cell& cell) {
    Value value;
    value.kind = Value::Kind::text;
    value.place = cell.place;
    value.literal = cell.text;
    return value;
}

Value row_object(const std::vector<Cell>& header, const std::vector<Cell>& row) {
    Value object;
    object.kind = Value::Kind::object;
    object.place = {row.front().place.source, row.front().place.begin, row.back().place.end};
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (row[i].text.empty()) continue;
        object.keys.push_back({header[i].text, header[i].place});
        object.items.push_back(text_value(row[i]));
    }
    return object;
}

bool names_are_distinct(const std::vector<Cell>& header, Findings& findings) {
    std::set<std::string_view> known;
    for (const Cell& cell : header) {
        if (known.insert(cell.text).second) continue;
        findings.add(problems::csv_column_repeated(cell.place, cell.text));
        return false;
    }
    return true;
}

/// Whether a list has a sensible number of columns, each under its own name.
bool is_sound(const std::vector<Cell>& header, Findings& findings) {
    if (header.size() > caps::columns) {
        findings.add(
            problems::too_many_columns(header[caps::columns].place, header.size(), caps::columns));
        return false;
    }
    return names_are_distinct(header, findings);
}

} // namespace

Document parse_csv(std::shared_ptr<const Source> source, Findings& findings) {
    Document document{source, {}};
    const std::size_t bad = first_bad_byte(source->text());
    if (bad < source->text().size()) {
        findings.add(problems::not_utf8(
            {source.get(), static_cast<std::uint32_t>(bad), static_cast<std::uint32_t>(bad + 1)}));
        return document;
    }
    RowReader rows(*source, findings);
    const auto header = rows.next();
    if (!header || !is_sound(*header, findings)) return document;
    document.root.kind = Value::Kind::list;
    document.root.place = {source.get(), 0, static_cast<std::uint32_t>(source->text().size())};
    while (const auto row = rows.next()) {
        if (document.root.items.size() == caps::list) {
            findings.add(problems::too_many_rows(row->front().place, caps::list));
            return document;
        }
        if (row->size() != header->size()) {
            const Span place{source.get(), row->front().place.begin, row->back().place.end};
            findings.add(problems::csv_cells(place, row->size(), header->size()));
        } else {
            document.root.items.push_back(row_object(*header, *row));
        }
    }
    return document;
}

} // namespace quoin
