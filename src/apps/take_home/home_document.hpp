// The document of a file that is taken home: texts with places for values, {{month}}, as the page's
// build made them of the page's own words, so that nothing moves when the page takes over.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include <quoin/exact/date.hpp>
#include <quoin/text/language.hpp>
#include <quoin/text/value.hpp>

namespace quoin::apps {

/// By the names of their places; HTML.
using Placed = std::map<std::string, std::string, std::less<>>;

class HomeDocument {
  public:
    /// `documents`: JSON with an object of texts for each language.
    HomeDocument(std::string_view documents, Language language);

    /// The text of that name, as it is.
    [[nodiscard]] const std::string& text(std::string_view name) const;
    /// The same with the values in their places. Each place of it has one.
    [[nodiscard]] std::string filled(std::string_view name, const Placed& values) const;
    /// A day in few letters: "Nov 24, 2026".
    [[nodiscard]] std::string day(Date date) const;

  private:
    Document read_;
    const Value& texts_;
};

} // namespace quoin::apps
