// Every public header, one of them gone, one forgotten.
#pragma once
#include <quoin/exact/gone.hpp>
#include <quoin/exact/money.hpp>
