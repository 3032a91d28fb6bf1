// The table of fee methods: each is named here, and made in the file of its name.
#pragma once

#include <array>

#include <quoin/loan/fee_methods.hpp>

namespace quoin {

extern const UpfrontMethod percent_of_base_loan, share_of_total_loan;
extern const AnnualMethod hud_average_balance, usda_average_balance, lender_factor;

inline constexpr std::array upfront_methods{&percent_of_base_loan, &share_of_total_loan};
inline constexpr std::array annual_methods{&hud_average_balance, &usda_average_balance,
                                           &lender_factor};

} // namespace quoin
