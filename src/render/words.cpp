// The wording that renderings share.
#include <quoin/render/words.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "band_words.hpp"
#include "words/heading.hpp"
#include "words/jumps.hpp"
#include "words/parts.hpp"
#include "words/refusals.hpp"
#include "words/terms.hpp"
#include <quoin/render/blocks.hpp>

namespace quoin {
namespace {

/// Which limit what is lent is over.
struct OverWords {
    const Phrase<Money, Money, Money>& base;
    const Phrase<Money, Money, Money>& with_premium;
};
std::string over_words(const Refusal& refusal, const OverWords& over) {
    const auto& phrase = refusal.with_premium ? over.with_premium : over.base;
    return phrase(refusal.found, refusal.limit, refusal.found - refusal.limit);
}

} // namespace

std::string words(RuleList list, const Catalogue& say) { return say.refusals.list(list); }

std::string words(const ListGap& gap, const Catalogue& say) {
    const std::string list = words(gap.list, say);
    switch (gap.kind) {
    case ListGap::Kind::ended:
        return say.refusals.ended(list, plus_days(gap.edge, -1));
    case ListGap::Kind::not_yet:
        return say.refusals.not_yet(list, gap.edge);
    case ListGap::Kind::no_row:
        return say.refusals.no_row(list);
    }
    return {};
}

std::vector<std::string> words_of(const std::vector<ListGap>& gaps, const Catalogue& say) {
    std::vector<std::string> list;
    for (const ListGap& gap : gaps) list.push_back(words(gap, say));
    return list;
}

std::string words(const Refusal& refusal, const Catalogue& say) {
    const RefusalWords& of = say.refusals;
    switch (refusal.why) {
    case Barred::rule_unknown:
        return refusal.gap ? words(*refusal.gap, say) : std::string();
    case Barred::term_not_offered:
        return of.term_not_offered();
    case Barred::place_not_eligible:
        return of.place_not_eligible();
    case Barred::score_needed:
        return of.score_needed();
    case Barred::score_below_minimum:
        return of.score_below_minimum();
    case Barred::ltv_over_maximum:
        return over_words(refusal, {of.base_over_program, of.all_over_program});
    case Barred::loan_over_limit:
        return over_words(refusal, {of.base_over_area, of.all_over_area});
    case Barred::rate_not_offered:
        return of.rate_not_offered();
    case Barred::mi_not_offered:
        return of.mi_not_offered();
    case Barred::insurance_not_offered:
        return of.insurance_not_offered();
    case Barred::buydown_not_allowed:
        return of.buydown_not_allowed();
    case Barred::cash_short:
        return of.cash_short(refusal.found, refusal.limit - refusal.found, refusal.limit);
    }
    return {};
}

std::string words(const std::vector<Refusal>& refusals, const Catalogue& say) {
    std::vector<std::string> list;
    for (const Refusal& refusal : refusals) list.push_back(words(refusal, say));
    return fmt::format("{}", fmt::join(list, "; "));
}

std::string refused_words(const std::string& scenario, const Refusal& refusal,
                          const Catalogue& say) {
    return say.refusals.cannot_be_had(scenario, words(refusal, say));
}

Blocks refused_lines(const ScenarioTerms& terms, const std::vector<Refusal>& refusals,
                     const Catalogue& say) {
    Blocks out;
    for (const Refusal& refusal : refusals)
        out += paragraph(refused_words(terms.name, refusal, say), "", "  ");
    return out;
}

namespace {

/// What a value is counted in.
enum class In { rate, percent, percent_a_year, dollars, points, nothing };

/// With so many decimals, or as many as it has.
std::string with_places(const std::string& number, int places) {
    const auto value = Decimal::parse(number);
    if (!value) return number;
    std::string text = fixed(*value, places);
    return Decimal::parse(text) == value ? text : number;
}

std::string value_words(const JumpSide& side, In unit, const JumpWords& say) {
    if (side.value.empty()) return say.none();
    switch (unit) {
    case In::rate:
        return say.percent(with_places(side.value, 3));
    case In::percent:
        return say.percent(side.value);
    case In::percent_a_year:
        return say.percent_a_year(side.value);
    case In::dollars:
        return "$" + with_places(side.value, 2);
    case In::points:
        return with_places(side.value, 3);
    case In::nothing:
        break;
    }
    return side.value;
}

/// " (dwelling value over $300,000 and up to $400,000)", of the row that is read now; empty where
/// the figure comes from no band.
std::string row_words(const Jump& jump, const JumpWords& say) {
    const std::string band = band_words(jump.after.band, jump.before.band, say);
    return band.empty() ? band : say.row(band);
}

std::string insurance_words(const Jump& jump, const JumpWords& say) {
    const std::string before = value_words(jump.before, In::percent_a_year, say);
    const std::string after = value_words(jump.after, In::percent_a_year, say);
    if (jump.before.value.empty()) return say.insurance_starts(after, row_words(jump, say));
    if (jump.after.value.empty()) return say.insurance_ends(before);
    return say.insurance_changes(before, after, row_words(jump, say));
}

} // namespace

std::string words(const Jump& jump, const Added& added, const Catalogue& say) {
    if (is_of_the_place(jump.lookup) || added.ltv_before == added.ltv_after) {
        return words(jump, say);
    }
    return say.jumps.ltv_moved(fixed(added.ltv_before.value(), 2),
                               fixed(added.ltv_after.value(), 2), words(jump, say));
}

std::vector<std::string> jump_words(const Added& added, const Catalogue& say) {
    std::vector<std::string> list;
    for (const Jump& jump : added.jumps) list.push_back(words(jump, added, say));
    return list;
}

std::string words(const Jump& jump, const Catalogue& catalogue) {
    const JumpWords& say = catalogue.jumps;
    const auto changed = [&](const Phrase<Text, Text, Text>& phrase, In unit) {
        return phrase(value_words(jump.before, unit, say), value_words(jump.after, unit, say),
                      row_words(jump, say));
    };
    switch (jump.lookup) {
    case Lookup::note_rate:
        return changed(say.note_rate, In::rate);
    case Lookup::points_adjustment:
        return changed(say.points, In::points);
    case Lookup::upfront_fee:
        return changed(say.upfront_fee, In::percent);
    case Lookup::annual_fee:
        return changed(say.annual_premium, In::percent);
    case Lookup::annual_fee_months:
        return changed(say.annual_premium_months, In::nothing);
    case Lookup::mi_factor:
        return insurance_words(jump, say);
    case Lookup::single_premium:
        return changed(say.single_premium, In::percent);
    case Lookup::contribution_cap:
        return changed(say.contribution_cap, In::percent);
    case Lookup::homeowner:
        return changed(say.homeowner, In::dollars);
    }
    return {};
}

std::string words(CreditUse use, const ScenarioAnswer& scenario, const Catalogue& say) {
    const bool premium = use == CreditUse::upfront_fee && scenario.insurance.paid_up;
    return premium ? say.parts.single_premium() : say.parts.use(use);
}

std::string term_text(Months term, const Catalogue& say) {
    const bool whole = term.count() % months_a_year == 0;
    return whole ? say.terms.years(term.count() / months_a_year) : say.terms.months(term.count());
}

namespace {

/// ". The rate is fixed for 7 years. Then it changes every 6 months to the 30-day average SOFR ..."
std::string adjustable_words(const AdjustableAnswer& a, const Catalogue& say) {
    return say.terms.adjustable(term_text(a.initial, say), a.reset.count(), a.index.name,
                                percent_text(a.index.value.value(), 3), a.index.date,
                                fixed(a.margin.value(), 3), a.caps.first.value().text(),
                                a.caps.periodic.value().text(), a.caps.life.value().text(),
                                a.ceiling, a.largest_payment());
}

/// "0.500 points", "lender credit of 0.125 points"
std::string points_words(Points points, const Catalogue& say) {
    const Decimal number = points.value();
    return number < Decimal{} ? say.terms.points_credit(fixed(-number, 3))
                              : say.terms.points(fixed(number, 3));
}

std::string extra_words(Money extra, const Catalogue& say) {
    return extra.is_zero() ? std::string() : say.terms.extra_principal(extra);
}

} // namespace

std::string terms_line(const ScenarioTerms& terms, const Catalogue& say) {
    return say.terms.line(
        terms.program, terms.rate, points_words(terms.points, say),
        terms.apr ? disclosed_text(terms.apr->percent()) : say.terms.no_apr(),
        term_text(terms.term, say), terms.down_payment, percent_text(terms.down_percent.value(), 2),
        percent_text(terms.ltv.value(), 2), terms.lock_days,
        extra_words(terms.extra_principal, say),
        terms.adjustable ? adjustable_words(*terms.adjustable, say) : std::string());
}

std::string closing_words(const CashToClose& cash, const Catalogue& say) {
    const Money left = cash.to_close();
    return left < Money{} ? say.terms.back(-left) : say.terms.to_bring(left);
}

std::string quantity_text(Decimal quantity, Unit unit, const Catalogue& say) {
    const std::string number = grouped(quantity);
    return unit == Unit::each ? say.parts.of_them(number)
                              : say.parts.so_much(number, say.parts.unit(unit));
}

Blocks heading_text(const Heading& h, std::string_view title, const Catalogue& say) {
    const HeadingWords& of = say.heading;
    Blocks out = std::string(title) + "\n" + of.community(h.community, h.builder) + "\n";
    out += paragraph(of.home(h.plan, h.style, grouped(h.square_feet), h.elevation, h.lot, h.buyer));
    out += paragraph(of.dates(h.as_of, h.price_book_version, h.price_book_expires, h.closing));
    if (!h.prepared_by.empty()) out += of.prepared_by(h.prepared_by) + "\n";
    return out;
}

} // namespace quoin
