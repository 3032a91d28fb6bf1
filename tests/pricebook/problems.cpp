// What can be wrong in a price book: each mistake makes its own problem, at its place, and no
// other; several mistakes are all reported.
#include <shown.hpp>

#include "support/small_book.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

struct Row {
    std::string patch; ///< one operation
    const char* id;
    const char* path; ///< of the problem
};

void check_rows(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        const ReadBook read = patched_book("[" + row.patch + "]");
        INFO(row.patch << "\n" << listing(read.findings));
        REQUIRE(problem_ids(read.findings) == Ids{row.id});
        const Problem& problem = read.findings.problems().front();
        CHECK(problem.path == row.path);
        CHECK(problem.file == "book.json");
        CHECK(problem.line > 0);
        CHECK(problem.column > 0);
    }
}

Row replaced(const std::string& path, const std::string& value, const char* id, const char* where) {
    return {op_replace(path, value), id, where};
}

Row added(const std::string& path, const std::string& value, const char* id, const char* where) {
    return {op_add(path, value), id, where};
}

Row removed(const std::string& path, const char* where) {
    return {op_remove(path), "member-missing", where};
}

/// A mistake at the very value it is about.
Row bad(const char* path, const std::string& value, const char* id) {
    return replaced(path, value, id, path);
}

} // namespace

TEST_CASE("The small book by itself has no problem") {
    const ReadBook read = read_book(small_book_text);
    INFO(listing(read.findings));
    CHECK(read.findings.none());
}

TEST_CASE("Each member that must be there is missed at its object") {
    check_rows({
        removed("/format", ""),
        removed("/community", ""),
        removed("/community/name", "/community"),
        removed("/community/builder", "/community"),
        removed("/community/place", "/community"),
        removed("/version", ""),
        removed("/effective", ""),
        removed("/expires", ""),
        removed("/areas", ""),
        removed("/areas/0/name", "/areas/0"),
        removed("/stages/1/name", "/stages/1"),
        removed("/plans", ""),
        removed("/plans/0/name", "/plans/0"),
        removed("/plans/0/base_price", "/plans/0"),
        removed("/plans/0/bedrooms", "/plans/0"),
        removed("/plans/0/bathrooms", "/plans/0"),
        removed("/plans/0/square_feet", "/plans/0"),
        removed("/plans/0/elevations", "/plans/0"),
        removed("/plans/0/elevations/0/name", "/plans/0/elevations/0"),
        removed("/plans/0/elevations/0/price", "/plans/0/elevations/0"),
        removed("/lots", ""),
        removed("/lots/2/id", "/lots/2"),
        removed("/lots/0/premium", "/lots/0"),
        removed("/lots/0/status", "/lots/0"),
        removed("/lots/0/grade", "/lots/0"),
        removed("/included/0/area", "/included/0"),
        removed("/included/0/text", "/included/0"),
        removed("/options/1/id", "/options/1"),
        removed("/options/1/name", "/options/1"),
        removed("/options/1/area", "/options/1"),
        removed("/options/2/levels/0/name", "/options/2/levels/0"),
        removed("/options/2/levels/0/price", "/options/2/levels/0"),
        removed("/options/3/later/estimate", "/options/3/later"),
        removed("/options/5/quantity/max", "/options/5/quantity"),
        removed("/options/6/choices/1/name", "/options/6/choices/1"),
        removed("/incentives/0/id", "/incentives/0"),
        removed("/incentives/0/name", "/incentives/0"),
        removed("/incentives/1/of", "/incentives/1"),
        removed("/deposits/earnest/percent", "/deposits/earnest"),
        removed("/deposits/options/structural_percent", "/deposits/options"),
        removed("/deposits/options/finish_percent", "/deposits/options"),
        removed("/model/plan", "/model"),
        removed("/model/elevation", "/model"),
        removed("/model/shows/0/level", "/model/shows/0"),
        removed("/model/shows/4/area", "/model/shows/4"),
    });
}

