// Finding price books and inquiries in a folder, and reading the inquiry of a request.
#include "cases.hpp"

#include <algorithm>
#include <cstdint>

#include <fmt/format.h>

#include <quoin/text/problems.hpp>
#include <quoin/words/catalogue.hpp>

#include "../drawing_files.hpp"
#include "../files.hpp"
#include "../loading.hpp"
#include "content_mark.hpp"
#include "media_types.hpp"
#include "words/apps.hpp"
#include <quoin/inquiry/first_inquiry.hpp>
#include <quoin/inquiry/typed.hpp>
#include <quoin/text/language.hpp>
#include <quoin/text/value.hpp>

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

std::string id_of(const fs::path& file, const fs::path& folder) {
    return file.lexically_relative(folder).generic_string();
}

struct Found {
    fs::path file;
    Document document;
};

/// The documents of one kind, out of all that was found.
std::vector<Found> of_kind(const std::vector<Found>& found, FileKind kind) {
    std::vector<Found> chosen;
    for (const Found& each : found) {
        if (kind_of(each.document) == kind) chosen.push_back(each);
    }
    return chosen;
}

std::vector<Found> read_files(const fs::path& folder, Findings& left_out) {
    std::vector<Found> found;
    for (const fs::path& file : json_files_below(folder)) {
        found.push_back({file, read_json(file, FileMeant::file, left_out)});
    }
    return found;
}

/// The lending data in every language. Throws Refused.
EachLanguage<Lending> read_lending_in_each(const std::string& rates) {
    EachLanguage<Lending> lending;
    for (const auto& language : codes<Language>) {
        Findings findings;
        lending[language.meaning] = load_lending(rates, findings, language.meaning);
        if (!findings.none()) throw Refused(std::move(findings));
    }
    return lending;
}

/// A price book in every language; what is wrong in several is told once.
CaseBook read_case(const Found& found, const fs::path& folder, const EachLanguage<Lending>& lending,
                   Findings& findings) {
    CaseBook read{id_of(found.file, folder), {}, {}, {}, {}};
    for (const auto& [language, code, name] : codes<Language>) {
        Document document = found.document;
        choose_texts(document, language, findings);
        PriceBook book = read_book(document, language, findings);
        book.file = read.id; // what a request is told about it names no folder of this machine
        read.desks[language] = {std::move(book), lending[language], {}};
        if (!findings.none()) break;
    }
    return read;
}

/// What is drawn of it. Where something is wrong in that, it is told, and nothing drawn is shown: a
/// home is sold without it, too.
void add_drawings(const fs::path& folder, CaseBook& book, Findings& left_out) {
    EachLanguage<Drawings> drawings;
    for (const auto& language : codes<Language>) {
        Findings findings;
        drawings[language.meaning] =
            read_drawings(book.desks[language.meaning].book, folder, language.meaning, findings);
        if (findings.none()) continue;
        left_out.take(std::move(findings));
        return;
    }
    for (const auto& language : codes<Language>) {
        book.desks[language.meaning].drawings = std::move(drawings[language.meaning]);
    }
}

/// The pictures that are sound; no desk names another.
void add_pictures(const Document& document, CaseBook& book, Findings& left_out) {
    const std::vector<Picture> pictures = read_pictures(document, left_out);
    for (const auto& language : codes<Language>) {
        keep_pictures(book.desks[language.meaning].book, pictures);
    }
    for (const Picture& picture : pictures) {
        book.pictures.push_back(
            {fmt::format("{}{}.{}", pictures_path, content_mark(picture.source->text()),
                         ending_of(picture.kind)),
             picture});
    }
}

std::vector<CaseBook> read_books(const std::vector<Found>& found, const fs::path& folder,
                                 const EachLanguage<Lending>& lending, Findings& left_out) {
    std::vector<CaseBook> books;
    for (const Found& each : of_kind(found, FileKind::price_book)) {
        Findings findings;
        CaseBook book = read_case(each, folder, lending, findings);
        if (findings.none()) {
            add_drawings(each.file.parent_path(), book, left_out);
            add_pictures(each.document, book, left_out);
            books.push_back(std::move(book));
        }
        left_out.take(std::move(findings));
    }
    return books;
}

/// The inquiry's text with another price_book, every other literal as it was.
std::string with_price_book(Value root, const std::string& id) {
    for (std::size_t i = 0; i < root.keys.size(); ++i) {
        if (root.keys[i].name == "price_book") root.items[i].literal = id;
    }
    return write_json(root);
}

