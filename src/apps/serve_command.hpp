// The command `serve`: the page and the questions over HTTP, on this machine.
#pragma once

namespace CLI {
class App;
}

namespace quoin::apps {

struct Shared;

/// Gives the command its options and what it does; running it returns when it is told to stop.
void add_serve(CLI::App& command, Shared& shared);

} // namespace quoin::apps
