// The shapes of answers are those of the JSON that is written: every member of every answer is
// told, of the kind that is told, and those that are always there are.
#include <shown.hpp>

#include <set>

#include <quoin/render/problems.hpp>
#include <quoin/text/codes.hpp>

#include "asked.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// The members that JSON has, by the name of their object or, where it has none, its place.
void add_members(const Shape& shape, const Value& value, const std::string& at,
                 std::set<std::string>& met) {
    if (value.kind == Value::Kind::null) return;
    if (shape.kind == Shape::Kind::list) {
        for (const Value& item : value.items) add_members(*shape.item, item, at + "[]", met);
    }
    if (shape.kind != Shape::Kind::object) return;
    const std::string& name = shape.name.empty() ? at : shape.name;
    for (const Shape& base : shape.bases) add_members(base, value, at, met);
    for (const ShapeMember& member : shape.members) {
        const Value* found = value.find(member.name);
        if (found == nullptr) continue;
        met.insert(name + "." + member.name);
        add_members(member.shape, *found, at + "." + member.name, met);
    }
}

} // namespace

TEST_CASE("Every answer has the shape that is told of it") {
    std::set<std::string> met;
    std::size_t questions_held = 0;
    for (const Question& question : questions()) {
        if (question.shape == nullptr) continue;
        each_json(question, six_programs(), [&](const std::string& text) {
            const Document document = json(text);
            Findings findings;
            hold_to(question.shape(), {&document.root, Path{}}, findings);
            CAPTURE(question.name, text_of(findings));
            CHECK(findings.none());
            add_members(question.shape(), document.root, std::string(question.name), met);
        });
        ++questions_held;
    }
    CHECK(questions_held == 16);
    CHECK(met.size() > 450);
    for (const char* member : {"Scenario.cost_of_credit", "Refusal.words", "Touch.per_month",
                               "FitHome.left_out", "Mix.cost_over_years", "Monthly.property_tax"}) {
        CHECK(met.contains(member));
    }
}

namespace {

void add_codes(const Shape& shape, std::set<std::string>& codes) {
    codes.insert(shape.codes.begin(), shape.codes.end());
    if (shape.item) add_codes(*shape.item, codes);
    for (const Shape& base : shape.bases) add_codes(base, codes);
    for (const ShapeMember& member : shape.members) add_codes(member.shape, codes);
}

} // namespace

TEST_CASE("What is one of a fixed list is a code, never a sentence") {
    std::set<std::string> codes;
    for (const Question& question : questions()) {
        if (question.shape != nullptr) add_codes(question.shape(), codes);
    }
    CHECK(codes.size() > 100);
    for (const std::string& code : codes) {
        CAPTURE(code);
        CHECK(is_code(code));
    }
    for (const char* code : {"sq_ft", "walk_out", "index_of_the_day", "unavailable"}) {
        CHECK(codes.contains(code));
    }
}

TEST_CASE("A question in JSON has a shape, and no other has") {
    for (const Question& question : questions()) {
        CHECK((question.shape != nullptr) == question.has(Form::json));
    }
}

TEST_CASE("Shapes say what is always there, what may be nothing, and what may be said") {
    const Shape quote = find_question("quote")->shape();
    CHECK(quote.name == "Quote");
    const Shape* lines = quote.member("lines");
    REQUIRE(lines != nullptr);
    const Shape* kind = lines->item->member("kind");
    REQUIRE(kind != nullptr);
    CHECK(kind->codes.front() == "base");
    CHECK(kind->codes.size() == 7);
    CHECK(quote.member("deposits")->member("paid")->nullable);
    const Shape scenario = *quote.member("scenarios")->item;
    for (const ShapeMember& member : scenario.members) {
        CHECK((member.there == ShapeMember::There::always) ==
              (member.name == "terms" || member.name == "available" || member.name == "refusals"));
    }
}
