// Problems as people read them: place, what was found, what was expected, what to do.
#pragma once

#include <string>

#include <quoin/text/findings.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const Findings& findings,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string json_text_of(const Findings& findings,
                                       const Catalogue& say = catalogue_in(Language::english));
/// The list of them alone, into what is being written.
void write_problems(const Findings& findings, JsonWriter& json,
                    const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
