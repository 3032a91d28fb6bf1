// The command line: parses it, runs the command, turns what went wrong into messages and exit
// codes.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace quoin::apps {

enum ExitCode : int {
    done = 0,
    input_wrong = 1, ///< a message on standard error; nothing written
    use_wrong = 2,   ///< unknown command or option
    fault = 3,       ///< a fault of the program's own
    stopped = 130,   ///< by an interrupt, before there was an answer; as shells count it
};

struct Result {
    int code = done;
    std::string output; ///< for standard output
    std::string errors; ///< for standard error
};

struct Shared;
/// Does the work of a command, which fills `shared.outcome`. Whatever the work throws becomes a
/// message and an exit code, with nothing on standard output.
[[nodiscard]] Result result_of(const std::function<void()>& work, const Shared& shared);

/// Runs one command. `arguments` without the program's name. Writes nothing itself, but the line
/// that says how far a long search is.
[[nodiscard]] Result run(const std::vector<std::string>& arguments);

} // namespace quoin::apps
