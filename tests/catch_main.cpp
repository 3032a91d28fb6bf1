// The main function of a test program, for a Catch2 package that has none compiled.
#define CATCH_CONFIG_MAIN
#include "catch.hpp"
