// The getters of Reader: what each takes, what each refuses, and what it says of it.
#include <shown.hpp>

#include <quoin/text/names.hpp>
#include <quoin/text/reader.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

enum class Color { red, green };
const Words<Color> colors = {{Color::red, "red"}, {Color::green, "green"}};

/// Reads {"it": <value>} by one getter: what it gave, and what it found.
template <class Get>
auto read_it(const std::string& value, Get get) {
    const Parsed parsed("{\"it\": " + value + "}");
    REQUIRE(parsed.findings.none());
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    auto result = get(reader);
    reader.finish();
    return std::pair(std::move(result), std::move(findings));
}

template <class Get>
void refuses(const std::vector<const char*>& values, const char* id, Get get) {
    for (const char* value : values) {
        CAPTURE(value, id);
        const auto [result, findings] = read_it(value, get);
        INFO(listing(findings));
        REQUIRE(problem_ids(findings) == Ids{id});
        CHECK(findings.problems()[0].path == "/it");
        CHECK(place_of(findings.problems()[0]) == "1:8");
        CHECK(result == decltype(result){});
    }
}

template <class Get>
void misses(Get get) {
    const Parsed empty("{}");
    Findings findings;
    Reader reader(empty.root(), Path{}, findings);
    static_cast<void>(get(reader));
    REQUIRE(problem_ids(findings) == Ids{"member-missing"});
    CHECK(words_of(findings.problems()[0], catalogue_in(Language::english)).found ==
          "no \"it\" here");
}

} // namespace

TEST_CASE("Money: dollars with at most two decimals, as text or number") {
    const auto get = [](Reader& r) { return r.money("it"); };
    for (const auto& [value, amount] : {std::pair("\"412900\"", "412900"),
                                        {"12.5", "12.50"},
                                        {"\"-2300\"", "-2300"},
                                        {"\"$1,580.17\"", "1580.17"},
                                        {"0", "0"},
                                        {"1e3", "1000"}}) {
        CAPTURE(value);
        const auto [result, findings] = read_it(value, get);
        INFO(listing(findings));
        CHECK(findings.none());
        CHECK(result == money(amount));
    }
    refuses({"\"12.505\"", "12.505", "\"1,58\"", "\"\"", "\"free\"", "true", "null", "[]", "{}",
             "1e99"},
            "not-money", get);
    misses(get);
}

TEST_CASE("Decimal: at most nine decimals, exactly") {
    const auto get = [](Reader& r) { return r.decimal("it"); };
    CHECK(read_it("\"6.125\"", get).first == decimal("6.125"));
    CHECK(read_it("-0.000000001", get).first == decimal("-0.000000001"));
    refuses({"0.0000000001", "\"six\"", "\"\"", "false", "null", "[1]", "\"1,000\"", "1e30"},
            "not-a-decimal", get);
    refuses({"\"x\""}, "not-a-decimal", [](Reader& r) { return r.percent("it"); });
    refuses({"\"x\""}, "not-a-decimal", [](Reader& r) { return r.points("it"); });
    misses(get);
}

TEST_CASE("Rate: 0 to 100 percent with at most six decimals") {
    const auto get = [](Reader& r) { return r.rate("it"); };
    CHECK(read_it("\"6.125\"", get).first == rate("6.125"));
    CHECK(read_it("0", get).first == rate("0"));
    CHECK(read_it("100", get).first == rate("100"));
    refuses({"\"-0.125\"", "100.000001", "\"6.1250001\""}, "not-a-rate", get);
    refuses({"\"6%\"", "null"}, "not-a-decimal", get);
    misses(get);
}

TEST_CASE("Date: a day that exists, as text") {
    const auto get = [](Reader& r) { return r.date("it"); };
    CHECK(read_it("\"2028-02-29\"", get).first == date("2028-02-29"));
    refuses({"\"2026-02-29\"", "\"2026-11-31\"", "\"2026-13-01\"", "\"11/24/2026\"", "20261124",
             "\"2026-1-4\"", "\"\"", "null"},
            "not-a-date", get);
    misses(get);
}

