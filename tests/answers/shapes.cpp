// The shapes of answers are those of the JSON that is written: every member of every answer is
// told, of the kind that is told, and those that are always there are.
#include <shown.hpp>

#include <map>
#include <set>

#include <nlohmann/json.hpp>

#include <quoin/questions/questions.hpp>
#include <quoin/text/codes.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

using Json = nlohmann::json;

/// Holds JSON to a shape; says where it departs, and counts the members that it has met.
class Held {
  public:
    void to(const Shape& shape, const Json& json, const std::string& at) {
        if (json.is_null()) return must(shape.nullable, at + " is null");
        switch (shape.kind) {
        case Shape::Kind::text:
            return must(json.is_string(), at + " is no text");
        case Shape::Kind::number:
            return must(json.is_number_integer(), at + " is no number");
        case Shape::Kind::truth:
            return must(json.is_boolean(), at + " is no truth");
        case Shape::Kind::code:
            must(json.is_string(), at + " is no code");
            return must(
                std::count(shape.codes.begin(), shape.codes.end(), json.get<std::string>()) == 1,
                at + " is none of its codes: " + json.dump());
        case Shape::Kind::list:
            must(json.is_array(), at + " is no list");
            for (const Json& item : json) to(*shape.item, item, at + "[]");
            return;
        case Shape::Kind::object:
            return object(shape, json, at);
        }
    }

    std::set<std::string> met;
    std::set<std::string> departs;

  private:
    void must(bool holds, const std::string& words) {
        if (!holds) departs.insert(words);
    }

    static void gather(const Shape& shape, std::map<std::string, ShapeMember>& members) {
        for (const Shape& base : shape.bases) gather(base, members);
        for (const ShapeMember& member : shape.members) members.emplace(member.name, member);
    }

    void object(const Shape& shape, const Json& json, const std::string& at) {
        must(json.is_object(), at + " is no object");
        std::map<std::string, ShapeMember> members;
        gather(shape, members);
        const bool refused = json.contains("refusals") && !json["refusals"].empty();
        for (const auto& [name, member] : members) {
            const bool due = member.there == ShapeMember::There::always ||
                             (member.there == ShapeMember::There::unless_refused && !refused);
            if (due) must(json.contains(name), at + " lacks " + name);
        }
        for (const auto& [name, value] : json.items()) {
            must(members.contains(name), at + " has an unknown " + name);
            if (!members.contains(name)) continue;
            met.insert((shape.name.empty() ? at : shape.name) + "." + name);
            to(members.at(name).shape, value, at + "." + name);
        }
    }
};

/// A question with what it needs, once under each scenario where it asks for one.
void hold(const Question& question, const apps::Loaded& loaded, Held& held) {
    for (const Scenario& scenario : loaded.inquiry.scenarios) {
        Given given;
        for (const QuestionOption& option : question.options) {
            if (option.name == "scenario") given.emplace("scenario", scenario.name);
        }
        if (question.name == "credit") given.emplace("amount", "10000");
        if (question.name == "later") given.emplace("option", "irrigation");
        if (question.name == "fit") {
            given.emplace("monthly", "3000");
            given.emplace("cash", "60000");
            given.emplace("nodes", "2000");
        }
        const std::string json = question.text({loaded.desk, loaded.inquiry, given}, Form::json);
        held.to(question.shape(), Json::parse(json), std::string(question.name));
    }
}

} // namespace

TEST_CASE("Every answer has the shape that is told of it") {
    Held held;
    std::size_t questions_held = 0;
    for (const Question& question : questions()) {
        if (question.shape == nullptr) continue;
        hold(question, six_programs(), held);
        ++questions_held;
    }
    CHECK(questions_held == 15);
    CHECK(held.departs == std::set<std::string>{});
    CHECK(held.met.size() > 450);
    for (const char* member : {"Scenario.cost_of_credit", "Refusal.words", "Touch.per_month",
                               "FitHome.left_out", "Mix.cost_over_years", "Monthly.property_tax"}) {
        CHECK(held.met.contains(member));
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
