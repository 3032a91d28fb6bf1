// Why a figure jumps, in English.
#pragma once

#include "words/jumps.hpp"

namespace quoin::english {

inline constexpr JumpWords jumps = {
    .ltv_moved = "LTV {} to {}%: {}",
    .none = "none",
    .percent = "{}%",
    .percent_a_year = "{}% a year",
    .note_rate = "note rate {} to {}{}",
    .points = "points {} to {}{}",
    .upfront_fee = "upfront fee {} to {}{}",
    .annual_premium = "annual premium {} to {}{}",
    .annual_premium_months = "months that carry the premium {} to {}{}",
    .single_premium = "single premium of mortgage insurance {} to {}{}",
    .contribution_cap = "cap on contributions {} to {}{}",
    .homeowner = "homeowner's insurance, a year for each $1,000 of dwelling value, {} to {}{}",
    .insurance_changes = "mortgage insurance changes, {} to {}{}",
    .insurance_starts = "mortgage insurance starts, {}{}",
    .insurance_ends = "mortgage insurance is not needed any more, was {}",
    .row = ": {}",
    .ltv = "LTV",
    .down_payment = "down payment",
    .term = "term",
    .base_loan = "base loan",
    .loan = "loan",
    .score = "credit score",
    .price = "price",
    .dwelling_value = "dwelling value",
    .over = "over {}",
    .from = "from {}",
    .under = "under {}",
    .up_to = "up to {}",
    .band_months = "{} months",
};

} // namespace quoin::english
