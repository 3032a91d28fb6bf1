// Cutting a price book to one plan.
#include "book_of_plan.hpp"

#include <map>
#include <optional>
#include <string>

#include <quoin/exact/money.hpp>

#include "edited.hpp"
#include "kept.hpp"

namespace quoin::apps {
namespace {

/// The one price, or level, of a plan: "*" is that of all plans without their own.
bool cut_to_plan(Value& owner, std::string_view name, std::string_view plan) {
    Value* by_plan = member(owner, name);
    if (by_plan == nullptr || by_plan->kind != Value::Kind::object) return true;
    const bool own = by_plan->find(plan) != nullptr;
    const Value* price = by_plan->find(own ? plan : "*");
    if (price == nullptr) return false;
    *by_plan = object_of(own ? plan : "*", Value(*price));
    return true;
}

/// What options may be had on a plan, and what refers to them.
class OnPlan {
  public:
    OnPlan(Value& book, std::string_view plan);

    [[nodiscard]] bool has(const std::string& option) const { return levels_.contains(option); }
    /// "option" or "option:level", which means that level or a higher one: as it is said on this
    /// plan; nothing where it cannot be had.
    [[nodiscard]] std::optional<std::string> named(const std::string& ref) const;

  private:
    struct LevelThere {
        std::string id;
        bool there = false;
    };

    [[nodiscard]] bool is_offered(Value& option);
    [[nodiscard]] bool limits_hold(const Value& option) const;
    void cut_levels(Value& option);
    [[nodiscard]] bool relations_hold(Value& option) const;