TEST_CASE("A value of another kind, and what is no amount, number, day, name or id") {
    check_rows({
        bad("/community", "[]", "wrong-kind"),
        bad("/areas", "{}", "wrong-kind"),
        added("/areas/-", "\"attic\"", "wrong-kind", "/areas/2"),
        bad("/version", "7", "wrong-kind"),
        bad("/lots/1/flood_zone", "\"yes\"", "wrong-kind"),
        bad("/lots/1/plans", "\"large\"", "wrong-kind"),
        bad("/options/0/quantity", "4", "wrong-kind"),
        bad("/options/3/structural", "1", "wrong-kind"),
        bad("/options/13/requires", "\"flue\"", "wrong-kind"),
        bad("/options/13/requires/0", "7", "wrong-kind"),
        bad("/options/12/excludes/0", "null", "wrong-kind"),
        bad("/incentives", "{}", "wrong-kind"),
        bad("/model", "[]", "wrong-kind"),
        bad("/model/shows/0", "\"top\"", "wrong-kind"),

        bad("/plans/0/base_price", "\"cheap\"", "not-money"),
        bad("/plans/1/elevations/1/price", "\"12.345\"", "not-money"),
        bad("/lots/0/premium", "true", "not-money"),
        bad("/options/4/price", "\"1,5\"", "not-money"),
        bad("/options/2/levels/1/price/small", "\"x\"", "not-money"),
        bad("/options/7/allowance/*", "\"x\"", "not-money"),
        bad("/options/3/later/estimate", "\"x\"", "not-money"),
        bad("/incentives/0/amount", "\"x\"", "not-money"),
        bad("/model/shows/3/spend", "\"x\"", "not-money"),

        bad("/plans/0/bedrooms", "\"two\"", "not-a-decimal"),
        bad("/plans/0/measures/floor", "\"x\"", "not-a-decimal"),
        bad("/lots/1/measures/rear_ft", "\"x\"", "not-a-decimal"),
        bad("/options/4/only/lot_at_least/rear_ft", "\"x\"", "not-a-decimal"),
        bad("/incentives/1/percent", "\"x\"", "not-a-decimal"),
        bad("/deposits/options/finish_percent", "\"x\"", "not-a-decimal"),
        bad("/model/shows/1/quantity", "\"x\"", "not-a-decimal"),

        bad("/effective", "\"2026-02-30\"", "not-a-date"),
        bad("/expires", "\"soon\"", "not-a-date"),
        bad("/incentives/1/expires", "\"x\"", "not-a-date"),
        bad("/incentives/1/close_by", "7", "not-a-date"),

        bad("/lots/0/status", "\"open\"", "not-one-of"),
        bad("/lots/0/grade", "\"flat\"", "not-one-of"),
        bad("/options/0/unit", "\"sq. ft\"", "not-one-of"),
        bad("/options/3/work/0", "\"roof\"", "not-one-of"),
        bad("/options/9/only/grades/1", "\"x\"", "not-one-of"),
        bad("/incentives/1/of", "\"base\"", "not-one-of"),
        bad("/incentives/0/uses/1", "\"cash\"", "not-one-of"),

        bad("/community/place", "\"The Place\"", "not-an-id"),
        bad("/plans/0/elevations/0/name", "\"\"", "text-empty"),
        bad("/lots/2/id", "\"Lot 3\"", "not-an-id"),
        bad("/options/8/id", "\"No_lawn\"", "not-an-id"),
        bad("/options/1/name", "\" \"", "text-empty"),
        bad("/community/name", "\"\"", "text-empty"),

        bad("/plans/0/base_price", "\"0\"", "out-of-range"),
        bad("/plans/0/base_price", "\"-1\"", "out-of-range"),
        bad("/plans/1/elevations/1/price", "\"-300000\"", "out-of-range"),
        bad("/lots/2/premium", "\"-200000\"", "out-of-range"),
        bad("/lots/1/premium", "\"-300000\"", "out-of-range"),
        bad("/options/8/price", "\"-199500\"", "out-of-range"), // lot 3 takes off 500
        bad("/format", "\"quoin/pricebook/2\"", "format-unknown"),
        bad("/format", "\"quoin/inquiry/1\"", "format-unknown"),
    });
}

