// Filling the places of the document's texts.
#include "home_document.hpp"

#include <quoin/exact/broken.hpp>

namespace quoin::apps {
namespace {

Document read(std::string_view documents) {
    Findings findings;
    Document document = parse_json(
        std::make_shared<const Source>("home_documents.json", std::string(documents)), findings);
    ensure(findings.none(), "the documents of the build can be read");
    return document;
}

const Value& found(const Value& object, std::string_view name) {
    const Value* value = object.find(name);
    ensure(value != nullptr, "the documents of the build are whole");
    return *value;
}

/// Values are not looked through for places: what a price book says may look like one.
std::string with_values(std::string_view text, const Placed& values) {
    std::string out;
    while (true) {
        const std::size_t open = text.find("{{");
        out += text.substr(0, open);
        if (open == std::string_view::npos) return out;
        const std::size_t close = text.find("}}", open);
        ensure(close != std::string_view::npos, "a place of a document ends");
        const auto value = values.find(text.substr(open + 2, close - open - 2));
        ensure(value != values.end(), "each place of a document has a value");
        out += value->second;
        text.remove_prefix(close + 2);
    }
}

} // namespace

HomeDocument::HomeDocument(std::string_view documents, Language language)
    : read_(read(documents)), texts_(found(read_.root, code_of(language))) {}

const std::string& HomeDocument::text(std::string_view name) const {
    return found(texts_, name).literal;
}

std::string HomeDocument::filled(std::string_view name, const Placed& values) const {
    return with_values(text(name), values);
}

std::string HomeDocument::day(Date date) const {
    const Value& months = found(texts_, "days");
    return with_values(
        months.items.at(date.month() - 1).literal,
        {{"day", std::to_string(date.day())}, {"year", std::to_string(date.year())}});
}

} // namespace quoin::apps
