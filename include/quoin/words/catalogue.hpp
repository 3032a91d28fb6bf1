// Catalogue: everything that is said to people, in one language.
//
//   const Catalogue& say = catalogue_in(Language::english);
//   say.quote.contract_price()  ->  "Contract price"
//
// An answer holds values and codes; what is told of it is said with a catalogue. Its areas are in
// src/words, one file each; a language is a folder there.
#pragma once

#include <quoin/text/language.hpp>

namespace quoin {

struct AddsWords;
struct AffordWords;
struct AppsWords;
struct CashWords;
struct CautionWords;
struct CompareWords;
struct CreditWords;
struct FitWords;
struct GlossaryWords;
struct HeadingWords;
struct JumpWords;
struct LaterWords;
struct ListingWords;
struct OrderWords;
struct PartWords;
struct PaymentWords;
struct ProblemsWords;
struct ProgramsWords;
struct QuoteWords;
struct ReasonWords;
struct RecheckWords;
struct RefusalWords;
struct RoomsWords;
struct ScheduleWords;
struct SheetWords;
struct ShiftWords;
struct ShownWords;
struct SideWords;
struct SiteWords;
struct TermsWords;
struct TourWords;

struct Catalogue {
    Language language;
    const TermsWords& terms;
    const PartWords& parts;
    const RefusalWords& refusals;
    const JumpWords& jumps;
    const HeadingWords& heading;
    const CautionWords& cautions;
    const SideWords& side;
    const OrderWords& order;
    const QuoteWords& quote;
    const AddsWords& adds;
    const TourWords& tour;
    const ShownWords& shown;
    const SiteWords& site;
    const RoomsWords& rooms;
    const LaterWords& later;
    const FitWords& fit;
    const CompareWords& compare;
    const CashWords& cash;
    const CreditWords& credit;
    const ShiftWords& shift;
    const ScheduleWords& schedule;
    const AffordWords& afford;
    const SheetWords& sheet;
    const ProgramsWords& programs;
    const RecheckWords& recheck;
    const ListingWords& listing;
    const PaymentWords& payment;
    const GlossaryWords& glossary;
    const ProblemsWords& problems;
    const ReasonWords& reasons;
    const AppsWords& apps;
};

[[nodiscard]] const Catalogue& catalogue_in(Language language);

} // namespace quoin
