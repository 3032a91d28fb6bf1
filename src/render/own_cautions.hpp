// The cautions of an answer, shared by its text and its JSON.
#pragma once

#include <quoin/render/cautions.hpp>

namespace quoin {

struct AddsAnswer;
struct CashAnswer;
struct CreditAnswer;
struct QuoteAnswer;
struct ShiftAnswer;
struct TourAnswer;

[[nodiscard]] Cautions cautions_of(const AddsAnswer& answer);
[[nodiscard]] Cautions cautions_of(const CashAnswer& answer);
[[nodiscard]] Cautions cautions_of(const CreditAnswer& answer);
[[nodiscard]] Cautions cautions_of(const QuoteAnswer& answer);
[[nodiscard]] Cautions cautions_of(const ShiftAnswer& answer);
[[nodiscard]] Cautions cautions_of(const TourAnswer& answer);

} // namespace quoin
