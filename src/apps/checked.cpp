// Checking files of any kind.
#include "checked.hpp"

#include <filesystem>

#include "clock.hpp"
#include "drawing_files.hpp"
#include "loading.hpp"
#include "pictures.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/text/names.hpp>
#include <quoin/text/problems.hpp>

namespace quoin::apps {
namespace fs = std::filesystem;

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
