// What the targets start from: the files that the project ships, and desks made of them.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <quoin/inquiry/inquiry.hpp>
#include <quoin/text/value.hpp>

#include "targets.hpp"

namespace quoin::fuzz {

/// Every file with this ending under examples, rates and the tests' data, by its path.
[[nodiscard]] const std::vector<Seed>& files_ending_in(std::string_view ending);
/// The JSON files of one kind.
[[nodiscard]] std::vector<Seed> files_of(FileKind kind);

/// Bytes as a document; its problems are recorded and its root is then null.
[[nodiscard]] Document document_of(const std::string& bytes, Findings& findings);
/// Likewise, with its texts in English.
[[nodiscard]] Document data_of(const std::string& bytes, Findings& findings);

/// A price book and lending data as documents, and the inquiries about them.
struct Community {
    std::string folder; ///< of the price book, in the source tree
    std::vector<Document> lending;
    Desk desk;
    std::vector<Document> inquiries;
};
/// The shipped example.
[[nodiscard]] Community& example();
/// The small community of the transcripts.
[[nodiscard]] Community& small();

/// Throws Find where the text is no JSON, which is UTF-8 too.
void must_be_json(const std::string& text, const char* what);
/// Renders problems both ways.
void render(const Findings& findings);

} // namespace quoin::fuzz
