// The command `afford`: how much home, of an inquiry's buyer or on figures alone.
#pragma once

namespace CLI {
class App;
}

namespace quoin::apps {

struct Shared;

/// Gives the command its options and what it does.
void add_afford(CLI::App& command, Shared& shared);

} // namespace quoin::apps
