// The whole program, which also serves and writes workbooks.
#include "../command_line.hpp"
#include "../terminal.hpp"

int main(int count, char** arguments) {
    using namespace quoin::apps;
    return written(run({arguments + 1, arguments + count}, &all_of_it, terminal_columns()));
}
