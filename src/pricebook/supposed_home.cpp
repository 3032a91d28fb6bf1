// What goes together in a home, as far as it decides which changes are drawn together.
#include "supposed_home.hpp"

#include <algorithm>

namespace quoin {
namespace {

/// Sets what was open; false where it was set otherwise.
template <class T>
bool settle(std::optional<T>& known, const T& value) {
    if (!known) known = value;
    return *known == value;
}

/// Keeps to a list of what is possible, and settles on it where it is one alone.
template <class T>
bool keep_to(std::optional<T>& known, const std::vector<T>& possible) {
    if (possible.size() == 1) return settle(known, possible.front());
    return !known || std::count(possible.begin(), possible.end(), *known) > 0;
}

bool names(const std::vector<Index<Option>>& list, Index<Option> option) {
    return std::count(list.begin(), list.end(), option) > 0;
}

} // namespace

SupposedHome::SupposedHome(const PriceBook& book, Index<Plan> plan) : book_(&book), plan_(plan) {
    for (const Index<Option> option : indexes_of(book.options)) {
        const auto level = at(book.options, option).included_level_on(plan);
        if (level) had_[option].level = level;
    }
}

bool SupposedHome::meets(const OptionRef& wanted) const {
    const auto had = had_.find(wanted.option);
    return had != had_.end() && OptionRef{wanted.option, had->second.level}.meets(wanted);
}

bool SupposedHome::has(const DrawnIf& condition) const {
    if (condition.elevation) return elevation_ == condition.elevation;
    if (condition.grade) return grade_ == condition.grade;
    if (!condition.choice) return meets(*condition.option);
    const auto had = had_.find(condition.option->option);
    const bool chosen = had != had_.end() && had->second.choice.has_value();
    return condition.choice == (chosen ? *had->second.choice : Index<Choice>{}); // the default
}

/// Whether an option cannot stand beside one that was chosen.
bool SupposedHome::clashes(Index<Option> index) const {
    const Option& option = at(book_->options, index);
    return std::any_of(had_.begin(), had_.end(), [&](const auto& entry) {
        const auto& [other_index, had] = entry;
        if (!had.chosen || other_index == index) return false;
        const Option& other = at(book_->options, other_index);
        return names(option.excludes, other_index) || names(other.excludes, index) ||
               (!option.one_of.empty() && option.one_of == other.one_of);
    });
}

/// Takes an option with all that it needs and brings.
bool SupposedHome::take(const OptionRef& wanted) {
    if (clashes(wanted.option)) return false;
    Had& had = had_[wanted.option];
    had.level = std::max(had.level, wanted.level);
    if (had.chosen) return true;
    had.chosen = true;
    const Option& option = at(book_->options, wanted.option);
    for (const auto& need : option.needs) {
        const bool met =
            std::any_of(need.begin(), need.end(), [&](const OptionRef& one) { return meets(one); });
        if (!met && !take(need.front())) return false;
    }
    return std::all_of(option.parts.begin(), option.parts.end(),
                       [&](const OptionRef& part) { return take(part); });
}

bool SupposedHome::take_one(const DrawnIf& condition) {
    if (condition.elevation) return settle(elevation_, *condition.elevation);
    if (condition.grade) return settle(grade_, *condition.grade);
    const bool included = !condition.choice && meets(*condition.option);
    if (included) return true;
    if (!take(*condition.option)) return false;
    return !condition.choice || settle(had_[condition.option->option].choice, *condition.choice);
}

/// Of an option's limits, those that the drawing may also depend on.
bool SupposedHome::keep_to_limits() {
    const auto& elevations = at(book_->plans, plan_).elevations;
    for (const auto& [index, had] : had_) {
        const Only& only = at(book_->options, index).only;
        if (!had.chosen) continue;
        if (!only.grades.empty() && !keep_to(grade_, only.grades)) return false;
        if (only.elevations.empty()) continue;
        std::vector<Index<Elevation>> possible;
        for (const Index<Elevation> one : indexes_of(elevations)) {
            if (allows(only.elevations, at(elevations, one).id)) possible.push_back(one);
        }
        if (!keep_to(elevation_, possible)) return false;
    }
    return true;
}

bool SupposedHome::suppose(const std::vector<DrawnIf>& conditions) {
    const bool together = std::all_of(conditions.begin(), conditions.end(),
                                      [&](const DrawnIf& one) { return take_one(one); });
    // Twice: what one option settles, another that came before it must keep to.
    return together && keep_to_limits() && keep_to_limits();
}

} // namespace quoin
