// Taking out of an inquiry what its buyer keeps private, so that its figures stand.
#include "inquiry_to_take.hpp"

#include <algorithm>

#include <quoin/inquiry/sitting.hpp>

#include "edited.hpp"
#include "kept.hpp"
#include "least_score.hpp"

namespace quoin::apps {
namespace {

/// The members that tell what is private.
std::vector<std::string_view> members_of(Private what) {
    switch (what) {
    case Private::score:
        return {"score"};
    case Private::income:
        return {"income", "income_taxes", "household"};
    case Private::debts:
        return {"debts"};
    case Private::cash:
        return {"cash"};
    }
    return {};
}

class Taking {
  public:
    Taking(const Document& document, const Desk& desk, const Inquiry& inquiry,
           const std::set<Private>& with)
        : desk_(desk), asked_(inquiry), with_(with) {
        taken_.inquiry = kept(document.root, may_go(FileKind::inquiry));
        set(taken_.inquiry, "price_book", text_of_value("pricebook.json"));
    }

    [[nodiscard]] InquiryToTake take() {
        const bool by_cash = tells_cash();
        const bool own_scores = tells_scores();
        if (!with_.contains(Private::score)) say_least_scores();
        if (!with_.contains(Private::cash)) fix_down_payments();
        sort_out(Private::score, own_scores);
        sort_out(Private::income, false);
        sort_out(Private::debts, false);
        sort_out(Private::cash, by_cash);
        return std::move(taken_);
    }

  private:
    [[nodiscard]] bool tells_cash() const;
    [[nodiscard]] bool tells_scores();
    void say_least_scores();
    void say_score(Value& owner, const std::string& scenario, const std::vector<std::size_t>& of);
    void fix_down_payments();
    void sort_out(Private what, bool told);
    [[nodiscard]] std::vector<Value>& scenarios() {
        return member(taken_.inquiry, "scenarios")->items;
    }

    const Desk& desk_;
    const Inquiry& asked_;
    const std::set<Private>& with_;
    InquiryToTake taken_;
};

/// Whether any loan is made by the cash that there is.
bool Taking::tells_cash() const {
    return std::any_of(asked_.scenarios.begin(), asked_.scenarios.end(),
                       [](const Scenario& one) { return one.down.by == DownPayment::By::cash; });
}

/// Whether any loan has a score of its own.
bool Taking::tells_scores() {
    return std::any_of(scenarios().begin(), scenarios().end(),
                       [](const Value& one) { return one.find("score") != nullptr; });
}

void Taking::say_score(Value& owner, const std::string& scenario,
                       const std::vector<std::size_t>& of) {
    const int score = least_score(desk_, asked_, of);
    set(owner, "score", text_of_value(std::to_string(score)));
    taken_.scores.push_back({scenario, score});
}

/// In place of the inquiry's score, and of each that a scenario has of its own. Where no loan rests
/// on it, the inquiry's goes.
void Taking::say_least_scores() {
    std::vector<std::size_t> by_inquiry;
    for (std::size_t i = 0; i < scenarios().size(); ++i) {
        Value& scenario = scenarios()[i];
        if (scenario.find("score") != nullptr) {
            say_score(scenario, text_in(scenario, "name"), {i});
        } else {
            by_inquiry.push_back(i);
        }
    }
    if (taken_.inquiry.find("score") == nullptr) return;
    if (by_inquiry.empty()) {
        take_out(taken_.inquiry, "score");
        taken_.at_home.push_back(Private::score);
    } else {
        say_score(taken_.inquiry, {}, by_inquiry);
    }
}

/// A down payment of whatever the cash allows becomes what it came to. A loan that the cash does
/// not reach stays at the desk: nothing but the cash says why.
void Taking::fix_down_payments() {
    const PricedHome home = price_home(desk_.book, asked_.selection);
    const Sitting sitting(desk_, asked_);
    std::vector<Value> left;
    for (std::size_t i = 0; i < scenarios().size(); ++i) {
        Value& scenario = scenarios()[i];
        if (asked_.scenarios[i].down.by == DownPayment::By::cash) {
            const LoanFigures loan = loan_figures(sitting.rules(i), home, asked_.facts);
            const std::string name = text_in(scenario, "name");
            (loan.available() ? taken_.down_as_amount : taken_.loans_at_home).push_back(name);
            if (!loan.available()) continue;
            const Money down = loan.price - loan.base_loan;
            set(scenario, "down", object_of("amount", text_of_value(down.text())));
        }
        left.push_back(std::move(scenario));
    }
    scenarios() = std::move(left);
}

/// `told`: the loans tell it, whether or not the inquiry does besides.
void Taking::sort_out(Private what, bool told) {
    for (const std::string_view name : members_of(what)) {
        told = told || taken_.inquiry.find(name) != nullptr;
        const bool goes = with_.contains(what) || what == Private::score; // which was seen to
        if (!goes) take_out(taken_.inquiry, name);
    }
    if (!told || (what == Private::score && !taken_.scores.empty())) return;
    (with_.contains(what) ? taken_.in_file : taken_.at_home).push_back(what);
}

} // namespace

InquiryToTake inquiry_to_take(const Document& document, const Desk& desk, const Inquiry& inquiry,
                              const std::set<Private>& with) {
    return Taking(document, desk, inquiry, with).take();
}

} // namespace quoin::apps
