// Cautions that several answers say.
#include <quoin/render/cautions.hpp>

#include <algorithm>
#include <iterator>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {

Caution continued_caution(std::string_view program, const ListGap& gap) {
    return {CautionCode::rule_continued,
            fmt::format("{}: {}; the one in force until then is used.", program, words(gap)),
            {std::string(program), std::string(code_of(gap.list)), gap.edge.text()}};
}

void add_continued_cautions(const std::vector<ScenarioTerms>& terms, Cautions& cautions) {
    for (const ScenarioTerms& t : terms) {
        for (const ListGap& gap : t.continued) {
            Caution caution = continued_caution(t.program, gap);
            const bool told =
                std::any_of(cautions.begin(), cautions.end(), [&](const Caution& other) {
                    return other.code == caution.code && other.about == caution.about;
                });
            if (!told) cautions.push_back(std::move(caution));
        }
    }
}

namespace {

/// A sentence for each length of lock that ends before the closing.
void add_lock_cautions(const Heading& h, const std::vector<ScenarioTerms>& terms,
                       Cautions& cautions) {
    std::vector<int> told;
    for (const ScenarioTerms& t : terms) {
        if (t.lock_ends >= h.closing) continue;
        if (std::find(told.begin(), told.end(), t.lock_days) != told.end()) continue;
        told.push_back(t.lock_days);
        cautions.push_back({CautionCode::lock_ends_first,
                            fmt::format("A {}-day lock taken now ends on {}, before the closing: "
                                        "the rate can move by then.",
                                        t.lock_days, long_date(t.lock_ends)),
                            {std::to_string(t.lock_days)}});
    }
}

/// What follows extra principal and what does not, where any is paid. Source: payments are
/// disclosed as scheduled, 12 CFR 1026.37(l) and 1026.38(o).
void add_extra_caution(const std::vector<ScenarioTerms>& terms, Cautions& cautions) {
    std::vector<std::string> told;
    std::vector<std::string> names;
    for (const ScenarioTerms& t : terms) {
        if (t.extra_principal.is_zero()) continue;
        told.push_back(fmt::format("{} a month ({})", dollars(t.extra_principal), t.name));
        names.push_back(t.name);
    }
    if (told.empty()) return;
    std::string words = fmt::format(
        "Extra principal of {} is by choice. Totals and costs over years, the number of payments "
        "and the end of mortgage insurance count it; the settled month, the APR and the disclosed "
        "cost of credit do not (12 CFR 1026.37(l), 1026.38(o): payments as scheduled). Taxes, "
        "insurance and dues count to the end of the term.",
        fmt::join(told, ", "));
    cautions.push_back({CautionCode::extra_principal, std::move(words), std::move(names)});
}

} // namespace

Caution estimate_caution(const Heading& h) {
    return {
        CautionCode::estimate,
        fmt::format(
            "An estimate as of {}: not a Loan Estimate, not an approval, not an offer to lend. A "
            "licensed loan originator gives those{}; the published programs and local law decide. "
            "You may choose any lender.",
            long_date(h.as_of),
            h.originator.empty() ? std::string(" (none is named here yet)")
                                 : fmt::format(" ({})", h.originator))};
}

Cautions loan_cautions(const Heading& h, const std::vector<ScenarioTerms>& terms) {
    Cautions cautions{estimate_caution(h)};
    cautions.push_back(
        {CautionCode::rates_until_locked,
         fmt::format("Rates of {} from {} ({}), good through {}{}; they hold only when locked.{}",
                     long_date(h.rates_date), h.lender, h.license, long_date(h.rates_good_through),
                     h.as_of > h.rates_good_through ? " (that day has passed: ask for new ones)"
                                                    : "",
                     h.sample_rates ? " They are samples, not anybody's offer." : "")});
    cautions.push_back(
        {CautionCode::costs_as_known,
         fmt::format("Taxes, insurance, dues and closing costs as known for {}{}. Interest runs "
                     "from the closing; the APR counts prepaid interest and the odd first period. "
                     "Totals over years keep taxes, insurance and dues as they are today.",
                     h.place, h.sample_place ? " (sample figures)" : "")});
    add_continued_cautions(terms, cautions);
    add_lock_cautions(h, terms, cautions);
    const bool adjustable =
        std::any_of(terms.begin(), terms.end(), [](const auto& each) { return each.adjustable; });
    if (adjustable) {
        cautions.push_back(
            {CautionCode::rate_adjustable,
             "Where a rate is adjustable, its APR and totals take the index to stay where it is "
             "(comment 17(c)(1)-10 to 12 CFR 1026); it will move, and the payment with it."});
    }
    add_extra_caution(terms, cautions);
    return cautions;
}

Caution work_caution() {
    return {CautionCode::licensed_trades,
            "* Marked work on gas, wiring, plumbing or structure follows local code, needs a "
            "permit, and is done by a licensed trade, now or later."};
}

Caution agent_caution() {
    return {CautionCode::agent_license,
            "For the agent: prices, and how programs work in general, are yours to explain; "
            "presenting particular loan terms for gain can need a license of its own (12 CFR "
            "1008.103), and an advertised payment brings duties (12 CFR 1026.24)."};
}

Cautions with_loan_cautions(Cautions own, const Heading& heading,
                            const std::vector<ScenarioTerms>& terms) {
    Cautions loans = loan_cautions(heading, terms);
    std::move(loans.begin(), loans.end(), std::back_inserter(own));
    return own;
}

std::vector<std::string> words_of(const Cautions& cautions) {
    std::vector<std::string> words;
    for (const Caution& caution : cautions) words.push_back(caution.words);
    return words;
}

std::string footing_text(const Cautions& cautions) {
    constexpr std::size_t footing_width = 100;
    std::string out;
    for (const Caution& each : cautions) out += "\n" + paragraph(each.words, "", "", footing_width);
    return out;
}

} // namespace quoin
