// Which of two has cost less, when, and how a change pays back, in English.
#pragma once

#include "words/order.hpp"

namespace quoin::english {

inline constexpr OrderWords order = {};

} // namespace quoin::english
