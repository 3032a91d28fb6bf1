// A payment, an APR, without a home.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct PaymentWords {};

} // namespace quoin
