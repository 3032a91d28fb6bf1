// Every public header.
#pragma once

#include <quoin/lending/program.hpp>
