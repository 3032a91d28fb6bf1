// Loading files into a desk and an inquiry.
#include "loading.hpp"

#include <fstream>

#include "clock.hpp"
#include "drawing_files.hpp"
#include "files.hpp"
#include "pictures.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/text/names.hpp>
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

/// Of a regular file of a size that is read; whatever keeps it from being told, reading all of the
/// file then says.
std::optional<SheetHead> read_sheet_head(const fs::path& path) {
    std::error_code error;
    if (fs::file_size(path, error) > largest_file) return {}; // so is that of no regular file
    std::ifstream in(path, std::ios::binary);
    try {
        return head_of_rate_sheet(in);
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

enum class Sheets { all, own }; ///< which of the rate sheets are read

/// Reads an inquiry's price book, the lending data and the inquiry itself; stops where one of them
/// is needed by the next and is not sound.
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

namespace {

/// A price book names a place; its own mistakes come first, and those of the lending data where
/// they may be why the place is not there.
void check_place(const Document& document, const PriceBook& book, const std::string& rates,
                 Language language, Findings& findings) {
    if (!findings.none()) return;
    Findings of_lending;
    const Lending lending = load_lending(rates, of_lending, language);
    if (index_of(lending.places, book.community.place)) return;
    if (!of_lending.none()) {
        findings = std::move(of_lending);
        return;
    }
    const Path community{nullptr, "community"};
    const Value* place = document.root.find("community")->find("place");
    look_up(lending.places, Noun::place, book.community.place, {place, Path{&community, "place"}},
            findings);
}

/// With its place, what is drawn of it and its pictures, which are the same in every language.
void check_book(const Document& document, const std::string& rates, Language language,
                Findings& findings) {
    const PriceBook book = read_book(document, language, findings);
    if (findings.none()) {
        const fs::path folder = fs::path(document.source->name()).parent_path();
        static_cast<void>(read_drawings(book, folder, language, findings));
        const bool looks = language == codes<Language>.front().meaning;
        if (looks) static_cast<void>(read_pictures(document, findings));
    }
    check_place(document, book, rates, language, findings);
}

class EndingTables {
  public:
    explicit EndingTables(Date day) : day_(day), by_(plus_days(day, ending_days + 1)) {}

    void add(const auto& item) {
        for (const EndingTable& table : found) {
            if (table.of == item.id) return; // looked at before
        }
        for (Ending& ending : endings_of(item, day_, by_)) {
            found.push_back({item.id, std::move(ending)});
        }
    }

    std::vector<EndingTable> found;

  private:
    Date day_;
    Date by_;
};

/// Of all that an inquiry is answered by.
std::vector<EndingTable> endings_for(const Loaded& loaded, Date day) {
    EndingTables tables(day);
    const Sitting sitting = loaded.sitting();
    for (const ScenarioRules& rules : sitting.rules()) tables.add(*rules.program);
    tables.add(sitting.sheet());
    tables.add(sitting.place());
    return tables.found;
}

/// Of a file that stands alone.
void check_alone(auto read, const Document& document, Date day, Checked& checked) {
    const auto item = read(document, checked.findings);
    if (!checked.findings.none()) return;
    EndingTables tables(day);
    tables.add(item);
    checked.endings = std::move(tables.found);
}

} // namespace

namespace {

/// A document as it is read in one language.
void check_as(FileKind kind, const Document& document, const std::string& rates,
              std::optional<Date> asked, Language language, Checked& checked) {
    const Date day = asked.value_or(today());
    switch (kind) {
    case FileKind::price_book:
        check_book(document, rates, language, checked.findings);
        break;
    case FileKind::inquiry: {
        const auto loaded =
            read_all(document, rates, Sheets::all, language, Drawn::no, checked.findings);
        if (!checked.findings.none()) break;
        checked.endings = endings_for(*loaded, asked.value_or(loaded->inquiry.as_of));
        break;
    }
    case FileKind::program:
        check_alone(
            [](const Document& program, Findings& findings) {
                return read_program(program, fee_methods(), findings);
            },
            document, day, checked);
        break;
    case FileKind::rate_sheet:
        check_alone(read_rate_sheet, document, day, checked);
        break;
    case FileKind::place:
        check_alone(read_place, document, day, checked);
        break;
    case FileKind::apr_problem:
        static_cast<void>(read_and_solve_apr(document, checked.findings));
        break;
    case FileKind::drawing:
    case FileKind::site_map:
        checked.findings.add(problems::drawing_alone({&document.root, Path{}}));
        break;
    case FileKind::unknown:
        checked.findings.add(problems::format_not_of_files({&document.root, Path{}}));
    }
}

} // namespace

Checked check_file(const std::string& file, const std::string& rates, std::optional<Date> asked) {
    Checked checked{file, FileKind::unknown, {}};
    const Document document = read_json(file, FileMeant::file, checked.findings);
    if (!checked.findings.none()) return checked;
    checked.kind = kind_of(document);
    for (const auto& language : codes<Language>) { // what is wrong in several is told once
        Document in_language = document;
        choose_texts(in_language, language.meaning, checked.findings);
        check_as(checked.kind, in_language, rates, asked, language.meaning, checked);
        if (!checked.findings.none()) break;
    }
    return checked;
}

} // namespace quoin::apps
