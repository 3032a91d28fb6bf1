// The program: hands its arguments on, and writes what comes back in one piece.
#include <cstdio>
#include <string>
#include <vector>

#include "command_line.hpp"

namespace {

bool write(const std::string& text, std::FILE* to) {
    return std::fwrite(text.data(), 1, text.size(), to) == text.size() && std::fflush(to) == 0;
}

} // namespace

int main(int count, char** arguments) {
    const quoin::apps::Result result =
        quoin::apps::run(std::vector<std::string>(arguments + 1, arguments + count));
    write(result.errors, stderr);
    if (!write(result.output, stdout)) {
        write("quoin: the answer could not be written\n", stderr);
        return quoin::apps::fault;
    }
    return result.code;
}
