// Loading files into a desk and an inquiry.
#include "loading.hpp"

#include "files.hpp"
#include <quoin/text/problems.hpp>

namespace quoin::apps {
namespace fs = std::filesystem;

Document read_json(const fs::path& path, std::string_view what, Findings& findings) {
    auto source = read_file(path, what, findings);
    return source != nullptr ? parse_json(std::move(source), findings) : Document{};
}

PriceBook read_book(const Document& document, Findings& findings) {
    const auto list = lots_file(document.root);
    if (!list) return read_price_book(document, nullptr, findings);
    const fs::path path = fs::path(document.source->name()).parent_path() / *list;
    auto source = read_file(path, "a list of lots", findings);
    if (source == nullptr) return read_price_book(document, nullptr, findings);
    const Document lots = parse_csv(std::move(source), findings);
    return read_price_book(document, &lots, findings);
}

Lending load_lending(const std::string& asked, Findings& findings) {
    const fs::path folder = rates_folder(asked);
    std::vector<Document> documents;
    for (const char* kind : {"programs", "sheets", "places"}) {
        for (const fs::path& path : json_files(folder / kind)) {
            documents.push_back(read_json(path, "lending data", findings));
        }
    }
    if (documents.empty()) {
        findings.add(problems::file_missing(folder.string(), "a folder of lending data", {}));
    }
    return read_lending(documents, findings);
}

namespace {

/// Reads an inquiry's price book, the lending data and the inquiry itself; stops where one of them
/// is needed by the next and is not sound.
std::unique_ptr<Loaded> read_all(const Document& document, const std::string& rates,
                                 Findings& findings) {
    auto loaded = std::make_unique<Loaded>();
    const auto named = price_book_of(document);
    if (!named) {
        findings.add(document.root.kind == Value::Kind::object
                         ? problems::member_missing({&document.root, Path{}}, "price_book")
                         : problems::wrong_kind({&document.root, Path{}}, "an object in { }"));
        return loaded;
    }
    const fs::path path = fs::path(document.source->name()).parent_path() / *named;
    const Document book = read_json(path.lexically_normal(), "a price book", findings);
    loaded->desk.lending = load_lending(rates, findings);
    if (book.root.kind != Value::Kind::null) loaded->desk.book = read_book(book, findings);
    if (!findings.none()) return loaded;
    loaded->inquiry = read_inquiry(document, loaded->desk, findings);
    return loaded;
}

void refuse_if_any(Findings findings) {
    if (!findings.none()) throw Refused(std::move(findings));
}

} // namespace

std::unique_ptr<Loaded> load_inquiry(const std::string& file, const std::string& rates) {
    Findings findings;
    const Document document = read_json(file, "an inquiry", findings);
    refuse_if_any(findings);
    auto loaded = read_all(document, rates, findings);
    refuse_if_any(std::move(findings));
    return loaded;
}

PriceBook load_price_book(const std::string& file) {
    Findings findings;
    const Document document = read_json(file, "a price book", findings);
    refuse_if_any(findings);
    PriceBook book = read_book(document, findings);
    refuse_if_any(std::move(findings));
    return book;
}

AprAnswer load_apr(const std::string& file) {
    Findings findings;
    const Document document = read_json(file, "a problem", findings);
    refuse_if_any(findings);
    AprAnswer answer = read_and_solve_apr(document, findings);
    refuse_if_any(std::move(findings));
    return answer;
}

Checked check_file(const std::string& file, const std::string& rates) {
    Checked checked{file, "file", {}};
    const Document document = read_json(file, "a file", checked.findings);
    if (!checked.findings.none()) return checked;
    switch (kind_of(document)) {
    case FileKind::price_book:
        checked.kind = "price book";
        static_cast<void>(read_book(document, checked.findings));
        break;
    case FileKind::inquiry:
        checked.kind = "inquiry";
        static_cast<void>(read_all(document, rates, checked.findings));
        break;
    case FileKind::program:
        checked.kind = "loan program";
        static_cast<void>(read_program(document, checked.findings));
        break;
    case FileKind::rate_sheet:
        checked.kind = "rate sheet";
        static_cast<void>(read_rate_sheet(document, checked.findings));
        break;
    case FileKind::place:
        checked.kind = "place";
        static_cast<void>(read_place(document, checked.findings));
        break;
    case FileKind::apr_problem:
        checked.kind = "APR problem";
        static_cast<void>(read_and_solve_apr(document, checked.findings));
        break;
    case FileKind::unknown:
        checked.findings.add(problems::format_unknown(
            {&document.root, Path{}},
            "\"quoin/pricebook/1\", \"quoin/inquiry/1\", \"quoin/program/1\", \"quoin/rates/1\" "
            "or \"quoin/place/1\""));
    }
    return checked;
}

} // namespace quoin::apps