    std::string_view plan_;
    std::vector<std::string> elevations_;
    std::map<std::string, std::vector<LevelThere>, std::less<>> levels_; ///< of options there
};

OnPlan::OnPlan(Value& book, std::string_view plan) : plan_(plan) {
    for (const Value& one : book.find("plans")->items) {
        if (text_in(one, "id") != plan) continue;
        for (const Value& elevation : one.find("elevations")->items) {
            elevations_.push_back(text_in(elevation, "id"));
        }
    }
    keep_items(book, "options", [&](Value& option) { return is_offered(option); });
    std::size_t gone = 1;
    while (gone > 0) { // what needs what is gone can be had no more
        gone = keep_items(book, "options", [&](Value& option) {
            if (relations_hold(option)) return true;
            levels_.erase(text_in(option, "id"));
            return false;
        });
    }
}

bool OnPlan::limits_hold(const Value& option) const {
    const Value* only = option.find("only");
    if (only == nullptr) return true;
    const Value* elevations = only->find("elevations");
    return allows_name(only->find("plans"), plan_) &&
           std::any_of(elevations_.begin(), elevations_.end(),
                       [&](const std::string& one) { return allows_name(elevations, one); });
}

/// Levels without a price on this plan are those of others.
void OnPlan::cut_levels(Value& option) {
    std::vector<LevelThere>& all = levels_[text_in(option, "id")];
    keep_items(option, "levels", [&](Value& level) {
        const bool there = cut_to_plan(level, "price", plan_);
        all.push_back({text_in(level, "id"), there});
        return there;
    });
}

bool OnPlan::is_offered(Value& option) {
    if (!limits_hold(option)) return false;
    for (const std::string_view price : {"price", "allowance"}) {
        if (!cut_to_plan(option, price, plan_)) return false;
    }
    cut_levels(option);
    if (!cut_to_plan(option, "included_level", plan_)) take_out(option, "included_level");
    const Value* levels = option.find("levels");
    const bool none = levels != nullptr && levels->items.empty();
    if (none) levels_.erase(text_in(option, "id"));
    return !none;
}

std::optional<std::string> OnPlan::named(const std::string& ref) const {
    const std::size_t colon = ref.find(':');
    const auto option = levels_.find(ref.substr(0, colon));
    if (option == levels_.end()) return std::nullopt;
    if (colon == std::string::npos) return ref;
    bool reached = false;
    for (const LevelThere& level : option->second) {
        reached = reached || level.id == ref.substr(colon + 1);
        if (reached && level.there) return option->first + ":" + level.id;
    }
    return std::nullopt;
}

/// Names anew what an option needs or brings; false where one of them cannot be had.
bool OnPlan::relations_hold(Value& option) const {
    const auto rename = [&](Value& ref) {
        const auto name = named(ref.literal);
        if (name) ref.literal = *name;
        return name.has_value();
    };
    for (const std::string_view relation : {"requires", "parts"}) {
        Value* refs = member(option, relation);
        if (refs == nullptr) continue;
        for (Value& ref : refs->items) {
            if (ref.kind != Value::Kind::list) {
                if (!rename(ref)) return false;
                continue;
            }
            std::erase_if(ref.items, [&](Value& one) { return !rename(one); });
            if (ref.items.empty()) return false;
        }
    }
    return true;
}

/// Says of an option that it is for this plan, and names nothing that is of other plans.
void hold_to_plan(Value& option, const Value& plan, const OnPlan& options, bool others) {
    if (keep_items(option, "excludes",
                   [&](const Value& other) { return options.has(other.literal); }) > 0 &&
        option.find("excludes")->items.empty()) {
        take_out(option, "excludes");
    }
    Value* only = member(option, "only");
    if (only != nullptr) {
        keep_items(*only, "elevations", [&](const Value& one) {
            const auto& own = plan.find("elevations")->items;
            return std::any_of(own.begin(), own.end(), [&](const Value& elevation) {
                return text_in(elevation, "id") == one.literal;
            });
        });
    }
    if (!others) return;
    Value named = list_of({text_of_value(text_in(plan, "id"))});
    if (only == nullptr) {
        set(option, "only", object_of("plans", std::move(named)));
    } else {
        set(*only, "plans", std::move(named));
    }
}

Money price_of(const Value& elevation) {
    return Money::parse(text_in(elevation, "price")).value_or(Money{});
}

/// By name, size and price.
Value as_other_plan(const Value& plan) {
    Value short_of = kept(plan, may_go_of_other_plans());
    auto& elevations = member(short_of, "elevations")->items;
    const auto least =
        std::min_element(elevations.begin(), elevations.end(),
                         [](const Value& a, const Value& b) { return price_of(a) < price_of(b); });
    elevations = {Value(*least)};
    return short_of;
}

/// An entry with a list of plans is of this plan alone.
void cut_entries(Value& book, std::string_view list, std::string_view plan) {
    keep_items(book, list,
               [&](const Value& entry) { return allows_name(entry.find("plans"), plan); });
    Value* entries = member(book, list);
    if (entries == nullptr) return;
    for (Value& entry : entries->items) {
        if (entry.find("plans") == nullptr) continue;
        set(entry, "plans", list_of({text_of_value(std::string(plan))}));
    }
}

} // namespace

Value book_of_plan(Value book, std::string_view plan) {
    const OnPlan options(book, plan);
    Value& plans = *member(book, "plans");
    const Value* own = nullptr;
    for (Value& one : plans.items) {
        if (text_in(one, "id") == plan) {
            own = &one;
        } else {
            one = as_other_plan(one);
        }
    }
    if (Value* list = member(book, "options")) {
        for (Value& option : list->items) {
            hold_to_plan(option, *own, options, plans.items.size() > 1);
        }
    }
    cut_entries(book, "included", plan);
    cut_entries(book, "incentives", plan);
    if (Value* included = member(book, "included")) {
        for (Value& entry : included->items) {
            if (!options.has(text_in(entry, "option"))) take_out(entry, "option");
        }
    }
    const Value* model = book.find("model");
    if (model != nullptr && text_in(*model, "plan") != plan) take_out(book, "model");
    return book;
}

namespace {

/// An item of a list by its id, or nullptr.
const Value* item_of(const Value& owner, std::string_view list, const std::string& id) {
    const Value* items = owner.find(list);
    if (items == nullptr) return nullptr;
    const auto found = std::find_if(items->items.begin(), items->items.end(),
                                    [&](const Value& item) { return text_in(item, "id") == id; });
    return found == items->items.end() ? nullptr : &*found;
}

} // namespace

Value drawing_for(Value drawing, const Value& book) {
    const auto is_there = [&](const Value& condition) {
        const std::string name = text_in(condition, "option");
        return name.empty() || item_of(book, "options", name) != nullptr;
    };
    keep_items(drawing, "changes", [&](const Value& change) {
        const Value* when = change.find("when");
        return when == nullptr || std::all_of(when->items.begin(), when->items.end(), is_there);
    });
    if (Value* changes = member(drawing, "changes")) {
        for (Value& change : changes->items) {
            keep_items(change, "unless", is_there);
            const Value* unless = change.find("unless");
            if (unless != nullptr && unless->items.empty()) take_out(change, "unless");
        }
    }
    return drawing;
}

std::vector<std::string> take_out_wishes_elsewhere(Value& inquiry, const Value& book) {
    std::vector<std::string> taken_out;
    keep_items(inquiry, "wishes", [&](const Value& wish) {
        const std::string name = text_in(wish, "option");
        const std::string level = text_in(wish, "level");
        const Value* option = item_of(book, "options", name);
        const bool there =
            option != nullptr && (level.empty() || item_of(*option, "levels", level) != nullptr);
        if (!there) taken_out.push_back(name);
        return there;
    });
    return taken_out;
}

} // namespace quoin::apps
