// Every public header.
#pragma once

#include <quoin/exact/money.hpp>
