// The cautions of an answer, shared by its text and its JSON.
#pragma once

#include <quoin/render/cautions.hpp>

namespace quoin {

struct AddsAnswer;
struct CashAnswer;
struct CreditAnswer;
struct FitAnswer;
struct QuoteAnswer;
struct ShiftAnswer;
struct TourAnswer;

[[nodiscard]] Cautions cautions_of(const AddsAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Cautions cautions_of(const CashAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Cautions cautions_of(const CreditAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Cautions cautions_of(const FitAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Cautions cautions_of(const QuoteAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Cautions cautions_of(const ShiftAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Cautions cautions_of(const TourAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