TEST_CASE("Whole number within limits, however written") {
    const auto get = [](Reader& r) { return r.whole("it", 0, 360); };
    CHECK(read_it("360", get).first == 360);
    CHECK(read_it("\"360\"", get).first == 360);
    CHECK(read_it("3.6e2", get).first == 360);
    CHECK(read_it("12.000", get).first == 12);
    refuses({"361", "-1", "0.5", "\"many\"", "true", "null", "[]"}, "not-a-whole-number", get);
    misses(get);
    const auto [low, findings] = read_it("0", [](Reader& r) { return r.whole("it", 1, 9); });
    CHECK(low == 1); // the neutral value is within the limits
    CHECK(words_of(findings.problems().at(0), catalogue_in(Language::english)).expected ==
          "a whole number from 1 to 9");
}

TEST_CASE("Text is no number and not blank, an id is stricter") {
    const auto get = [](Reader& r) { return r.text("it"); };
    CHECK(read_it("\"any words\"", get).first == "any words");
    refuses({"12", "true", "null", "[]", "{}"}, "wrong-kind", get);
    refuses({"\"\""}, "text-empty", get);
    CHECK(problem_ids(read_it("\"  \"", get).second) == Ids{"text-empty"});
    CHECK(problem_ids(read_it("\" \\t\\n\"", get).second) == Ids{"text-not-plain"});
    misses(get);

    const auto id = [](Reader& r) { return r.id("it"); };
    for (const char* good : {"\"a\"", "\"7\"", "\"kitchen-counters\"", "\"a--b\""}) {
        CHECK(read_it(good, id).second.none());
    }
    for (const char* bad :
         {"\"A\"", "\"a b\"", "\"-a\"", "\"a-\"", "\"a_b\"", "\"é\"", "\"a:b\""}) {
        CAPTURE(bad);
        CHECK(problem_ids(read_it(bad, id).second) == Ids{"not-an-id"});
    }
    misses(id);
}

TEST_CASE("Flags and words, with a guess at what was meant") {
    const auto flag = [](Reader& r) { return r.flag_or("it", false); };
    CHECK(read_it("true", flag).first);
    CHECK(read_it("\"true\"", flag).first); // as a cell of a spreadsheet has it
    CHECK_FALSE(read_it("\"false\"", flag).first);
    refuses({"1", "\"yes\"", "null", "\"True\""}, "wrong-kind", flag);

    const auto word = [](Reader& r) { return r.word("it", colors); };
    CHECK(read_it("\"green\"", word).first == Color::green);
    refuses({"\"greeen\"", "\"blue\"", "\"\""}, "not-one-of", word);
    refuses({"1"}, "wrong-kind", word);
    misses(word);
    CHECK(words_of(read_it("\"greeen\"", word).second.problems().at(0),
                   catalogue_in(Language::english))
              .advice == "did you mean \"green\"?");
    CHECK(
        words_of(read_it("\"blue\"", word).second.problems().at(0), catalogue_in(Language::english))
            .expected == "one of \"red\", \"green\"");
}

