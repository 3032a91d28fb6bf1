// Problems as people read them: place, what was found, what was expected, what to do.
#pragma once

#include <string>

#include <quoin/text/findings.hpp>
#include <quoin/text/json_writer.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const Findings& findings);
[[nodiscard]] std::string json_text_of(const Findings& findings);
/// The list of them alone, into what is being written.
void write_problems(const Findings& findings, JsonWriter& json);

} // namespace quoin
