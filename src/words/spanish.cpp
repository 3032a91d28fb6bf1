// The catalogue in Spanish.
#include "spanish/adds.hpp"
#include "spanish/afford.hpp"
#include "spanish/apps.hpp"
#include "spanish/cash.hpp"
#include "spanish/cautions.hpp"
#include "spanish/compare.hpp"
#include "spanish/credit.hpp"
#include "spanish/fit.hpp"
#include "spanish/glossary.hpp"
#include "spanish/heading.hpp"
#include "spanish/jumps.hpp"
#include "spanish/later.hpp"
#include "spanish/listing.hpp"
#include "spanish/order.hpp"
#include "spanish/parts.hpp"
#include "spanish/payment.hpp"
#include "spanish/problems.hpp"
#include "spanish/programs.hpp"
#include "spanish/quote.hpp"
#include "spanish/reasons.hpp"
#include "spanish/recheck.hpp"
#include "spanish/refusals.hpp"
#include "spanish/rooms.hpp"
#include "spanish/schedule.hpp"
#include "spanish/sheet.hpp"
#include "spanish/shift.hpp"
#include "spanish/shown.hpp"
#include "spanish/side_by_side.hpp"
#include "spanish/site.hpp"
#include "spanish/terms.hpp"
#include "spanish/tour.hpp"
#include "languages.hpp"

namespace quoin::spanish {

const Catalogue catalogue = {
    .language = Language::spanish,
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

} // namespace quoin::spanish
