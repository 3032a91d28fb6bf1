// Every public header, in the wrong order.
#pragma once
#include <quoin/exact/money.hpp>
#include <quoin/exact/rounding.hpp>
