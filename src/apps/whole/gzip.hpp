// Answers compressed on their way.
#pragma once

#include <string>
#include <string_view>

#include "../wire/http.hpp"

namespace quoin::apps {

/// The text in the gzip format (RFC 1952).
[[nodiscard]] std::string gzipped(std::string_view text);

/// Compresses a body that is made for this request, where the one who asked takes that and it saves
/// anything: a touch is answered by 160 kB of JSON that travel as 19.
void compress(HttpResponse& response, const HttpRequest& request);

} // namespace quoin::apps
