// The floor that may do all this.
#include <CLI/CLI.hpp>
#include <filesystem>
#include <iostream>

const auto home = std::getenv("HOME");
const double seconds = 0.5;
