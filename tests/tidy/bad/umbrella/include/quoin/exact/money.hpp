// Money.
#pragma once
#include <quoin/exact/rounding.hpp>
