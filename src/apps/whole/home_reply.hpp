// A buyer on the screen, taken home: POST /api/take-home with the inquiry gives the file that the
// command writes; `with`, once for each, what goes along of the buyer's money.
#pragma once

#include "../wire/cases.hpp"
#include "../wire/http.hpp"

namespace quoin::apps {

inline constexpr std::string_view take_home_path = "/api/take-home";

/// Throws Refused.
void reply_home_file(const HttpRequest& request, const Cases& cases, HttpResponse& response);

} // namespace quoin::apps
