// The description of the server's interface, for people and for the tools that read OpenAPI.
#pragma once

#include <string>

namespace quoin::apps {

/// An OpenAPI 3.1 document written from the table of questions. `inquiry_schema` is the text of
/// schemas/inquiry.schema.json; where it is empty, an inquiry is any object.
[[nodiscard]] std::string openapi_text(const std::string& inquiry_schema);

} // namespace quoin::apps
