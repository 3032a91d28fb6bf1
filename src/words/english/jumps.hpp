// Why a figure jumps, in English.
#pragma once

#include "words/jumps.hpp"

namespace quoin::english {

inline constexpr JumpWords jumps = {
    .ltv_moved = "LTV goes from {}% to {}%: {}",
    .none = "none",
    .percent = "{}%",
    .percent_a_year = "{}% a year",
    .note_rate = "interest rate goes from {} to {}{}",
    .points = "points go from {} to {}{}",
    .upfront_fee = "upfront fee goes from {} to {}{}",
    .annual_premium = "annual mortgage insurance goes from {} to {}{}",
    .annual_premium_months = "months with annual mortgage insurance go from {} to {}{}",
    .single_premium = "single premium of mortgage insurance goes from {} to {}{}",
    .contribution_cap = "limit on contributions from the seller and other interested parties goes "
                        "from {} to {}{}",
    .homeowner = "homeowner's insurance goes from {} to {} a year for each $1,000 of dwelling "
                 "value{}",
    .insurance_changes = "mortgage insurance goes from {} to {}{}",
    .insurance_starts = "mortgage insurance starts at {}{}",
    .insurance_ends = "mortgage insurance is no longer needed; it was {}",
    .row = " ({})",
    .ltv = "LTV",
    .down_payment = "down payment",
    .term = "loan term",
    .base_loan = "base loan amount",
    .loan = "loan amount",
    .score = "credit score",
    .price = "price",
    .dwelling_value = "dwelling value",
    .over = "over {}",
    .from = "at least {}",
    .under = "under {}",
    .up_to = "up to {}",
    .both_edges = "{} and {}",
    .band = "{} {}",
    .band_months = "{} months",
};

} // namespace quoin::english
