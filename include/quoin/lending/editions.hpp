// Editions: which of a list of dated rules to go by on a day, and what is known where none is in
// force.
//
//   const auto limit = edition_on(program.ratios, day);
//   if (!limit.is_known()) ...               // refuse, and say why
//   if (const auto* rule = limit.rule()) ... // else there is no such rule
#pragma once

#include <array>
#include <string>
#include <vector>

#include <quoin/exact/broken.hpp>
#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// The lists of dated rules that a loan is read against; the first are those of Rule, in its order.
enum class RuleList {
    maximum_ltv,
    loan_limit,
    upfront_fee,
    annual_fee,
    annual_fee_months,
    contribution_cap,
    points_adjustment,
    mi_factors,
    single_premium,
    homeowner,
    ratios,
    residual_income,
};
template <>
inline constexpr auto
    codes<RuleList> = coded<RuleList>({{RuleList::maximum_ltv, "maximum_ltv"},
                                       {RuleList::loan_limit, "loan_limit"},
                                       {RuleList::upfront_fee, "upfront_fee"},
                                       {RuleList::annual_fee, "annual_fee"},
                                       {RuleList::annual_fee_months, "annual_fee_months"},
                                       {RuleList::contribution_cap, "contribution_cap"},
                                       {RuleList::points_adjustment, "points_adjustment"},
                                       {RuleList::mi_factors, "mortgage_insurance"},
                                       {RuleList::single_premium, "single_premium"},
                                       {RuleList::homeowner, "homeowner"},
                                       {RuleList::ratios, "ratios"},
                                       {RuleList::residual_income, "residual_income"}});
[[nodiscard]] constexpr RuleList list_of(Rule rule) { return static_cast<RuleList>(rule); }

/// A list that has no edition in force on its day, or no row for a loan.
struct ListGap {
    enum class Kind { ended, not_yet, no_row };

    RuleList list = RuleList::maximum_ltv;
    Kind kind = Kind::ended;
    Date edge; ///< ended: the first day after the last edition; not yet: the first of the first

    friend bool operator==(const ListGap&, const ListGap&) = default;
};

/// What a list says on a day.
template <class Item>
class Edition {
  public:
    enum class State {
        none,     ///< the list is empty: there is no such rule
        in_force, ///< found is
        ended,    ///< found was the last before
        not_yet,  ///< found will be the first
    };

    /// Takes up one edition of the list, in any order.
    void consider(const Item& item, Date day) {
        if (state_ == State::in_force) return;
        const bool over = item.until && *item.until <= day;
        if (item.in_force(day)) {
            set(State::in_force, item);
        } else if (over && (state_ != State::ended || *found_->until < *item.until)) {
            set(State::ended, item);
        } else if (!over && (state_ == State::none ||
                             (state_ == State::not_yet && *item.effective < *found_->effective))) {
            set(State::not_yet, item);
        }
    }

    [[nodiscard]] State state() const { return state_; }
    /// In force, the last, or the first to come; nullptr for an empty list alone.
    [[nodiscard]] const Item* found() const { return found_; }

    /// The rule to go by; nullptr: there is none, or, where is_known() is false, it is not known.
    [[nodiscard]] const Item* rule() const {
        return state_ == State::in_force || continues() ? found_ : nullptr;
    }
    [[nodiscard]] bool continues() const { return has_ended(After::continues); }
    /// The list has ended, and the rule with it.
    [[nodiscard]] bool is_no_more() const { return has_ended(After::ends); }
    [[nodiscard]] bool is_known() const {
        return state_ != State::not_yet && !has_ended(After::unknown);
    }
    /// Where no edition is in force. Precondition: it has ended, or is still to come.
    [[nodiscard]] ListGap gap(RuleList list) const {
        const bool ended = state_ == State::ended;
        ensure(found_ != nullptr, "a gap is that of an edition");
        return {list, ended ? ListGap::Kind::ended : ListGap::Kind::not_yet,
                ended ? *found_->until : *found_->effective};
    }

  private:
    void set(State state, const Item& item) {
        state_ = state;
        found_ = &item;
    }
    [[nodiscard]] bool has_ended(After after) const {
        return state_ == State::ended && found_->after == after;
    }

    State state_ = State::none;
    const Item* found_ = nullptr;
};

/// The days that a purchase looks its rules up on.
struct RuleDays {
    Date as_of;
    Date closing;

    [[nodiscard]] Date of(const BandTable& table) const {
        return table.by_closing ? closing : as_of;
    }
    [[nodiscard]] Date of(const Dated& /*rule*/) const { return as_of; }
};

/// The lists must outlive it.
template <class Item>
[[nodiscard]] Edition<Item> edition_on(const std::vector<Item>& list, const RuleDays& days) {
    Edition<Item> edition;
    for (const Item& item : list) edition.consider(item, days.of(item));
    return edition;
}

/// Lists that have no edition in force: those nothing is known of, and those whose last one is used
/// beyond its end.
struct ListGaps {
    std::vector<ListGap> unknown;
    std::vector<ListGap> continued;

    template <class Item>
    void note(RuleList list, const Edition<Item>& edition) {
        if (!edition.is_known()) unknown.push_back(edition.gap(list));
        if (edition.continues()) continued.push_back(edition.gap(list));
    }
};

/// What a program's lists say on the days of a purchase.
struct ProgramEditions {
    std::array<Edition<BandTable>, rule_count> rules;
    Edition<RatioLimits> ratios;
    Edition<ResidualIncome> residual_income;

    [[nodiscard]] ListGaps gaps() const;
};
[[nodiscard]] ProgramEditions editions_of(const LoanProgram& program, const RuleDays& days);

/// The points adjustments of a sheet for a program: adjustments of one name are the editions of
/// one; those without a name are each their own.
[[nodiscard]] std::vector<const BandTable*> adjustments_on(const RateSheet& sheet,
                                                           const std::string& program,
                                                           const RuleDays& days, ListGaps& gaps);

/// A last edition that ends soon, or has ended already.
struct Ending {
    RuleList list = RuleList::maximum_ltv;
    std::string name; ///< the table's own; may be empty
    Date until;
    After after = After::unknown;
};

/// The last editions that end before `by`, as the lists stand on `day`.
[[nodiscard]] std::vector<Ending> endings_of(const LoanProgram& program, Date day, Date by);
[[nodiscard]] std::vector<Ending> endings_of(const RateSheet& sheet, Date day, Date by);
[[nodiscard]] std::vector<Ending> endings_of(const Place& place, Date day, Date by);

} // namespace quoin
