// A payment, an APR, without a home, in English.
#pragma once

#include "words/payment.hpp"

namespace quoin::english {

inline constexpr PaymentWords payment = {};

} // namespace quoin::english
