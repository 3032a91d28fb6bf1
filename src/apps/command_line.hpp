// The command line: parses it, runs the command, turns what went wrong into messages and exit
// codes.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "command.hpp"
#include <quoin/words/catalogue.hpp>

#include "whole.hpp"

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
    std::string output;         ///< for standard output
    std::string errors;         ///< for standard error
    bool left_to_whole = false; ///< nothing was done: the whole program has to
};

/// Does the work of a command. Whatever the work throws becomes a message in its language, as JSON
/// where that was asked for, and an exit code, with nothing on standard output.
[[nodiscard]] Result result_of(const std::function<Outcome()>& work, const Typed& typed);

/// Runs one command. `arguments` without the program's name. Writes nothing itself, but the line
/// that says how far a long search is, and what a server has to say. Where `whole` is null, a
/// command that needs it is left to the whole program. `columns` are those of the terminal, if it
/// is one that the answer is written to.
[[nodiscard]] Result run(const std::vector<std::string>& arguments, const Whole* whole = nullptr,
                         std::optional<std::size_t> columns = {});

/// The result of a fault of the program's own, and what it was.
[[nodiscard]] Result fault_of(const std::string& what,
                              const Catalogue& say = catalogue_in(Language::english));

/// Writes a result in one piece, and returns the exit code.
[[nodiscard]] int written(const Result& result);

} // namespace quoin::apps
