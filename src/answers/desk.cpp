// Reading lending data, whichever files it comes in.
#include <quoin/answers/desk.hpp>

#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

/// Adds an item unless an earlier one has its id.
template <class Item>
void add(std::vector<Item>& items, Item item, const Document& document, std::string_view what,
         Findings& findings) {
    if (!item.id.empty() && index_of(items, item.id) >= 0) {
        const Value* id = document.root.find("id");
        findings.add(problems::id_repeated({id, Path{nullptr, "id"}}, what));
        return;
    }
    items.push_back(std::move(item));
}

} // namespace

const RateSheet* Lending::newest_sheet(Date day) const {
    const RateSheet* newest = nullptr;
    for (const RateSheet& sheet : sheets) {
        if (sheet.date <= day && (newest == nullptr || newest->date < sheet.date)) newest = &sheet;
    }
    return newest;
}

FileKind kind_of(const Document& document) {
    const Value* format = document.root.find("format");
    if (format == nullptr) return FileKind::unknown;
    const Words<FileKind> kinds = {
        {"quoin/pricebook/1", FileKind::price_book}, {"quoin/inquiry/1", FileKind::inquiry},
        {"quoin/program/1", FileKind::program},      {"quoin/rates/1", FileKind::rate_sheet},
        {"quoin/place/1", FileKind::place},          {"quoin/apr/1", FileKind::apr_problem}};
    for (const auto& [name, kind] : kinds) {
        if (format->literal == name) return kind;
    }
    return FileKind::unknown;
}

Lending read_lending(const std::vector<Document>& documents, Findings& findings) {
    Lending lending;
    for (const Document& document : documents) {
        switch (kind_of(document)) {
        case FileKind::program:
            add(lending.programs, read_program(document, findings), document, "program", findings);
            break;
        case FileKind::rate_sheet:
            add(lending.sheets, read_rate_sheet(document, findings), document, "rate sheet",
                findings);
            break;
        case FileKind::place:
            add(lending.places, read_place(document, findings), document, "place", findings);
            break;
        default:
            if (document.root.kind == Value::Kind::null) break; // its own problem is reported
            findings.add(problems::format_unknown(
                {&document.root, Path{}},
                "one of \"quoin/program/1\", \"quoin/rates/1\", \"quoin/place/1\""));
        }
    }
    return lending;
}

} // namespace quoin