TEST_CASE("Names nobody knows, with the nearest one offered") {
    struct Guess {
        Row row;
        const char* advice;
    };
    for (const Guess& guess : {
             Guess{bad("/lots/1/plans/0", "\"lagre\"", "name-unknown"), "large"},
             Guess{bad("/included/0/area", "\"insde\"", "name-unknown"), "inside"},
             Guess{bad("/included/0/option", "\"tap\"", "name-unknown"), "top"},
             Guess{bad("/included/0/plans/0", "\"smal\"", "name-unknown"), "small"},
             Guess{bad("/options/0/area", "\"insides\"", "name-unknown"), "inside"},
             Guess{bad("/options/0/cutoff", "\"pain\"", "name-unknown"), "paint"},
             Guess{bad("/options/0/quantity/from_plan", "\"flor\"", "name-unknown"), "floor"},
             Guess{bad("/options/2/included_level/*", "\"plane\"", "name-unknown"), "plain"},
             Guess{replaced("/options/2/included_level", R"({"lrge": "stone"})", "name-unknown",
                            "/options/2/included_level/lrge"),
                   "large"},
             Guess{replaced("/options/2/levels/1/price", R"({"smal": "2000"})", "name-unknown",
                            "/options/2/levels/1/price/smal"),
                   "small"},
             Guess{bad("/options/10/requires/0/0", "\"deck:ceder\"", "name-unknown"), "cedar"},
             Guess{bad("/options/10/requires/0/1", "\"prch\"", "name-unknown"), "porch"},
             Guess{bad("/options/10/only/lots/0", "\"11\"", "name-unknown"), "1"},
             Guess{bad("/options/11/only/plans/0", "\"larg\"", "name-unknown"), "large"},
             Guess{bad("/options/11/only/elevations/0", "\"stones\"", "name-unknown"), "stone"},
             Guess{bad("/options/12/excludes/0", "\"stov\"", "name-unknown"), "stove"},
             Guess{bad("/options/15/parts/1", "\"flu\"", "name-unknown"), "flue"},
             Guess{bad("/options/15/parts/2", "\"top:ston\"", "name-unknown"), "stone"},
             Guess{bad("/incentives/1/plans/0", "\"larg\"", "name-unknown"), "large"},
             Guess{bad("/incentives/1/lots/0", "\"22\"", "name-unknown"), "2"},
             Guess{bad("/model/plan", "\"lage\"", "name-unknown"), "large"},
             Guess{bad("/model/elevation", "\"ston\"", "name-unknown"), "stone"},
             Guess{bad("/model/lot", "\"22\"", "name-unknown"), "2"},
             Guess{bad("/model/shows/0/option", "\"tops\"", "name-unknown"), "top"},
             Guess{bad("/model/shows/0/level", "\"rar\"", "name-unknown"), "rare"},
             Guess{bad("/model/shows/2/choice", "\"grey\"", "name-unknown"), "gray"},
             Guess{bad("/model/shows/4/area", "\"insid\"", "name-unknown"), "inside"},
         }) {
        check_rows({guess.row});
        const ReadBook read = patched_book("[" + guess.row.patch + "]");
        CHECK(words_of(read.findings.problems().front(), catalogue_in(Language::english)).advice ==
              "did you mean \"" + std::string(guess.advice) + "\"?");
    }
}

TEST_CASE("Members that no object of its kind has") {
    check_rows({
        added("/remark", "1", "member-unknown", "/remark"),
        added("/community/phone", "1", "member-unknown", "/community/phone"),
        added("/plans/0/garage", "2", "member-unknown", "/plans/0/garage"),
        added("/plans/0/elevations/0/cost", "2", "member-unknown", "/plans/0/elevations/0/cost"),
        added("/lots/0/price", "2", "member-unknown", "/lots/0/price"),
        added("/options/0/prices", "2", "member-unknown", "/options/0/prices"),
        added("/options/2/levels/0/pric", "2", "member-unknown", "/options/2/levels/0/pric"),
        added("/options/5/quantity/most", "2", "member-unknown", "/options/5/quantity/most"),
        added("/options/4/only/plan", "2", "member-unknown", "/options/4/only/plan"),
        added("/incentives/0/of", "\"options\"", "member-unknown", "/incentives/0/of"),
        added("/deposits/total", "2", "member-unknown", "/deposits/total"),
        added("/model/shows/4/level", "\"x\"", "member-unknown", "/model/shows/4/level"),
    });
    const ReadBook commented =
        patched_book(R"([{"op": "add", "path": "/options/0/comment", "value": {"any": "thing"}}])");
    CHECK(commented.findings.none());
}

