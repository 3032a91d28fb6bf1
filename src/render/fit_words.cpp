// Saying why nothing can be chosen for a home, and what has to be known beside a choice.
#include "fit_words.hpp"

#include "own_cautions.hpp"
#include "words/fit.hpp"
#include "words/reasons.hpp"
#include <quoin/words/joined.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

std::string words(const FitRule& rule, const Catalogue& say) {
    const ContradictionWords& phrases = say.reasons.contradiction;
    if (rule.other.empty()) return phrases.rule(rule.option, words_of(rule.why, say));
    return rule.why.kind == WhyNot::Kind::excludes
               ? phrases.exclude_each_other(rule.option, rule.other)
               : phrases.only_one_of(rule.option, rule.other);
}

} // namespace

std::string words(const FitBarred& barred, const Catalogue& say) {
    const ContradictionWords& phrases = say.reasons.contradiction;
    switch (barred.kind) {
    case FitBarred::Kind::selection: {
        const FitRule& rule = barred.rules.front();
        return phrases.falls_out(rule.option, words_of(rule.why, say));
    }
    case FitBarred::Kind::must_have: {
        const FitRule& rule = barred.rules.front();
        return phrases.must_have(rule.option, words_of(rule.why, say));
    }
    case FitBarred::Kind::contradiction:
        break;
    }
    const std::string names = joined(barred.must_haves, Joint::both, say);
    std::string text = barred.must_haves.size() > 1 ? phrases.cannot_stand_together(names)
                                                    : phrases.cannot_stand(names);
    for (std::size_t i = 0; i < barred.rules.size(); ++i) {
        text += (i == 0 ? ": " : "; ") + words(barred.rules[i], say);
    }
    return text;
}

Cautions cautions_of(const FitAnswer& answer, const Catalogue& say) {
    Cautions notes = with_loan_cautions({{CautionCode::worth_of_wishes, say.fit.worth_of_wishes()}},
                                        answer.heading, terms_of(answer.scenarios), say);
    notes.push_back(agent_caution(say));
    return notes;
}

std::vector<std::string> instead_words(const FitLeftOut& left, const Catalogue& say) {
    std::vector<std::string> names = left.instead;
    if (!left.as_chosen.empty()) names.push_back(say.fit.as_chosen(left.as_chosen));
    return names;
}

} // namespace quoin
