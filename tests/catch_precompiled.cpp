// Carries the precompiled Catch2 header that every test program reuses.
#include "catch.hpp"