void add_inquiry(const Found& found, const fs::path& folder, std::vector<CaseBook>& books,
                 Findings& left_out) {
    const auto named = price_book_of(found.document);
    if (!named) {
        const Value& root = found.document.root;
        left_out.add(problems::member_missing({&root, Path{}}, "price_book"));
        return;
    }
    const std::string id = id_of((found.file.parent_path() / *named).lexically_normal(), folder);
    for (CaseBook& book : books) {
        if (book.id != id) continue;
        Findings findings;
        const Inquiry inquiry =
            read_inquiry(found.document, book.desks[Language::english], findings);
        if (findings.none()) {
            book.inquiries.push_back({id_of(found.file, folder), inquiry.buyer,
                                      with_price_book(found.document.root, id)});
        }
        left_out.take(std::move(findings));
        return;
    }
    const Value* value = found.document.root.find("price_book");
    left_out.add(problems::name_unknown({value, Path{nullptr, "price_book"}},
                                        Noun::sound_price_book, *named, {}));
}

/// What a new buyer is told of what is assumed.
std::string comment_words(const FirstAssumed& first, const FirstWords& say) {
    const std::string assumed = say.assumed(first.score, first.days_to_closing);
    switch (first.prices) {
    case FirstAssumed::Prices::ended:
        return say.prices_ended(first.as_of, assumed);
    case FirstAssumed::Prices::coming:
        return say.prices_coming(first.as_of, assumed);
    case FirstAssumed::Prices::current:
        break;
    }
    return assumed;
}

/// An inquiry to begin with, its comment in every language.
EachLanguage<std::optional<std::string>> first_in_each(const CaseBook& book, Date today) {
    EachLanguage<std::optional<std::string>> first;
    for (const auto& [language, code, name] : codes<Language>) {
        const FirstWords& say = catalogue_in(language).apps.first;
        first[language] =
            first_inquiry(book.id, book.desks[language], today,
                          [&](const FirstAssumed& assumed) { return comment_words(assumed, say); });
    }
    return first;
}

} // namespace

Cases::Cases(const fs::path& asked, const std::string& rates, Date today, Findings& left_out)
    : folder_(asked), rates_(rates) {
    const fs::path folder = asked.lexically_normal();
    if (!is_folder(folder)) {
        refuse(problems::file_missing(asked.string(), FileMeant::price_book_folder, {}));
    }
    const EachLanguage<Lending> lending = read_lending_in_each(rates);
    const std::vector<Found> found = read_files(folder, left_out);
    books_ = read_books(found, folder, lending, left_out);
    if (books_.empty()) {
        left_out.add(problems::no_price_book(asked.string()));
        throw Refused(std::move(left_out));
    }
    for (const Found& each : of_kind(found, FileKind::inquiry)) {
        add_inquiry(each, folder, books_, left_out);
    }
    for (CaseBook& book : books_) book.first = first_in_each(book, today);
    std::stable_sort(books_.begin(), books_.end(), [](const CaseBook& a, const CaseBook& b) {
        return a.inquiries.size() > b.inquiries.size();
    });
}

std::size_t Cases::inquiry_count() const {
    std::size_t count = 0;
    for (const CaseBook& book : books_) count += book.inquiries.size();
    return count;
}

const CasePicture* Cases::picture_at(std::string_view address) const {
    for (const CaseBook& book : books_) {
        for (const CasePicture& one : book.pictures) {
            if (one.address == address) return &one;
        }
    }
    return nullptr;
}

const CaseBook* Cases::find(std::string_view id) const {
    for (const CaseBook& book : books_) {
        if (book.id == id) return &book;
    }
    return nullptr;
}

Inquiry Cases::read(std::string body, Language language, const Desk*& desk) const {
    Findings findings;
    const auto source = std::make_shared<const Source>("inquiry", std::move(body));
    const Document document = parse_json(source, findings, caps::sent_values);
    if (!findings.none()) throw Refused(std::move(findings));
    const auto named = price_book_of(document);
    if (!named) {
        refuse(document.root.kind == Value::Kind::object
                   ? problems::member_missing({&document.root, Path{}}, "price_book")
                   : problems::not_an_object({&document.root, Path{}}));
    }
    const CaseBook* book = find(*named);
    if (book == nullptr) {
        std::vector<std::string> ids;
        for (const CaseBook& each : books_) ids.push_back(each.id);
        refuse(
            problems::name_unknown({document.root.find("price_book"), Path{nullptr, "price_book"}},
                                   Noun::price_book, *named, nearest(*named, ids)));
    }
    Inquiry inquiry = read_inquiry(document, book->desks[language], findings);
    if (!findings.none()) throw Refused(std::move(findings));
    desk = &book->desks[language];
    return inquiry;
}

} // namespace quoin::apps
