// Why something cannot be had, and what would do instead, in words.
#include <shown.hpp>

#include <quoin/pricebook/lot.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/words/problem_words.hpp>

#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Decimal decimal(const char* text) { return Decimal::parse(text).value(); }

} // namespace

TEST_CASE("Why an option cannot be had names what is in its way, any of several by \"or\"") {
    using Kind = WhyNot::Kind;
    CHECK(told(WhyNot{.kind = Kind::only_on_lots, .names = {"4", "7", "12"}}) ==
          "only on lot 4, 7 or 12");
    CHECK(told(WhyNot{.kind = Kind::needs, .names = {"Porch"}}) == "needs Porch");
    CHECK(told(WhyNot{.kind = Kind::only_on_grades, .grades = {Grade::walk_out, Grade::garden}}) ==
          "only on walk-out or daylight lots");
    CHECK(told(WhyNot{.kind = Kind::lot_too_small,
                      .names = {"usable_yard_sq_ft"},
                      .least = decimal("2400")}) ==
          "needs a lot whose usable yard is 2,400 sq ft or more");
    CHECK(told(WhyNot{.kind = Kind::closing_too_late, .until = Date::of(2027, 8, 31)}) ==
          "only for closings by August 31, 2027");
    CHECK(told(std::optional<WhyNot>()).empty());
}

TEST_CASE("What would do instead has its bounds and an example") {
    using Kind = Wanted::Kind;
    const Decimal nine_billion = Decimal::whole(9'000'000'000);
    CHECK(told(Wanted{.kind = Kind::dollars_in_range, .most = nine_billion, .such = "250000"}) ==
          "dollars from 0 to 9,000,000,000, with at most two decimals, such as 250000");
    CHECK(told(Wanted{.kind = Kind::any_of, .names = {"northeast", "south", "west"}}) ==
          "northeast, south or west");
    CHECK(told(Wanted{.kind = Kind::whole_months,
                      .least = Decimal::whole(1),
                      .most = Decimal::whole(240)}) == "a whole number of months from 1 to 240");
}

TEST_CASE("A problem says a file, a lot's state, a reason and a noun by the catalogue") {
    const Catalogue& say = catalogue_in(Language::english);
    CHECK(words_of(problems::file_missing("a.json", FileMeant::lots, ""), say).expected ==
          "a list of lots that can be read");
    CHECK(words_of(problems::lot_not_free({}, "7", LotStatus::held), say).of_it ==
          "which is reserved");
    CHECK(words_of(problems::option_needs({}, "steps", {"deck:cedar", "porch"}), say).advice ==
          "add deck:cedar or porch, or remove steps");
    CHECK(words_of(problems::id_repeated({}, Noun::elevation), say).found ==
          "nothing for a second elevation");
    CHECK(words_of(problems::name_unknown({}, Noun::option, "deck", ""), say).found ==
          "no option named \"deck\"");
}