TEST_CASE("Optional members: silent where absent, strict where present") {
    const Parsed empty("{}");
    Findings findings;
    Reader reader(empty.root(), Path{}, findings);
    CHECK(reader.maybe_money("it") == std::nullopt);
    CHECK(reader.maybe_decimal("it") == std::nullopt);
    CHECK(reader.maybe_date("it") == std::nullopt);
    CHECK(reader.maybe_whole("it", 1, 2) == std::nullopt);
    CHECK(reader.text_or("it", "else") == "else");
    CHECK(reader.flag_or("it", true));
    CHECK(reader.word_or("it", colors, Color::green) == Color::green);
    CHECK(reader.texts("it").empty());
    reader.each("it", [](Reader&) { FAIL("there is nothing to read"); });
    reader.object("it", [](Reader&) { FAIL("there is nothing to read"); });
    reader.items("it", [](const Spot&) { FAIL("there is nothing to read"); });
    reader.members("it", [](const Key&, const Spot&) { FAIL("there is nothing to read"); });
    CHECK_FALSE(reader.has("it"));
    CHECK(reader.raw("it") == nullptr);
    CHECK(findings.none());
    reader.each(
        "it", [](Reader&) {}, true);
    reader.object(
        "it", [](Reader&) {}, true);
    reader.must_have("it");
    CHECK(problem_ids(findings) == Ids{"member-missing", "member-missing", "member-missing"});
    refuses({"\"x\""}, "not-money", [](Reader& r) { return r.maybe_money("it"); });
    refuses({"null"}, "not-a-decimal", [](Reader& r) { return r.maybe_decimal("it"); });
    refuses({"0"}, "not-a-date", [](Reader& r) { return r.maybe_date("it"); });
    refuses({"3"}, "not-a-whole-number", [](Reader& r) { return r.maybe_whole("it", 1, 2); });
}

TEST_CASE("Lists and objects of the wrong kind are refused once, and items by their index") {
    const Parsed parsed(R"({"list": {"a": 1}, "object": [1], "plain": 5,
                            "mixed": [{"id": "x"}, 7, {"id": "Y"}, null], "texts": ["a", 1,
      "b"]})");
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    std::vector<std::string> ids;
    reader.each("list", [](Reader&) { FAIL("not a list"); });
    reader.object("object", [](Reader&) { FAIL("not an object"); });
    reader.members("plain", [](const Key&, const Spot&) { FAIL("not an object"); });
    reader.each("mixed", [&](Reader& item) { ids.push_back(item.id("id")); });
    CHECK(reader.texts("texts") == std::vector<std::string>{"a", "b"});
    reader.finish();
    CHECK(ids == std::vector<std::string>{"x", "Y"});
    std::vector<std::string> where;
    for (const Problem& problem : findings.problems()) where.push_back(problem.path);
    CHECK(where == std::vector<std::string>{"/list", "/object", "/plain", "/mixed/1", "/mixed/2/id",
                                            "/mixed/3", "/texts/1"});
    CHECK(problem_ids(findings) == Ids{"wrong-kind", "wrong-kind", "wrong-kind", "wrong-kind",
                                       "not-an-id", "wrong-kind", "wrong-kind"});
}

TEST_CASE("A root that is no object is one problem, and getters stay silent") {
    for (const char* text : {"[]", "5", "\"x\"", "null", "true"}) {
        CAPTURE(text);
        const Parsed parsed(text);
        Findings findings;
        Reader reader(parsed.root(), Path{}, findings);
        CHECK(reader.text("a").empty());
        CHECK(reader.money("b") == Money{});
        reader.each(
            "c", [](Reader&) { FAIL("nothing to read"); }, true);
        reader.object(
            "d", [](Reader&) { FAIL("nothing to read"); }, true);
        reader.finish();
        CHECK(problem_ids(findings) == Ids{"wrong-kind"});
    }
}

TEST_CASE("Names nobody asked for are reported at the name, comments are not") {
    const Parsed parsed(
        "{\"comment\": 1, \"price\": 2,\n \"prcie\": 3, \"zebra\": {\"comment\": 4},"
        " \"inner\": {\"comment\": [], \"x\": 1}}");
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    static_cast<void>(reader.money("price"));
    reader.object("inner", [](Reader&) {});
    reader.finish();
    REQUIRE(problem_ids(findings) == Ids{"member-unknown", "member-unknown", "member-unknown"});
    const auto& found = findings.problems();
    CHECK(found[0].path == "/inner/x");
    CHECK(words_of(found[1], catalogue_in(Language::english)).found ==
          "the unknown field \"prcie\"");
    CHECK(words_of(found[1], catalogue_in(Language::english)).advice == "did you mean \"price\"?");
    CHECK(place_of(found[1]) == "2:2");
    CHECK(found[1].width == 7);
    CHECK(words_of(found[2], catalogue_in(Language::english)).advice ==
          "remove it, or put a note under \"comment\"");
}

