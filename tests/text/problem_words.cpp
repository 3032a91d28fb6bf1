// What a problem keeps of the values it speaks of, and the sentences that are made of them.
#include <shown.hpp>

#include <quoin/pricebook/lot.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/words/problem_words.hpp>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

TEST_CASE("a problem is its id, its place and typed values, and no sentence") {
    const Parsed file(R"({"as_of": "2027-01-02"})");
    const Value& day = *file.root().find("as_of");
    const Problem problem = problems::book_expired({&day, Path{nullptr, "as_of"}},
                                                   *Date::of(2027, 1, 2), *Date::of(2026, 12, 31));
    CHECK(problem.id == ProblemId::book_expired);
    CHECK(name_of(problem.id) == "book-expired");
    CHECK(problem.path == "/as_of");
    CHECK(place_of(problem) == "1:11");
    CHECK(problem.arguments ==
          std::vector<Argument>{*Date::of(2027, 1, 2), *Date::of(2026, 12, 31)});
    const ProblemWords words = words_of(problem, catalogue_in(Language::english));
    CHECK(words.found ==
          "a price book that ended on December 31, 2026, used as of January 2, 2027");
    CHECK(words.expected == "a price book in effect that day");
    CHECK(words.advice == "get the current price book, or set \"as_of\" to an earlier day");
}

TEST_CASE("what was found is kept as a value, and told as it stands") {
    const struct {
        const char* json;
        FoundValue kept;
        const char* told;
    } rows[] = {
        {"null", {FoundValue::Kind::null, ""}, "null"},
        {"[1]", {FoundValue::Kind::list, ""}, "a list"},
        {"{}", {FoundValue::Kind::object, ""}, "an object"},
        {"6.1250", {FoundValue::Kind::literal, "6.1250"}, "6.1250"},
        {"true", {FoundValue::Kind::literal, "true"}, "true"},
        {"\"a\\tb\"", {FoundValue::Kind::text, "a\\u0009b"}, "\"a\\u0009b\""},
    };
    for (const auto& row : rows) {
        CAPTURE(row.json);
        const Parsed file(row.json);
        const Problem problem = problems::not_money({&file.root(), {}});
        CHECK(problem.arguments == std::vector<Argument>{row.kept});
        CHECK(words_of(problem, catalogue_in(Language::english)).found == row.told);
    }
    CHECK(words_of(problems::not_money({}), catalogue_in(Language::english)).found == "nothing");
}

TEST_CASE("a near name takes the place of other advice") {
    CHECK(words_of(problems::member_unknown({}, "prcie", "price"), catalogue_in(Language::english))
              .advice == "did you mean \"price\"?");
    CHECK(words_of(problems::member_unknown({}, "prcie", ""), catalogue_in(Language::english))
              .advice == "remove it, or put a note under \"comment\"");
}

TEST_CASE("a noun has its article, and a long list of names ends early") {
    CHECK(words_of(problems::name_unknown({}, Noun::option, "deck", ""),
                   catalogue_in(Language::english))
              .expected == "the id of an option that exists");
    CHECK(words_of(problems::name_unknown({}, Noun::plan, "deck", ""),
                   catalogue_in(Language::english))
              .expected == "the id of a plan that exists");
    std::vector<std::string> names(12, "one");
    const auto told = [&] {
        return words_of(problems::not_one_of({}, names, ""), catalogue_in(Language::english))
            .expected;
    };
    CHECK(told().ends_with(", \"one\""));
    names.emplace_back("thirteenth");
    CHECK(told().ends_with(", \"one\", ..."));
}

TEST_CASE("a problem is about the thing that its sentences name first, and what is found of it") {
    const Problem needs = problems::option_needs({}, {"deck", "deck:composite"}, {"walk-out"});
    CHECK(about(needs) == About{Subject::option, "deck", "deck:composite"});
    CHECK(words_of(needs, catalogue_in(Language::english)).found ==
          "deck:composite: needs walk-out");
    CHECK(words_of(needs, catalogue_in(Language::english)).of_it == "needs walk-out");
    const Problem plan = problems::plan_not_on_lot({}, "teasel", "12", {"comfrey"});
    CHECK(about(plan) == About{Subject::plan, "teasel", "teasel"});
    CHECK(words_of(plan, catalogue_in(Language::english)).of_it == "on lot 12");
    const Problem given = problems::incentive_not_here({}, {"winter", "Winter start"},
                                                       WhyNot{WhyNot::Kind::not_for_lot});
    CHECK(about(given) == About{Subject::incentive, "winter", "Winter start"});
    CHECK(words_of(given, catalogue_in(Language::english)).found ==
          "Winter start: not on this lot");
    CHECK(
        words_of(problems::lot_not_free({}, "7", LotStatus::sold), catalogue_in(Language::english))
            .found == "lot 7, which is sold");
    CHECK_FALSE(about(problems::not_money({})).has_value());
    CHECK(words_of(problems::not_money({}), catalogue_in(Language::english)).of_it ==
          words_of(problems::not_money({}), catalogue_in(Language::english)).found);
}

TEST_CASE("every problem has a name, and those that share one are told apart by their ids") {
    CHECK(name_of(ProblemId::file_is_folder) == name_of(ProblemId::file_unreadable));
    CHECK(name_of(ProblemId::file_missing) == "file-missing");
    CHECK(name_of(ProblemId::http_fault) == "http-fault");
}
