// Cautions that several answers say.
#include <quoin/render/cautions.hpp>

#include <algorithm>
#include <iterator>

#include "words/cautions.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/words.hpp>

namespace quoin {

Caution continued_caution(std::string_view program, const ListGap& gap, const Catalogue& say) {
    return {CautionCode::rule_continued,
            say.cautions.rule_continued(program, words(gap, say)),
            {std::string(program), std::string(code_of(gap.list)), gap.edge.text()}};
}

void add_continued_cautions(const std::vector<ScenarioTerms>& terms, Cautions& cautions,
                            const Catalogue& say) {
    for (const ScenarioTerms& t : terms) {
        for (const ListGap& gap : t.continued) {
            Caution caution = continued_caution(t.program, gap, say);
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
                       Cautions& cautions, const Catalogue& say) {
    std::vector<int> told;
    for (const ScenarioTerms& t : terms) {
        if (t.lock_ends >= h.closing) continue;
        if (std::find(told.begin(), told.end(), t.lock_days) != told.end()) continue;
        told.push_back(t.lock_days);
        cautions.push_back({CautionCode::lock_ends_first,
                            say.cautions.lock_ends_first(t.lock_days, t.lock_ends),
                            {std::to_string(t.lock_days)}});
    }
}

/// What follows extra principal and what does not, where any is paid. Source: payments are
/// disclosed as scheduled, 12 CFR 1026.37(l) and 1026.38(o).
void add_extra_caution(const std::vector<ScenarioTerms>& terms, Cautions& cautions,
                       const Catalogue& say) {
    std::vector<std::string> told;
    std::vector<std::string> names;
    for (const ScenarioTerms& t : terms) {
        if (t.extra_principal.is_zero()) continue;
        told.push_back(say.cautions.extra_of(t.extra_principal, t.name));
        names.push_back(t.name);
    }
    if (told.empty()) return;
    cautions.push_back({CautionCode::extra_principal,
                        say.cautions.extra_principal(joined(told, Joint::both, say)),
                        std::move(names)});
}

std::string rates_words(const Heading& h, const CautionWords& say) {
    return say.rates_until_locked(h.lender, h.rates_date, h.license, h.rates_good_through,
                                  h.as_of > h.rates_good_through ? say.rates_out_of_date()
                                                                 : std::string(),
                                  h.sample_rates ? say.sample_rates() : std::string());
}

} // namespace

Caution estimate_caution(const Heading& h, const Catalogue& say) {
    return {CautionCode::estimate,
            say.cautions.estimate(h.as_of, h.originator.empty()
                                               ? say.cautions.no_originator()
                                               : say.cautions.originator(h.originator))};
}

Cautions loan_cautions(const Heading& h, const std::vector<ScenarioTerms>& terms,
                       const Catalogue& say) {
    const CautionWords& of = say.cautions;
    Cautions cautions{estimate_caution(h, say)};
    cautions.push_back({CautionCode::rates_until_locked, rates_words(h, of)});
    cautions.push_back(
        {CautionCode::costs_as_known,
         of.costs_as_known(h.place, h.sample_place ? of.sample_place() : std::string())});
    add_continued_cautions(terms, cautions, say);
    add_lock_cautions(h, terms, cautions, say);
    const bool adjustable =
        std::any_of(terms.begin(), terms.end(), [](const auto& each) { return each.adjustable; });
    if (adjustable) cautions.push_back({CautionCode::rate_adjustable, of.rate_adjustable()});
    add_extra_caution(terms, cautions, say);
    return cautions;
}

Caution work_caution(const Catalogue& say) {
    return {CautionCode::licensed_trades, say.cautions.licensed_trades()};
}

Caution agent_caution(const Catalogue& say) {
    return {CautionCode::agent_license, say.cautions.agent_license()};
}

Cautions with_loan_cautions(Cautions own, const Heading& heading,
                            const std::vector<ScenarioTerms>& terms, const Catalogue& say) {
    Cautions loans = loan_cautions(heading, terms, say);
    std::move(loans.begin(), loans.end(), std::back_inserter(own));
    return own;
}

std::vector<std::string> words_of(const Cautions& cautions) {
    std::vector<std::string> words;
    for (const Caution& caution : cautions) words.push_back(caution.words);
    return words;
}

Blocks footing_text(const Cautions& cautions) {
    Blocks out;
    for (const Caution& each : cautions) out += "\n" + Blocks(Indented{each.words, "", ""});
    return out;
}

} // namespace quoin
