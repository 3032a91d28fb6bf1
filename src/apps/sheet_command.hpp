// The command `sheet`: what the buyer takes home, as one HTML file to print.
#pragma once

namespace CLI {
class App;
}

namespace quoin::apps {

struct Shared;

/// Gives the command its options, beside the inquiry's own file, and what it does.
void add_sheet(CLI::App& command, Shared& shared);

} // namespace quoin::apps
