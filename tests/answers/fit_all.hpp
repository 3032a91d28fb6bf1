// Every choice there is, tried one after the other: what the search is held to.
//
// Nothing of the search is used, neither its list of items nor its limits on them. A choice is read
// off the price book itself: the selections stay, or more of them is had; of every other option of
// the book one form is in, or none; what is no wish is there only where a rule would break without
// it, or with less of it. The rules and the prices of a home are those of home/ and loan/, which
// have tests of their own.
#pragma once

#include <map>
#include <optional>

#include "fit_cases.hpp"

namespace quoin::test {

class EveryChoice {
  public:
    struct Figures {
        Money monthly;
        Money cash;
        friend auto operator<=>(const Figures&, const Figures&) = default;
    };
    struct Best {
        std::int64_t worth = 0; ///< billionths
        Figures least;          ///< of those of that worth: the least month, then the least cash
    };

    explicit EveryChoice(const FitCase& one)
        : one_(one), sitting_(one.desk, one.inquiry),
          rules_(sitting_.rules()[*one.question.scenario]), home_(one.inquiry.selection) {
        const auto size = one.desk.book.options.size();
        forms_.resize(size);
        most_before_.assign(size + 1, 0);
        for (std::size_t i = 0; i < size; ++i) {
            add_forms(Index<Option>(i));
            std::int64_t most = 0;
            for (const Form& form : forms_[i]) most = std::max(most, form.worth);
            most_before_[i + 1] = most_before_[i] + most;
        }
    }

    /// Nothing where no choice is within the limits.
    std::optional<Best> best() {
        best_.reset();
        seen_ = {};
        pruning_ = true;
        go(static_cast<int>(forms_.size()), 0);
        return best_;
    }

    /// The month and the cash of every choice whose loan can be had, whatever the limits.
    std::vector<FitLimits> homes() {
        best_.reset();
        seen_ = {};
        pruning_ = false;
        go(static_cast<int>(forms_.size()), 0);
        std::vector<FitLimits> found;
        for (const Figures& each : seen_) found.push_back({each.monthly, each.cash});
        return found;
    }

  private:
    struct Form {
        Pick pick;
        std::int64_t worth = 0;
        bool wish = false;
        bool must = false;
    };

    [[nodiscard]] const PriceBook& book() const { return one_.desk.book; }
    [[nodiscard]] Index<Plan> plan() const { return one_.inquiry.selection.plan; }

    [[nodiscard]] Decimal quantity(const Pick& pick) const {
        return quantity_of(at(book().options, pick.option), pick, plan());
    }
    /// A selected option gives way only to more of itself.
    [[nodiscard]] bool is_more(const Pick& pick, const Pick& selected) const {
        return pick.level > selected.level || quantity(pick) > quantity(selected);
    }

    /// The forms that a wish asks for, then those in which it may be needed.
    void add_forms(Index<Option> index) {
        const Option& option = at(book().options, index);
        const Pick* selected = one_.inquiry.selection.find(index);
        auto& forms = forms_[index.position()];
        const auto add = [&](const Form& form) {
            const bool level = option.kind == OptionKind::levels;
            if (level && !at(option.levels, form.pick.level.value()).price.on(plan())) return;
            if (selected == nullptr || is_more(form.pick, *selected)) forms.push_back(form);
        };
        for (const Wish& wish : one_.inquiry.wishes) {
            if (wish.pick.option != index) continue;
            add({wish.pick, one_.inquiry.worth_of(wish).billionths(), true, wish.must});
            const bool missing = selected == nullptr || is_more(wish.pick, *selected);
            if (wish.must && missing) musts_.push_back(wish.pick);
        }
        Pick least = selected != nullptr ? *selected : Pick{};
        least.option = index;
        if (option.kind == OptionKind::choice) least.choice = Index<Choice>{};
        if (option.kind != OptionKind::levels) return add({least});
        for (const Index<Level> level : indexes_of(option.levels)) {
            least.level = level;
            add({least});
        }
    }

