// A second reader of command lines.
#include <CLI/CLI.hpp>
