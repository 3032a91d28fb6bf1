// Saying why nothing can be chosen for a home.
#include "fit_words.hpp"

#include "words/fit.hpp"
#include "words/reasons.hpp"
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

std::string all_of(const std::vector<std::string>& names, const ContradictionWords& say) {
    std::string row;
    for (std::size_t i = 0; i + 1 < names.size(); ++i) row += (i == 0 ? "" : ", ") + names[i];
    return row.empty() ? names.front() : say.both(row, names.back());
}

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
    const std::string names = all_of(barred.must_haves, phrases);
    std::string text = barred.must_haves.size() > 1 ? phrases.cannot_stand_together(names)
                                                    : phrases.cannot_stand(names);
    for (std::size_t i = 0; i < barred.rules.size(); ++i) {
        text += (i == 0 ? ": " : "; ") + words(barred.rules[i], say);
    }
    return text;
}

std::vector<std::string> instead_words(const FitLeftOut& left, const Catalogue& say) {
    std::vector<std::string> names = left.instead;
    if (!left.as_chosen.empty()) names.push_back(say.fit.as_chosen(left.as_chosen));
    return names;
}

} // namespace quoin
