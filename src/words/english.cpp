// The catalogue in English.
#include "english/adds.hpp"
#include "english/afford.hpp"
#include "english/apps.hpp"
#include "english/cash.hpp"
#include "english/cautions.hpp"
#include "english/compare.hpp"
#include "english/credit.hpp"
#include "english/fit.hpp"
#include "english/glossary.hpp"
#include "english/heading.hpp"
#include "english/jumps.hpp"
#include "english/later.hpp"
#include "english/listing.hpp"
#include "english/order.hpp"
#include "english/parts.hpp"
#include "english/payment.hpp"
#include "english/problems.hpp"
#include "english/programs.hpp"
#include "english/quote.hpp"
#include "english/reasons.hpp"
#include "english/recheck.hpp"
#include "english/refusals.hpp"
#include "english/rooms.hpp"
#include "english/schedule.hpp"
#include "english/sheet.hpp"
#include "english/shift.hpp"
#include "english/shown.hpp"
#include "english/side_by_side.hpp"
#include "english/site.hpp"
#include "english/terms.hpp"
#include "english/tour.hpp"
#include "languages.hpp"

namespace quoin::english {

const Catalogue catalogue = {
    .language = Language::english,
    .terms = terms,
    .parts = parts,
    .refusals = refusals,
    .jumps = jumps,
    .heading = heading,
    .cautions = cautions,
    .side = side,
    .order = order,
    .quote = quote,
    .adds = adds,
    .tour = tour,
    .shown = shown,
    .site = site,
    .rooms = rooms,
    .later = later,
    .fit = fit,
    .compare = compare,
    .cash = cash,
    .credit = credit,
    .shift = shift,
    .schedule = schedule,
    .afford = afford,
    .sheet = sheet,
    .programs = programs,
    .recheck = recheck,
    .listing = listing,
    .payment = payment,
    .glossary = glossary,
    .problems = problems,
    .reasons = reasons,
    .apps = apps,
};

} // namespace quoin::english
