// What must stand beside an answer, shared by its text and its JSON.
#pragma once

#include <string>
#include <vector>

namespace quoin {

struct AddsAnswer;
struct CashAnswer;
struct CreditAnswer;
struct QuoteAnswer;
struct ShiftAnswer;
struct TourAnswer;

[[nodiscard]] std::vector<std::string> cautions_of(const AddsAnswer& answer);
[[nodiscard]] std::vector<std::string> cautions_of(const CashAnswer& answer);
[[nodiscard]] std::vector<std::string> cautions_of(const CreditAnswer& answer);
[[nodiscard]] std::vector<std::string> cautions_of(const QuoteAnswer& answer);
[[nodiscard]] std::vector<std::string> cautions_of(const ShiftAnswer& answer);
[[nodiscard]] std::vector<std::string> cautions_of(const TourAnswer& answer);

} // namespace quoin
