// Putting the file together: the document, and what the page in it unpacks.
#include "home_file.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

#include <quoin/answers/sheet.hpp>
#include <quoin/inquiry/typed.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/text/problems.hpp>

#include "../loading.hpp"
#include "../whole/home_parts.hpp"
#include "../wire/content_mark.hpp"
#include "home_bar.hpp"
#include "letters.hpp"
#include "written_folder.hpp"

namespace quoin::apps {
namespace {

std::unique_ptr<Loaded> loaded(const std::string& folder, Language language) {
    return load_inquiry(folder + "/inquiry.json", folder + "/rates", language, Drawn::yes);
}

bool is_text(std::string_view path) {
    constexpr std::array endings{".json", ".csv", ".svg"};
    return std::ranges::any_of(endings, [&](const char* ending) { return path.ends_with(ending); });
}

/// Where the engine for browsers looks for it.
std::string place_of(const std::string& path) {
    return path.starts_with("rates/") ? path : "examples/home/" + path;
}

void write_files(const std::vector<TakenFile>& files, JsonWriter& json) {
    json.object("files", [&] {
        for (const TakenFile& file : files) {
            if (is_text(file.path)) {
                json.text(place_of(file.path), file.bytes);
            } else {
                json.object(place_of(file.path), [&] {
                    json.text("letters", in_letters(file.bytes));
                    json.number("size", static_cast<std::int64_t>(file.bytes.size()));
                });
            }
        }
    });
}

/// What the page begins with: days, the loan in front, the files, and the sheet as the engine will
/// tell it.
std::string begun_with(const TakenHome& taken, const SheetAnswer& answer, const std::string& loan,
                       const Catalogue& say) {
    const Heading& heading = answer.quote.heading;
    JsonWriter files;
    files.object([&] { write_files(taken.files, files); });
    const std::string held = files.take();
    JsonWriter json;
    json.object([&] {
        json.object("facts", [&] {
            json.text("hash", content_mark(held));
            json.text("language", code_of(say.language));
            json.text("as_of", heading.as_of.text());
            json.text("rates_end", heading.rates_good_through.text());
            json.text("book_end", heading.price_book_expires.text());
            json.text("hand", loan);
        });
        write_files(taken.files, json);
        json.text("sheet", html_of(answer, say));
    });
    return json.take();
}

} // namespace

std::string home_file(const TakenHome& taken, Language language, const std::string& file) {
    const HomeParts* parts = home_parts();
    if (parts == nullptr) refuse(problems::no_home_parts(file));
    const Catalogue& say = catalogue_in(language);
    const HomeDocument document(parts->documents, language);
    const FolderForAWhile folder; // what is taken is read as it will be at home
    write_folder(folder.path(), taken.files);
    const auto desk = loaded(folder.path(), language);
    const SheetAnswer answer = sheet(desk->sitting());
    const Heading& heading = answer.quote.heading;
    const ScenarioAnswer& loan = answer.quote.scenarios.at(answer.front.value_or(0));
    SheetHtml paper = sheet_html(answer, say);
    Placed values = bar_values(heading, loan, document, say);
    values["sheet_style"] = std::move(paper.style);
    values["sheet_class"] = "sheet";
    values["sheet"] = std::move(paper.sides);
    values["home"] = packed_in_letters(begun_with(taken, answer, loan.terms.name, say));
    values["state"] = "";
    values["parts"] = parts->packed;
    return document.filled("document", values);
}

} // namespace quoin::apps
