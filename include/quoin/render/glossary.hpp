// The glossary as people read it, as the page takes it, and as docs/words.md.
#pragma once

#include <string>

#include <quoin/render/blocks.hpp>
#include <quoin/words/glossary.hpp>

namespace quoin {

[[nodiscard]] Blocks glossary_text(const Catalogue& say);
/// {"terms": [{"term", "name", "meaning", "source"}]}; a source may be empty.
[[nodiscard]] std::string glossary_json(const Catalogue& say);
/// A section a term, in every language.
[[nodiscard]] std::string glossary_markdown();

} // namespace quoin
