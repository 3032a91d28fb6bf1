// Wording the labels and the grounds of a recheck.
#include "figure_words.hpp"

#include "words/parts.hpp"
#include "words/recheck.hpp"
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

class SaidLabel {
  public:
    explicit SaidLabel(const Catalogue& say) : say_(say), of_(say.recheck.figures) {}

    std::string operator()(FigureCode code) const { return of_.code(code); }
    std::string operator()(const NamedLabel& label) const {
        return of_.named(label.figure, label.name);
    }
    std::string operator()(const PartLabel& label) const {
        return of_.named(label.figure, say_.parts.month(label.part));
    }
    std::string operator()(const NumberedLabel& label) const {
        return of_.numbered(label.figure, label.number);
    }
    std::string operator()(const ChoiceLabel& label) const {
        return of_.choice(label.option, label.choice);
    }
    std::string operator()(const CostLabel& label) const {
        return of_.cost(label.name, say_.parts.section(label.section), of_.paid_by(label.paid_by),
                        label.finance_charge ? of_.finance_charge() : std::string());
    }
    std::string operator()(const BillLabel& label) const {
        return of_.bill(billed(label), short_date(label.due));
    }
    std::string operator()(const UseLabel& label) const {
        const bool premium = label.single_premium && label.use == CreditUse::upfront_fee;
        return premium ? of_.of_credit_for_the_premium() : of_.of_credit(label.use);
    }

  private:
    [[nodiscard]] std::string billed(const BillLabel& label) const {
        if (label.part != MonthPart::property_tax) return say_.parts.month(label.part);
        return label.on_land ? of_.tax_on_land() : of_.tax();
    }

    const Catalogue& say_;
    const FigureWords& of_;
};

class SaidRule {
  public:
    explicit SaidRule(const Catalogue& say) : say_(say), of_(say.recheck.grounds) {}

    std::string operator()(const std::string& cited) const { return cited; }
    std::string operator()(CommonRule rule) const { return of_.rule(rule); }
    std::string operator()(const RuleOfFile& rule) const {
        return of_.rule_of(rule.rule, rule.file);
    }
    std::string operator()(const PremiumOfPlace& rule) const {
        return of_.premium(rule.place, say_.parts.month(rule.part));
    }

  private:
    const Catalogue& say_;
    const GroundWords& of_;
};

} // namespace

std::string label_words(const FigureLabel& label, const Catalogue& say) {
    return std::visit(SaidLabel(say), label);
}

std::string rule_words(const Ground& ground, const Catalogue& say) {
    const GroundWords& of = say.recheck.grounds;
    const std::string rule = std::visit(SaidRule(say), ground.rule);
    if (ground.no_more) return of.no_more(rule);
    return ground.bands.empty() ? rule : of.at_bands(rule, ground.bands);
}

std::string source_words(const Ground& ground, const Catalogue& say) {
    if (const auto* source = std::get_if<CommonSource>(&ground.source)) {
        return say.recheck.grounds.source(*source);
    }
    return std::get<std::string>(ground.source);
}

std::string ground_words(const Ground& ground, const Catalogue& say) {
    const GroundWords& of = say.recheck.grounds;
    std::string text;
    const auto add = [&](const std::string& part) {
        if (part.empty()) return;
        if (!text.empty()) text += "; ";
        text += part;
    };
    if (ground.rounding > 0) add(of.rounding(ground.rounding));
    add(rule_words(ground, say));
    if (ground.effective) add(of.from(short_date(*ground.effective)));
    if (ground.until) {
        const Date last = plus_days(*ground.until, -1);
        add((ground.beyond_end ? of.through_and_on : of.through)(short_date(last)));
    }
    const std::string source = source_words(ground, say);
    const bool known = ground.status && !source.empty();
    add(known ? of.source_known(of.status(*ground.status), source) : source);
    return text;
}

} // namespace quoin
