// Serving: the page and the questions over HTTP, on this machine, until it is told to stop.
#pragma once

#include "../command.hpp"

namespace quoin::apps {

/// Of the command `serve`: "folder", "port", "listen", "open". Throws Refused.
void serve(const Typed& typed);

} // namespace quoin::apps
