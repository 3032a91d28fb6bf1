// SupposedHome: a home of which only some things are known, to see whether they go together.
//
//   SupposedHome home(book, plan);
//   if (home.suppose(conditions)) made = changes_made(drawing, home.has());
#pragma once

#include <map>
#include <optional>
#include <vector>

#include <quoin/pricebook/drawing.hpp>
#include <quoin/pricebook/price_book.hpp>

namespace quoin {

/// What the plan includes, what is supposed, and what that needs and brings; nothing else. Where
/// any one of several options would do, it has the first. Its elevation and its grade are left
/// open until they are supposed or an option can be had with one only.
class SupposedHome {
  public:
    SupposedHome(const PriceBook& book, Index<Plan> plan);

    /// False where no home has all of this.
    [[nodiscard]] bool suppose(const std::vector<DrawnIf>& conditions);
    [[nodiscard]] bool has(const DrawnIf& condition) const;

  private:
    struct Had {
        std::optional<Index<Level>> level = {};
        std::optional<Index<Choice>> choice = {};
        bool chosen = false; ///< and not included alone
    };

    [[nodiscard]] bool meets(const OptionRef& wanted) const;
    bool take(const OptionRef& wanted);
    bool take_one(const DrawnIf& condition);
    [[nodiscard]] bool clashes(Index<Option> option) const;
    bool keep_to_limits();

    const PriceBook* book_;
    Index<Plan> plan_;
    std::map<Index<Option>, Had> had_;
    std::optional<Index<Elevation>> elevation_;
    std::optional<Grade> grade_;
};

} // namespace quoin
