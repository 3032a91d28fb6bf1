// Loading files into a desk and an inquiry.
#include "loading.hpp"

#include <istream>

#include "drawing_files.hpp"
#include "files.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>

namespace quoin::apps {
namespace fs = std::filesystem;

namespace {

Document parse_file(const fs::path& path, FileMeant what, std::optional<Language> texts_in,
                    Findings& findings) {
    auto source = read_file(path, what, findings);
    if (source == nullptr) return {};
    return parse_json(std::move(source), findings, caps::values, texts_in);
}

} // namespace

Document read_json(const fs::path& path, FileMeant what, Findings& findings) {
    return parse_file(path, what, {}, findings);
}

Document read_data(const fs::path& path, FileMeant what, Language language, Findings& findings) {
    Document document = parse_file(path, what, language, findings);
    choose_texts(document, language, findings); // says what is wrong in those that are left
    return document;
}

PriceBook read_book(const Document& document, Language language, Findings& findings) {
    const auto list = lots_file(document.root);
    if (!list) return read_price_book(document, nullptr, findings);
    const fs::path path = fs::path(document.source->name()).parent_path() / *list;
    auto source = read_file(path, FileMeant::lots, findings);
    if (source == nullptr) return read_price_book(document, nullptr, findings);
    Document lots = parse_csv(std::move(source), findings);
    choose_lot_texts(lots, language);
    return read_price_book(document, &lots, findings);
}

namespace {

std::vector<fs::path> lending_files(const fs::path& folder) {
    std::vector<fs::path> files;
    for (const char* kind : {"programs", "sheets", "places"}) {
        for (fs::path& path : json_files(folder / kind)) files.push_back(std::move(path));
    }
    return files;
}

/// Whatever keeps it from being told, reading all of the file then says.
std::optional<SheetHead> read_sheet_head(const fs::path& path) {
    const auto in = open_file(path);
    if (in == nullptr) return {};
    try {
        return head_of_rate_sheet(*in);
    } catch (const std::ios_base::failure&) { // of the medium
        return {};
    }
}

/// Without the rate sheets whose heads say that they are not the one asked for. Each with the id of
/// that one stays, so that an id told twice is found. All stay where no head is the one: what is
/// wrong in any sheet may be why, and a message may name the nearest.
std::vector<fs::path> files_that_may_matter(std::vector<fs::path> files, const SheetAsked& asked) {
    std::vector<SheetHead> heads;
    std::vector<std::string> ids; // one a file, empty where no head is told
    for (const fs::path& path : files) {
        auto head = read_sheet_head(path);
        ids.push_back(head ? head->id : "");
        if (head) heads.push_back(std::move(*head));
    }
    const SheetHead* chosen = chosen_sheet(heads, asked);
    if (chosen == nullptr) return files;
    std::vector<fs::path> left;
    for (std::size_t i = 0; i < files.size(); ++i) {
        if (ids[i].empty() || ids[i] == chosen->id) left.push_back(std::move(files[i]));
    }
    return left;
}

Lending load_files(const fs::path& folder, const std::vector<fs::path>& files, Language language,
                   Findings& findings) {
    std::vector<Document> documents;
    for (const fs::path& path : files) {
        documents.push_back(read_data(path, FileMeant::lending_data, language, findings));
    }
    if (documents.empty()) {
        findings.add(problems::file_missing(folder.string(), FileMeant::lending_folder, {}));
    }
    return read_lending(documents, findings);
}

} // namespace

Lending load_lending(const std::string& rates, Findings& findings, Language language) {
    const fs::path folder = rates_folder(rates);
    return load_files(folder, lending_files(folder), language, findings);
}

Lending load_lending(const std::string& rates, const SheetAsked& asked, Findings& findings,
                     Language language) {
    const fs::path folder = rates_folder(rates);
    const std::vector<fs::path> files = files_that_may_matter(lending_files(folder), asked);
    return load_files(folder, files, language, findings);
}

namespace {

/// What was read of the file is let go before the next is read.
PriceBook read_book_at(const fs::path& path, Language language, Findings& findings) {
    const Document document = read_data(path, FileMeant::price_book, language, findings);
    return document.root.kind == Value::Kind::null ? PriceBook{}
                                                   : read_book(document, language, findings);
}

} // namespace

std::unique_ptr<Loaded> read_all(const Document& document, const std::string& rates, Sheets sheets,
                                 Language language, Drawn drawn, Findings& findings) {
    auto loaded = std::make_unique<Loaded>();
    const auto named = price_book_of(document);
    if (!named) {
        findings.add(document.root.kind == Value::Kind::object
                         ? problems::member_missing({&document.root, Path{}}, "price_book")
                         : problems::not_an_object({&document.root, Path{}}));
        return loaded;
    }
    const fs::path path = fs::path(document.source->name()).parent_path() / *named;
    loaded->desk.book = read_book_at(path.lexically_normal(), language, findings);
    if (drawn == Drawn::yes && findings.none()) {
        const fs::path folder = path.lexically_normal().parent_path();
        loaded->desk.drawings = read_drawings(loaded->desk.book, folder, language, findings);
    }
    const auto asked = sheets == Sheets::own ? sheet_asked(document) : std::nullopt;
    loaded->desk.lending = asked ? load_lending(rates, *asked, findings, language)
                                 : load_lending(rates, findings, language);
    if (!findings.none()) return loaded;
    loaded->inquiry = read_inquiry(document, loaded->desk, findings);
    return loaded;
}

namespace {

void refuse_if_any(Findings findings) {
    if (!findings.none()) throw Refused(std::move(findings));
}

/// What `read` makes of a file that it finds nothing wrong with.
auto load(const std::string& file, FileMeant what, const auto& read) {
    Findings findings;
    const Document document = read_json(file, what, findings);
    refuse_if_any(findings);
    auto value = read(document, findings);
    refuse_if_any(std::move(findings));
    return value;
}

} // namespace

std::unique_ptr<Loaded> load_inquiry(const std::string& file, const std::string& rates,
                                     Language language, Drawn drawn) {
    return load(file, FileMeant::inquiry, [&](const Document& document, Findings& findings) {
        return read_all(document, rates, Sheets::own, language, drawn, findings);
    });
}

PriceBook load_price_book(const std::string& file, Language language) {
    return load(file, FileMeant::price_book, [&](const Document& document, Findings& findings) {
        Document book = document;
        choose_texts(book, language, findings);
        return read_book(book, language, findings);
    });
}

AprAnswer load_apr(const std::string& file) {
    return load(file, FileMeant::apr_problem, read_and_solve_apr);
}

} // namespace quoin::apps
