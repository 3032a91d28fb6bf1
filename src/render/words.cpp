// The wording that renderings share.
#include <quoin/render/words.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "band_words.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>

namespace quoin {
namespace {

std::string over_words(const Refusal& refusal, const char* limit) {
    return fmt::format(
        "{} {} is over {}, {}: {} {} is needed",
        refusal.with_premium ? "loan with the premium in it," : "base loan", dollars(refusal.found),
        limit, dollars(refusal.limit), dollars(refusal.found - refusal.limit),
        refusal.with_premium ? "less of it, by more down or the premium in cash," : "more down");
}

} // namespace

std::string_view words(RuleList list) {
    switch (list) {
    case RuleList::maximum_ltv:
        return "the most that the program lends";
    case RuleList::loan_limit:
        return "the program's loan limit";
    case RuleList::upfront_fee:
        return "the program's upfront fee";
    case RuleList::annual_fee:
        return "the program's annual fee";
    case RuleList::annual_fee_months:
        return "how long the program's annual fee is paid";
    case RuleList::contribution_cap:
        return "the most that sellers may contribute";
    case RuleList::points_adjustment:
        return "the sheet's adjustment of points";
    case RuleList::mi_factors:
        return "the price of mortgage insurance";
    case RuleList::single_premium:
        return "the single premium of mortgage insurance";
    case RuleList::homeowner:
        return "the rate of homeowner's insurance";
    case RuleList::ratios:
        return "the part of the income that the program lets housing and debts take";
    case RuleList::residual_income:
        return "what the program wants left of the income to live on";
    }
    return {};
}

std::string words(const ListGap& gap) {
    const std::string list(words(gap.list));
    switch (gap.kind) {
    case ListGap::Kind::ended:
        return fmt::format("{} after {} is not in the data", list,
                           long_date(plus_days(gap.edge, -1)));
    case ListGap::Kind::not_yet:
        return fmt::format("{} before {} is not in the data", list, long_date(gap.edge));
    case ListGap::Kind::no_row:
        return fmt::format("{} for a loan like this one is not in the data", list);
    }
    return {};
}

std::vector<std::string> words_of(const std::vector<ListGap>& gaps) {
    std::vector<std::string> list;
    for (const ListGap& gap : gaps) list.push_back(words(gap));
    return list;
}

std::string continued_caution(std::string_view program, const ListGap& gap) {
    return fmt::format("{}: {}; the one in force until then is used.", program, words(gap));
}

std::string words(const Refusal& refusal) {
    switch (refusal.why) {
    case Barred::rule_unknown:
        return refusal.gap ? words(*refusal.gap) : std::string();
    case Barred::term_not_offered:
        return "the program has no loans of this term";
    case Barred::place_not_eligible:
        return "the home is outside the program's eligible area";
    case Barred::score_needed:
        return "the program's limit depends on a credit score, and none is given";
    case Barred::score_below_minimum:
        return "the credit score is below the program's minimum";
    case Barred::ltv_over_maximum:
        return over_words(refusal, "the program's most");
    case Barred::loan_over_limit:
        return over_words(refusal, "the area's limit");
    case Barred::rate_not_offered:
        return "the rate sheet has no such rate for this program, term and lock";
    case Barred::mi_not_offered:
        return "no mortgage insurance factor for this LTV, score and term";
    case Barred::insurance_not_offered:
        return "no homeowner's insurance rate for a dwelling of this value";
    case Barred::buydown_not_allowed:
        return "the temporary buydown does not fit the note rate or the term";
    case Barred::cash_short:
        return fmt::format("cash of {} is {} short of the least that is needed, {}",
                           dollars(refusal.found), dollars(refusal.limit - refusal.found),
                           dollars(refusal.limit));
    }
    return {};
}

std::string refused_words(const std::string& scenario, const Refusal& refusal) {
    return scenario + " cannot be had: " + words(refusal);
}

std::string refused_lines(const ScenarioTerms& terms, const std::vector<Refusal>& refusals) {
    std::string out;
    for (const Refusal& refusal : refusals) out += refused_words(terms.name, refusal) + "\n";
    return out;
}

namespace {

std::string value_words(const JumpSide& side, const char* unit) {
    return side.value.empty() ? "none" : side.value + unit;
}

/// ": dwelling value over $300,000 up to $400,000", of the row that is read now; empty where the
/// figure comes from no band.
std::string row_words(const Jump& jump) {
    const std::string band = band_words(jump.after.band, jump.before.band);
    return band.empty() ? band : ": " + band;
}

/// "3.45 to 3.55: dwelling value over $300,000 up to $400,000".
std::string change_words(const Jump& jump, const char* unit) {
    return value_words(jump.before, unit) + " to " + value_words(jump.after, unit) +
           row_words(jump);
}

std::string insurance_words(const Jump& jump) {
    const char* unit = " % a year";
    if (jump.before.value.empty()) {
        return "mortgage insurance starts, " + value_words(jump.after, unit) + row_words(jump);
    }
    if (jump.after.value.empty()) {
        return "mortgage insurance is not needed any more, was " + value_words(jump.before, unit);
    }
    return "mortgage insurance changes, " + change_words(jump, unit);
}

} // namespace

std::string words(const Jump& jump, const Added& added) {
    if (is_of_the_place(jump.lookup) || added.ltv_before == added.ltv_after) return words(jump);
    return fmt::format("LTV {} to {} %: {}", fixed(added.ltv_before.value(), 2),
                       fixed(added.ltv_after.value(), 2), words(jump));
}

std::vector<std::string> jump_words(const Added& added) {
    std::vector<std::string> list;
    for (const Jump& jump : added.jumps) list.push_back(words(jump, added));
    return list;
}

std::string words(const Jump& jump) {
    const auto from_to = [&](const char* unit) { return change_words(jump, unit); };
    switch (jump.lookup) {
    case Lookup::note_rate:
        return "note rate " + from_to(" %");
    case Lookup::points_adjustment:
        return "points " + from_to("");
    case Lookup::upfront_fee:
        return "upfront fee " + from_to(" %");
    case Lookup::annual_fee:
        return "annual premium " + from_to(" %");
    case Lookup::annual_fee_months:
        return "months that carry the premium " + from_to("");
    case Lookup::mi_factor:
        return insurance_words(jump);
    case Lookup::single_premium:
        return "single premium of mortgage insurance " + from_to(" %");
    case Lookup::contribution_cap:
        return "cap on contributions " + from_to(" %");
    case Lookup::homeowner:
        return "homeowner's insurance, a year for each $1,000 of dwelling value, " + from_to("");
    }
    return {};
}

std::string words(CreditUse use, const ScenarioAnswer& scenario) {
    switch (use) {
    case CreditUse::points:
        return "points";
    case CreditUse::buydown:
        return "the temporary buydown";
    case CreditUse::upfront_fee:
        return scenario.insurance.paid_up ? "the single premium" : "the upfront fee";
    case CreditUse::closing_costs:
        return "closing costs";
    case CreditUse::prepaids:
        return "prepaids and escrow";
    case CreditUse::down_payment:
        return "the down payment";
    }
    return {};
}

std::string term_text(Months term) {
    if (term.count() % 12 != 0) return fmt::format("{} months", term.count());
    return term.count() == 12 ? "1 year" : fmt::format("{} years", term.count() / 12);
}

namespace {

/// ", for 7 years; then 30-day average SOFR (3.960 % on 18 November 2026) + 2.750, ..."
std::string adjustable_words(const AdjustableAnswer& a) {
    return fmt::format(
        ", its rate fixed for {}, then every {} months the {} ({} on {}) + {}, changing by at most "
        "{} points at first, {} later and {} above the start, so never over {}: at the worst {} a "
        "month of principal and interest",
        term_text(a.initial), a.reset.count(), a.index.name, percent_text(a.index.value.value(), 3),
        long_date(a.index.date), fixed(a.margin.value(), 3), a.caps.first.value().text(),
        a.caps.periodic.value().text(), a.caps.life.value().text(), rate_text(a.ceiling),
        dollars(a.largest_payment()));
}

std::string extra_words(Money extra) {
    if (extra.is_zero()) return {};
    return fmt::format(", {} extra principal a month by choice", dollars(extra));
}

} // namespace

std::string terms_line(const ScenarioTerms& terms) {
    return fmt::format("{}: {} note rate, {} points, APR {}, {}, {} down ({}), LTV {}, "
                       "{}-day lock{}{}",
                       terms.program, rate_text(terms.rate), fixed(terms.points.value(), 3),
                       apr_text(terms.apr, "not to be had"), term_text(terms.term),
                       dollars(terms.down_payment), percent_text(terms.down_percent.value(), 2),
                       percent_text(terms.ltv.value(), 2), terms.lock_days,
                       extra_words(terms.extra_principal),
                       terms.adjustable ? adjustable_words(*terms.adjustable) : "");
}

void add_continued_cautions(const std::vector<ScenarioTerms>& terms,
                            std::vector<std::string>& notes) {
    for (const ScenarioTerms& t : terms) {
        for (const ListGap& gap : t.continued) {
            std::string note = continued_caution(t.program, gap);
            if (std::find(notes.begin(), notes.end(), note) == notes.end()) {
                notes.push_back(std::move(note));
            }
        }
    }
}

namespace {

/// A sentence for each length of lock that ends before the closing.
void add_lock_cautions(const Heading& h, const std::vector<ScenarioTerms>& terms,
                       std::vector<std::string>& notes) {
    std::vector<int> told;
    for (const ScenarioTerms& t : terms) {
        if (t.lock_ends >= h.closing) continue;
        if (std::find(told.begin(), told.end(), t.lock_days) != told.end()) continue;
        told.push_back(t.lock_days);
        notes.push_back(fmt::format("A {}-day lock taken now ends on {}, before the closing: the "
                                    "rate can move by then.",
                                    t.lock_days, long_date(t.lock_ends)));
    }
}

/// What follows extra principal and what does not, where any is paid. Source: payments are
/// disclosed as scheduled, 12 CFR 1026.37(l) and 1026.38(o).
void add_extra_caution(const std::vector<ScenarioTerms>& terms, std::vector<std::string>& notes) {
    std::vector<std::string> told;
    for (const ScenarioTerms& t : terms) {
        if (t.extra_principal.is_zero()) continue;
        told.push_back(fmt::format("{} a month ({})", dollars(t.extra_principal), t.name));
    }
    if (told.empty()) return;
    notes.push_back(fmt::format(
        "Extra principal of {} is by choice. Totals and costs over years, the number of payments "
        "and the end of mortgage insurance count it; the settled month, the APR and the disclosed "
        "cost of credit do not (12 CFR 1026.37(l), 1026.38(o): payments as scheduled). Taxes, "
        "insurance and dues count to the end of the term.",
        fmt::join(told, ", ")));
}

} // namespace

std::string closing_words(const CashToClose& cash) {
    const Money left = cash.to_close();
    return left < Money{} ? dollars(-left) + " back at the closing"
                          : dollars(left) + " to bring to the closing";
}

std::string estimate_caution(const Heading& h) {
    return fmt::format(
        "An estimate as of {}: not a Loan Estimate, not an approval, not an offer to lend. A "
        "licensed loan originator gives those{}; the published programs and local law decide. "
        "You may choose any lender.",
        long_date(h.as_of),
        h.originator.empty() ? std::string(" (none is named here yet)")
                             : fmt::format(" ({})", h.originator));
}

std::vector<std::string> loan_cautions(const Heading& h, const std::vector<ScenarioTerms>& terms) {
    std::vector<std::string> notes{estimate_caution(h)};
    notes.push_back(fmt::format(
        "Rates of {} from {} ({}), good through {}{}; they hold only when locked.{}",
        long_date(h.rates_date), h.lender, h.license, long_date(h.rates_good_through),
        h.as_of > h.rates_good_through ? " (that day has passed: ask for new ones)" : "",
        h.sample_rates ? " They are samples, not anybody's offer." : ""));
    notes.push_back(fmt::format(
        "Taxes, insurance, dues and closing costs as known for {}{}. Interest runs from the "
        "closing; "
        "the APR counts prepaid interest and the odd first period. Totals over years keep taxes, "
        "insurance and dues as they are today.",
        h.place, h.sample_place ? " (sample figures)" : ""));
    add_continued_cautions(terms, notes);
    add_lock_cautions(h, terms, notes);
    const bool adjustable =
        std::any_of(terms.begin(), terms.end(), [](const auto& each) { return each.adjustable; });
    if (adjustable) {
        notes.emplace_back(
            "Where a rate is adjustable, its APR and totals take the index to stay where it is "
            "(comment 17(c)(1)-10 to 12 CFR 1026); it will move, and the payment with it.");
    }
    add_extra_caution(terms, notes);
    return notes;
}

std::string work_caution() {
    return "Marked work on gas, wiring, plumbing or structure follows local code, needs a permit, "
           "and is done by a licensed trade, now or later.";
}

std::string agent_caution() {
    return "For the agent: prices, and how programs work in general, are yours to explain; "
           "presenting particular loan terms for gain can need a license of its own (12 CFR "
           "1008.103), and an advertised payment brings duties (12 CFR 1026.24).";
}

std::string heading_text(const Heading& h, std::string_view title) {
    std::string out = fmt::format("{}\n", title);
    out += fmt::format("{}, {}\n", h.community, h.builder);
    out += fmt::format("{} ({}, {} sq ft), elevation {}, lot {}, for {}\n", h.plan, h.style,
                       grouped(h.square_feet), h.elevation, h.lot, h.buyer);
    out += fmt::format("as of {}; price book {}, in force to {}; closing {}\n", long_date(h.as_of),
                       h.price_book_version, long_date(h.price_book_expires), long_date(h.closing));
    if (!h.prepared_by.empty()) out += fmt::format("prepared by {}\n", h.prepared_by);
    return out;
}

std::string joined(const std::vector<std::string>& names) {
    return fmt::format("{}", fmt::join(names, ", "));
}

std::string footing_text(const std::vector<std::string>& notes) {
    constexpr std::size_t footing_width = 100;
    std::string out;
    for (const std::string& note : notes) out += "\n" + paragraph(note, "", "", footing_width);
    return out;
}

} // namespace quoin