TEST_CASE("An id a second time, in every list that has ids") {
    check_rows({
        added("/areas/-", R"({"id": "outside", "name": "Again"})", "id-repeated", "/areas/2/id"),
        added("/stages/-", R"({"id": "permit", "name": "Again"})", "id-repeated", "/stages/3/id"),
        added("/plans/1/elevations/-", R"({"id": "plain", "name": "Again", "price": "0"})",
              "id-repeated", "/plans/1/elevations/2/id"),
        bad("/lots/2/id", "\"1\"", "id-repeated"),
        bad("/options/8/id", "\"wood\"", "id-repeated"),
        added("/options/2/levels/-", R"({"id": "plain", "name": "Again", "price": "9000"})",
              "id-repeated", "/options/2/levels/3/id"),
        added("/options/6/choices/-", R"({"id": "white", "name": "Again"})", "id-repeated",
              "/options/6/choices/2/id"),
        bad("/incentives/1/id", "\"opening\"", "id-repeated"),
    });
    const ReadBook plans = patched_book(R"([{"op": "add", "path": "/plans/-", "value":
        {"id": "small", "name": "Again", "base_price": "1000", "bedrooms": 1, "bathrooms": 1,
         "square_feet": 1, "elevations": [{"id": "plain", "name": "Plain", "price": "0"}]}}])");
    CHECK(problem_ids(plans.findings) == Ids{"id-repeated"});
}

TEST_CASE("Members that do not go together") {
    check_rows({
        // An option is of one kind.
        added("/options/0/levels", "[]", "members-conflict", "/options/0"),
        added("/options/0/choices", "[]", "members-conflict", "/options/0"),
        added("/options/0/allowance", "\"5\"", "members-conflict", "/options/0"),
        added("/options/2/price", "\"5\"", "members-conflict", "/options/2"),
        added("/options/6/price", "\"5\"", "members-conflict", "/options/6"),
        added("/options/7/price", "\"5\"", "members-conflict", "/options/7"),
        added("/options/7/choices", "[]", "members-conflict", "/options/7"),
        {op_remove("/options/8/price"), "members-conflict", "/options/8"},
        {op_remove("/options/15/price"), "members-conflict", "/options/15"},
        // A quantity has limits that hold its usual one.
        bad("/options/5/quantity", R"({"min": "0", "max": "4"})", "members-conflict"),
        bad("/options/5/quantity", R"({"min": "5", "max": "4"})", "members-conflict"),
        bad("/options/5/quantity", R"({"max": "4", "step": "0"})", "members-conflict"),
        bad("/options/5/quantity", R"({"max": "4", "step": "-1"})", "members-conflict"),
        bad("/options/5/quantity", R"({"max": "4", "usual": "5"})", "members-conflict"),
        bad("/options/5/quantity", R"({"min": "2", "max": "6", "step": "2", "usual": "3"})",
            "members-conflict"),
        // An incentive has an amount or a percent, and a use.
        added("/incentives/1/amount", "\"5\"", "members-conflict", "/incentives/1"),
        {op_remove("/incentives/0/amount"), "members-conflict", "/incentives/0"},
        {op_remove("/incentives/0/uses"), "members-conflict", "/incentives/0"},
        replaced("/incentives/0/uses", "[]", "members-conflict", "/incentives/0"),
    });
}

TEST_CASE("Dates, levels and packages out of order") {
    check_rows({
        bad("/expires", "\"2025-12-31\"", "dates-reversed"),
        replaced("/options/2/levels/1/price", R"("-1")", "levels-not-rising", "/options/2/levels"),
        replaced("/options/2/levels/2/price", R"({"large": "2599.99"})", "levels-not-rising",
                 "/options/2/levels"),
        bad("/options/15/parts/0", "\"warm\"", "package-in-package"),
    });
    // One day, and two levels at one price, are no mistake.
    CHECK(patched_book(R"([{"op": "replace", "path": "/expires", "value": "2026-01-01"}])")
              .findings.none());
    const auto priced = [](const std::string& large) {
        const std::string value = "{\"large\": \"" + large + "\"}";
        return patched_book("[" + op_replace("/options/2/levels/2/price", value) + "]");
    };
    CHECK(priced("2600").findings.none());
    const ReadBook falling = priced("2000");
    CHECK(words_of(falling.findings.problems().at(0), catalogue_in(Language::english)).found ==
          "a level that costs less than the one before it, for large");
}

