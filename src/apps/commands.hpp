// The commands of the program: one function each, listed in one place.
#pragma once

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace quoin::apps {

/// What a command leaves behind: text for standard output and standard error, and whether the input
/// was sound.
struct Outcome {
    std::string output;
    std::string errors;
    bool input_sound = true;
};

/// What the commands share: options given before or after the command's own.
struct Shared {
    bool json = false;
    std::string rates;
    Outcome outcome;
};

/// Adds every command to the program; running one fills `shared.outcome`.
void add_commands(CLI::App& program, Shared& shared);

} // namespace quoin::apps
