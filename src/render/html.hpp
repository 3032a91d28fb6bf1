// HTML in pieces: text that is escaped once, elements around it, tables.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace quoin {

/// Text as it may stand where no elements may: in a title.
[[nodiscard]] std::string escaped(std::string_view text);

/// Text as it may stand in an element. What runs from the right to the left is set apart (bdi), so
/// that a figure beside it stays where it was written.
[[nodiscard]] std::string in_element(std::string_view text);

/// <tag class="kind">inner</tag>; `inner` is HTML already.
[[nodiscard]] std::string element(std::string_view tag, std::string_view inner,
                                  std::string_view kind = {});

/// The same around text that is not.
[[nodiscard]] std::string text_element(std::string_view tag, std::string_view text,
                                       std::string_view kind = {});

/// A section under a heading; empty where there is nothing in it.
[[nodiscard]] std::string section(std::string_view heading, const std::string& inner,
                                  std::string_view kind = {});

/// A row: a label that heads it, then figures. All of it is text.
[[nodiscard]] std::string figure_row(std::string_view label,
                                     const std::vector<std::string>& figures,
                                     std::string_view kind = {});

/// An entry of a list of descriptions: a name and what it is. Both are text.
[[nodiscard]] std::string described(std::string_view name, std::string_view value);

/// A list of texts; empty where there are none.
[[nodiscard]] std::string text_list(const std::vector<std::string>& texts,
                                    std::string_view kind = {});

} // namespace quoin
