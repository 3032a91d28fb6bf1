// Answers out of their JSON: written again they are the same to the byte, but for words for people;
// what is no answer is told with its place.
#include <shown.hpp>

#include <map>

#include <quoin/quoin.hpp>

#include "asked.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// Words for people hang on what is not told, such as what was asked: each is made nothing.
void forget_words(const Shape& shape, Value& value) {
    if (shape.kind == Shape::Kind::list) {
        for (Value& item : value.items) forget_words(*shape.item, item);
    }
    if (shape.kind != Shape::Kind::object) return;
    for (const Shape& base : shape.bases) forget_words(base, value);
    for (const ShapeMember& member : shape.members) {
        for (std::size_t i = 0; i < value.items.size(); ++i) {
            if (value.keys[i].name != member.name) continue;
            if (member.words) value.items[i] = {};
            forget_words(member.shape, value.items[i]);
        }
    }
}

std::string without_words(const Shape& shape, const std::string& text) {
    Document document = json(text);
    forget_words(shape, document.root);
    return write_json(document.root);
}

/// Reads it, and writes it again.
template <class Answer>
std::string written_again(const Document& document, Findings& findings) {
    const auto answer = read_answer<Answer>(document, findings);
    return answer ? json_text_of(*answer) : std::string{};
}

using WrittenAgain = std::string (*)(const Document&, Findings&);

/// But for a recheck: its formulas are told in words alone.
const std::map<std::string_view, WrittenAgain> readers = {
    {"quote", written_again<QuoteAnswer>},     {"adds", written_again<AddsAnswer>},
    {"compare", written_again<CompareAnswer>}, {"cash", written_again<CashAnswer>},
    {"credit", written_again<CreditAnswer>},   {"shift", written_again<ShiftAnswer>},
    {"afford", written_again<AffordAnswer>},   {"later", written_again<LaterAnswer>},
    {"shown", written_again<ShownAnswer>},     {"schedule", written_again<MonthByMonthAnswer>},
    {"tour", written_again<TourAnswer>},       {"fit", written_again<FitAnswer>},
    {"site", written_again<SiteAnswer>},       {"programs", written_again<ProgramsAnswer>},
    {"rooms", written_again<RoomsAnswer>}};

/// A member or an item of what JSON holds, by its JSON Pointer.
Value& at(Value& root, std::string_view pointer) {
    Value* value = &root;
    while (!pointer.empty()) {
        pointer.remove_prefix(1);
        const std::string name(pointer.substr(0, pointer.find('/')));
        pointer.remove_prefix(name.size());
        if (value->kind == Value::Kind::list) {
            value = &value->items.at(std::stoul(name));
            continue;
        }
        std::size_t place = 0;
        while (value->keys.at(place).name != name) ++place;
        value = &value->items[place];
    }
    return *value;
}

Value text_value(std::string text) { return {Value::Kind::text, {}, std::move(text), {}, {}}; }

std::string compared() {
    const Question& question = *find_question("compare");
    const apps::Loaded& loaded = six_programs();
    return question.text({loaded.desk, loaded.inquiry, {}}, Form::json);
}

/// What is found in a comparison with one value put in place of another.
Findings broken(const std::string& pointer, const Value& value) {
    Document document = json(compared());
    at(document.root, pointer) = value;
    const Document again = json(write_json(document.root));
    Findings findings;
    CHECK_FALSE(read_answer<CompareAnswer>(again, findings).has_value());
    return findings;
}

} // namespace

TEST_CASE("Every answer but a recheck is read back whole") {
    std::size_t read = 0;
    for (const Question& question : questions()) {
        if (question.shape == nullptr || question.name == "recheck") continue;
        each_json(question, six_programs(), [&](const std::string& text) {
            Findings findings;
            const std::string again = readers.at(question.name)(json(text), findings);
            CAPTURE(question.name, text_of(findings));
            REQUIRE(findings.none());
            const Shape& shape = question.shape();
            CHECK(without_words(shape, again) == without_words(shape, text));
            ++read;
        });
    }
    CHECK(read == readers.size() * six_programs().inquiry.scenarios.size());
}

TEST_CASE("What is no answer is told with its place") {
    const Value null{};
    const Value number{Value::Kind::number, {}, "1", {}, {}};
    const struct {
        std::string pointer;
        Value value;
        std::string_view id;
    } rows[] = {
        {"/scenarios/0/monthly", null, "wrong-kind"},
        {"/scenarios/0/monthly/property_tax", number, "wrong-kind"},
        {"/scenarios/0/monthly/property_tax", text_value("1.005"), "not-money"},
        {"/scenarios/1/terms/rate", text_value("6%"), "not-a-decimal"},
        {"/scenarios/1/terms/rate", text_value("101"), "not-a-rate"},
        {"/heading/as_of", text_value("2026-02-30"), "not-a-date"},
        {"/question", text_value("quote"), "not-one-of"},
        {"/orders/0/stretches/0/cheaper", text_value("the first"), "not-one-of"},
        {"/orders/0/first", text_value("no such loan"), "not-one-of"},
    };
    for (const auto& row : rows) {
        const Findings findings = broken(row.pointer, row.value);
        CAPTURE(row.pointer, text_of(findings));
        REQUIRE(findings.problems().size() == 1);
        CHECK(name_of(findings.problems().front().id) == row.id);
        CHECK(findings.problems().front().path == row.pointer);
        CHECK(findings.problems().front().line > 1);
    }
}

TEST_CASE("A member that is missing is told, and one that nobody knows") {
    Document document = json(compared());
    Value& monthly = at(document.root, "/scenarios/0/monthly");
    REQUIRE(monthly.keys[2].name == "property_tax");
    monthly.keys[2].name = "property_taxes";
    const Document again = json(write_json(document.root));
    Findings findings;
    CHECK_FALSE(read_answer<CompareAnswer>(again, findings).has_value());
    REQUIRE(findings.problems().size() == 2);
    CHECK(name_of(findings.problems()[0].id) == "member-missing");
    CHECK(findings.problems()[0].path == "/scenarios/0/monthly");
    CHECK(name_of(findings.problems()[1].id) == "member-unknown");
    CHECK(findings.problems()[1].path == "/scenarios/0/monthly/property_taxes");
}
