// Rendering the glossary.
#include <quoin/render/glossary.hpp>

#include <fmt/format.h>

#include "words/glossary.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/text/json_writer.hpp>

namespace quoin {
namespace {

std::string source_text(const ExplainedTerm& term, const Catalogue& say) {
    return term.source.empty() ? say.glossary.common_practice() : say.glossary.source(term.source);
}

} // namespace

Blocks glossary_text(const Catalogue& say) {
    Blocks out = say.glossary.title() + "\n" + say.glossary.about() + "\n";
    for (const ExplainedTerm& term : glossary(say)) {
        out += "\n" + term.name + "\n" + paragraph(term.meaning, "  ") +
               paragraph(source_text(term, say), "  ");
    }
    return out;
}

std::string glossary_json(const Catalogue& say) {
    JsonWriter json;
    json.object([&] {
        json.list("terms", [&] {
            for (const ExplainedTerm& term : glossary(say)) {
                json.object([&] {
                    json.text("term", code_of(term.term));
                    json.text("name", term.name);
                    json.text("meaning", term.meaning);
                    json.text("source", term.source);
                });
            }
        });
    });
    return json.take() + "\n";
}

std::string glossary_markdown() {
    const Catalogue& say = catalogue_in(Language::english);
    std::string out = "# " + say.glossary.title() + "\n\n" + say.glossary.about() + "\n";
    for (const ExplainedTerm& term : glossary(say)) {
        out += fmt::format("\n## {}\n\n{} {}\n", term.name, term.meaning, source_text(term, say));
        for (const auto& [language, code, name] : codes<Language>) {
            if (language == say.language) continue;
            const GlossaryWords& other = catalogue_in(language).glossary;
            out += fmt::format("\n*{}:* **{}.** {}\n", name, other.name(term.term),
                               other.meaning(term.term));
        }
    }
    return out;
}

} // namespace quoin