    /// Options from the last to the first: generated needs point backwards, so that what needs an
    /// option is settled before it.
    void go(int end, std::int64_t worth) {
        if (pruning_ && best_ && worth + most_before_[static_cast<std::size_t>(end)] < best_->worth)
            return;
        if (end == 0) return finish(worth);
        const Index<Option> index(end - 1);
        for (const Form& form : forms_[index.position()]) {
            if (!form.wish && !is_asked_for(index)) continue;
            const Selection before = home_;
            put(form.pick);
            if (!form.wish) needed_.push_back(form.pick);
            if (!breaks_for_good()) go(end - 1, worth + form.worth);
            if (!form.wish) needed_.pop_back();
            home_ = before;
        }
        const bool must = std::any_of(musts_.begin(), musts_.end(),
                                      [&](const Pick& one) { return one.option == index; });
        if (!must) go(end - 1, worth);
    }

    void put(const Pick& pick) {
        for (Pick& present : home_.picks) {
            if (present.option == pick.option) {
                present = pick;
                return;
            }
        }
        home_.picks.push_back(pick);
    }

    [[nodiscard]] bool is_asked_for(Index<Option> index) const {
        if (!at(book().options, index).parts.empty()) return true; // maybe for what it brings
        return std::any_of(home_.picks.begin(), home_.picks.end(), [&](const Pick& pick) {
            const auto& needs = at(book().options, pick.option).needs;
            return std::any_of(needs.begin(), needs.end(), [&](const auto& need) {
                return std::any_of(need.begin(), need.end(),
                                   [&](const OptionRef& ref) { return ref.option == index; });
            });
        });
    }

    /// Only a need can still be met by what comes later.
    [[nodiscard]] bool breaks_for_good() const {
        const auto found = conflicts(book(), home_);
        return std::any_of(found.begin(), found.end(), [](const Conflict& conflict) {
            return conflict.barrier != Barrier::needs;
        });
    }

    void finish(std::int64_t worth) {
        for (const Pick& must : musts_) {
            if (std::find(home_.picks.begin(), home_.picks.end(), must) == home_.picks.end())
                return;
        }
        if (!conflicts(book(), home_).empty() || holds_what_nothing_needs()) return;
        const auto figures = figures_of_home();
        if (!figures) return;
        if (!pruning_) return seen_.push_back(*figures);
        const FitLimits& limits = one_.question.limits;
        if (figures->monthly > limits.monthly || figures->cash > limits.cash) return;
        const bool better =
            !best_ || worth > best_->worth || (worth == best_->worth && *figures < best_->least);
        if (better) best_ = Best{worth, *figures};
    }

    /// An option that is no wish, and that could be left out, or had as selected, or at a lower
    /// level, by every rule.
    [[nodiscard]] bool holds_what_nothing_needs() const {
        return std::any_of(needed_.begin(), needed_.end(), [&](const Pick& pick) {
            Selection less = home_;
            Pick* in_home = &*std::find(less.picks.begin(), less.picks.end(), pick);
            for (const Form& form : forms_[pick.option.position()]) {
                *in_home = form.pick;
                if (form.pick.level < pick.level && conflicts(book(), less).empty()) return true;
            }
            if (const Pick* selected = one_.inquiry.selection.find(pick.option)) {
                *in_home = *selected;
            } else {
                std::erase(less.picks, *in_home);
            }
            return conflicts(book(), less).empty();
        });
    }

    /// Nothing where the loan cannot be had. It reads only the total of the options.
    std::optional<Figures> figures_of_home() {
        const PricedHome priced = price_home(book(), home_);
        const auto known = known_.find(priced.options);
        if (known != known_.end()) return known->second;
        const LoanFigures loan = loan_figures(rules_, priced, one_.inquiry.facts);
        std::optional<Figures> figures;
        if (loan.available()) figures = Figures{loan.monthly.total(), loan.cash.needed()};
        return known_[priced.options] = figures;
    }

    const FitCase& one_;
    Sitting sitting_;
    const ScenarioRules& rules_;
    std::vector<std::vector<Form>> forms_;  ///< of each option of the book
    std::vector<std::int64_t> most_before_; ///< worth of the options before an index
    std::vector<Pick> musts_;
    bool pruning_ = true;

    Selection home_;
    std::vector<Pick> needed_; ///< in the home and no wishes
    std::optional<Best> best_;
    std::vector<Figures> seen_;
    std::map<Money, std::optional<Figures>> known_;
};

} // namespace quoin::test
