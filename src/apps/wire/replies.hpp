// Filling in a response: what was asked for, or a refusal with its problems.
#pragma once

#include <string_view>

#include <quoin/text/findings.hpp>

#include "http.hpp"
#include "media_types.hpp"

namespace quoin::apps {

void set_content(HttpResponse& response, std::string_view body, std::string_view type);

/// With status 200, in the response's language.
void reply(HttpResponse& response, std::string_view text, std::string_view type = json_type);

void refuse(HttpResponse& response, int status, const Findings& findings);
void refuse(HttpResponse& response, int status, Problem problem);

} // namespace quoin::apps
