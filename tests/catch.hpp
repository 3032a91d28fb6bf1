// Catch2 for every test, whichever of its two major versions is installed.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using namespace Catch::Matchers;
#else
#include <catch2/catch.hpp>
#endif