TEST_CASE("Options that need each other are found, by the way back to themselves") {
    const auto needing = [](std::vector<std::pair<const char*, const char*>> needs) {
        std::string options;
        for (const auto& [id, requires_list] : needs) {
            options += (options.empty() ? "" : ",") +
                       (R"({"id": ")" + std::string(id) + R"(", "name": "N", "area": "inside",
                           "price": "1", "requires": )" +
                        requires_list + "}");
        }
        return patched_book(R"([{"op": "replace", "path": "/options", "value": [)" + options +
                            R"(]}, {"op": "remove", "path": "/included"},
                               {"op": "remove", "path": "/model"}])");
    };
    const auto chains = [&](std::vector<std::pair<const char*, const char*>> needs) {
        const ReadBook read = needing(std::move(needs));
        std::vector<std::string> found;
        for (const Problem& problem : read.findings.problems()) {
            CHECK(name_of(problem.id) == "requires-cycle");
            found.push_back(
                problem.path + " " +
                words_of(problem, catalogue_in(Language::english))
                    .found.substr(
                        words_of(problem, catalogue_in(Language::english)).found.find(": ") + 2));
        }
        return found;
    };
    using Found = std::vector<std::string>;
    CHECK(chains({{"a", R"(["a"])"}}) == Found{"/options/0 a -> a"});
    CHECK(chains({{"a", R"(["b"])"}, {"b", R"(["a"])"}}) == Found{"/options/0 a -> b -> a"});
    CHECK(chains({{"a", R"(["b"])"}, {"b", R"(["c"])"}, {"c", R"(["a"])"}}) ==
          Found{"/options/0 a -> b -> c -> a"});
    // A way into a cycle is not part of it.
    CHECK(chains({{"a", R"(["b"])"}, {"b", R"(["c"])"}, {"c", R"(["b"])"}}) ==
          Found{"/options/1 b -> c -> b"});
    // Each of two cycles, also where one leads to the other.
    CHECK(chains({{"a", R"(["b"])"}, {"b", R"(["a"])"}, {"c", R"(["d"])"}, {"d", R"(["c"])"}}) ==
          Found{"/options/0 a -> b -> a", "/options/2 c -> d -> c"});
    CHECK(
        chains({{"a", R"(["c", "b"])"}, {"b", R"(["a"])"}, {"c", R"(["d"])"}, {"d", R"(["c"])"}}) ==
        Found{"/options/0 a -> b -> a", "/options/2 c -> d -> c"});
    // None: two ways to one end, and a way out by an alternative.
    CHECK(chains({{"a", R"(["b", "c"])"}, {"b", R"(["d"])"}, {"c", R"(["d"])"}, {"d", "[]"}})
              .empty());
    CHECK(chains({{"a", R"([["b", "c"]])"}, {"b", R"(["a"])"}, {"c", "[]"}}).empty());
    CHECK(chains({{"a", R"([["b"]])"}, {"b", R"(["a"])"}}) == Found{"/options/0 a -> b -> a"});
}

TEST_CASE("Several mistakes in one file are all reported, each once") {
    const ReadBook read = patched_book(R"([
        {"op": "replace", "path": "/expires", "value": "2025-01-01"},
        {"op": "replace", "path": "/plans/0/base_price", "value": "0"},
        {"op": "replace", "path": "/plans/1/elevations/1/price", "value": "12.345"},
        {"op": "replace", "path": "/lots/0/grade", "value": "flat"},
        {"op": "add", "path": "/lots/1/colour", "value": "green"},
        {"op": "replace", "path": "/options/0/quantity/from_plan", "value": "roof"},
        {"op": "replace", "path": "/options/2/levels/2/price", "value": {"large": "1"}},
        {"op": "replace", "path": "/options/8/id", "value": "wood"},
        {"op": "replace", "path": "/options/10/requires/0/1", "value": "prch"},
        {"op": "add", "path": "/options/14/requires", "value": ["stove"]},
        {"op": "replace", "path": "/options/15/parts/0", "value": "warm"},
        {"op": "remove", "path": "/incentives/0/uses"},
        {"op": "replace", "path": "/model/plan", "value": "lage"}
    ])");
    INFO(listing(read.findings));
    CHECK(sorted_ids(read.findings) ==
          Ids{"dates-reversed", "id-repeated", "levels-not-rising", "member-unknown",
              "members-conflict", "name-unknown", "name-unknown", "name-unknown", "not-money",
              "not-one-of", "out-of-range", "package-in-package", "requires-cycle"});
    // In the order of the file's reading, so that lines of one list rise.
    const auto& problems = read.findings.problems();
    CHECK(name_of(problems.front().id) == "dates-reversed");
    CHECK(problems.back().path == "/model/plan");
}
