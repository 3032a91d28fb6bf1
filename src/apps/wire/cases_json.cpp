// Telling the cases.
#include "cases_json.hpp"

#include <quoin/text/json_writer.hpp>

#include "media_types.hpp"

namespace quoin::apps {
namespace {

/// An inquiry goes in as text, so that every number stays as it was written.
void write(const CaseInquiry& one, JsonWriter& json) {
    json.object([&] {
        json.text("id", one.id);
        json.text("buyer", one.buyer);
        json.key("inquiry");
        json.literal(one.json);
    });
}

void write(const CaseBook& book, Language language, JsonWriter& json) {
    const PriceBook& prices = book.desks[language].book;
    json.object([&] {
        json.text("id", book.id);
        json.text("community", prices.community.name);
        json.text("builder", prices.community.builder);
        json.text("version", prices.version);
        json.text("effective", prices.effective.text());
        json.text("expires", prices.expires.text());
        json.list("inquiries", [&] {
            for (const CaseInquiry& one : book.inquiries) write(one, json);
        });
        json.list("areas", [&] {
            for (const Named& area : prices.areas) json.text(area.id);
        });
        json.list("pictures", [&] {
            for (const CasePicture& one : book.pictures) {
                json.object([&] {
                    json.text("file", one.picture.file);
                    json.text("address", one.address);
                });
            }
        });
        json.key("first");
        json.literal(book.first[language].value_or("null"));
    });
}

void write(const QuestionOption& option, JsonWriter& json) {
    json.object([&] {
        json.text("name", option.name);
        json.text("summary", option.summary);
        json.truth("required", option.is_needed());
        json.truth("repeated", option.is_repeated());
        json.truth("flag", option.kind == QuestionOption::Kind::flag);
    });
}

void write(const Question& question, JsonWriter& json) {
    json.object([&] {
        json.text("name", question.name);
        json.text("summary", question.summary);
        json.text("type", media_type_of(question.forms.front()));
        json.list("options", [&] {
            for (const QuestionOption& option : question.options) {
                if (option.by == QuestionOption::By::anybody) write(option, json);
            }
        });
    });
}

std::string json_of(const Cases& cases, const std::vector<const Question*>& asked,
                    Language language) {
    JsonWriter json;
    json.object([&] {
        json.list("price_books", [&] {
            for (const CaseBook& book : cases.books()) write(book, language, json);
        });
        json.list("questions", [&] {
            for (const Question* question : asked) write(*question, json);
        });
    });
    return json.take() + "\n";
}

} // namespace

EachLanguage<std::string> json_of(const Cases& cases, const std::vector<const Question*>& asked) {
    EachLanguage<std::string> told;
    for (const auto& language : codes<Language>) {
        told[language.meaning] = json_of(cases, asked, language.meaning);
    }
    return told;
}

} // namespace quoin::apps