TEST_CASE("Paths are JSON Pointers, with the escapes of RFC 6901") {
    const Parsed parsed(R"({"a/b": {"m~n": [1, {"": "x"}]}})");
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    reader.object("a/b", [](Reader& inner) {
        inner.items("m~n",
                    [&](const Spot& spot) { static_cast<void>(as_text(spot, inner.findings())); });
    });
    reader.finish();
    REQUIRE(findings.problems().size() == 2);
    CHECK(findings.problems()[0].path == "/a~1b/m~0n/0");
    CHECK(findings.problems()[1].path == "/a~1b/m~0n/1");
    const Mark mark(Spot{&parsed.root(), Path{}});
    CHECK(mark.spot().path.pointer().empty());
}

TEST_CASE("A long line is shown around its place, the place within what is shown") {
    const std::string filler(300, ' ');
    const Parsed parsed("{" + filler + "\"it\": \"x\"," + filler + "\"b\": 1}");
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    static_cast<void>(reader.money("it"));
    REQUIRE(findings.problems().size() == 1);
    const Problem& problem = findings.problems()[0];
    const auto from = static_cast<std::size_t>(problem.column - 1 - problem.excerpt_from);
    CHECK(problem.column == 308);
    CHECK(problem.excerpt.substr(from, static_cast<std::size_t>(problem.width)) == "\"x\"");
    CHECK(problem.excerpt.size() <= 96);
}

TEST_CASE("The nearest name: about one slip in three letters, the first of equals") {
    const std::vector<std::string> names = {"kitchen-counters", "kitchen-cabinets", "deck", "desk"};
    CHECK(nearest("kitchen-countres", names) == "kitchen-counters");
    CHECK(nearest("kitchen-counter", names) == "kitchen-counters");
    CHECK(nearest("kichen-cabinet", names) == "kitchen-cabinets");
    CHECK(nearest("deck", names) == "deck");
    CHECK(nearest("deak", names) == "deck"); // as near to desk; the first is named
    CHECK(nearest("dsk", names) == "desk");
    CHECK(nearest("sunroom", names).empty());
    CHECK(nearest("", names).empty());
    CHECK(nearest("deck", {}).empty());
    const std::string long_name(200, 'a');
    CHECK(nearest(long_name, {long_name}).empty()); // nobody mistypes two hundred letters
    CHECK(nearest("aaa", {long_name}).empty());
}

TEST_CASE("Names become indexes, an unknown one names its nearest, an empty list stays silent") {
    struct Item {
        std::string id;
    };
    const std::vector<Item> items = {{"sorrel"}, {"teasel"}};
    const Parsed parsed(R"({"a": "teasel", "b": "teazel", "c": ["sorrel", "x", 1]})");
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    CHECK(index_member(reader, "a", items, Noun::plan) == Index<Item>(1));
    CHECK_FALSE(index_member(reader, "b", items, Noun::plan));
    CHECK(index_list(reader, "c", items, Noun::plan) == std::vector{Index<Item>(0)});
    CHECK_FALSE(index_member(reader, "missing", items, Noun::plan));
    REQUIRE(problem_ids(findings) ==
            Ids{"name-unknown", "name-unknown", "wrong-kind", "member-missing"});
    CHECK(words_of(findings.problems()[0], catalogue_in(Language::english)).found ==
          "no plan named \"teazel\"");
    CHECK(words_of(findings.problems()[0], catalogue_in(Language::english)).advice ==
          "did you mean \"teasel\"?");
    CHECK(findings.problems()[1].path == "/c/1");
    // A list that a mistake left empty: what it would have held is not missed name by name.
    CHECK_FALSE(index_member(reader, "a", std::vector<Item>{}, Noun::plan));
    CHECK(findings.problems().size() == 4);
}
