// The program that people start: answers at once what it can, and starts the whole program in its
// own place for the rest (whole.hpp).
#include <cerrno>
#include <cstring>

#include <unistd.h>

#include "command_line.hpp"
#include "files.hpp"
#include "terminal.hpp"

namespace {

using namespace quoin::apps;

/// The same process goes on as the whole program; returns only where that cannot be.
Result become_whole(char** arguments) {
    const std::string program = whole_program().string();
    execv(program.c_str(), arguments);
    return fault_of(program + " cannot be started: " + std::strerror(errno));
}

} // namespace

int main(int count, char** arguments) {
    const Result result = run({arguments + 1, arguments + count}, nullptr, terminal_columns());
    return written(result.left_to_whole ? become_whole(arguments) : result);
}
