// Writing what was read: out, in and out again is the same text, and the same values.
#include <shown.hpp>

#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

bool same(const Value& a, const Value& b) {
    if (a.kind != b.kind || a.items.size() != b.items.size() || a.keys.size() != b.keys.size()) {
        return false;
    }
    if (a.items.empty() && a.literal != b.literal) return false;
    for (std::size_t i = 0; i < a.keys.size(); ++i) {
        if (a.keys[i].name != b.keys[i].name) return false;
    }
    for (std::size_t i = 0; i < a.items.size(); ++i) {
        if (!same(a.items[i], b.items[i])) return false;
    }
    return true;
}

/// Values of every kind from a fixed seed.
class AnyValue {
  public:
    explicit AnyValue(unsigned seed) : random_(seed) {}

    Value next(int levels) {
        Value value;
        const bool leaf = levels == 0;
        value.kind = static_cast<Value::Kind>(below(leaf ? 4 : 6));
        switch (value.kind) {
        case Value::Kind::null:
            value.literal = "null";
            break;
        case Value::Kind::boolean:
            value.literal = below(2) == 0 ? "true" : "false";
            break;
        case Value::Kind::number:
            value.literal = number();
            break;
        case Value::Kind::text:
            value.literal = text();
            break;
        case Value::Kind::list:
        case Value::Kind::object:
            fill(value, levels);
            break;
        }
        return value;
    }

  private:
    std::size_t below(std::size_t end) { return random_() % end; }
    std::string number() {
        static const char* const numbers[] = {"0",         "-0",       "17",
                                              "412900.00", "6.1250",   "-1e-9",
                                              "2E+7",      "-0.000e0", "999999999999999999999"};
        return numbers[below(std::size(numbers))];
    }
    std::string text() {
        static const char* const parts[] = {"a",  "\"", "\\", "/",  "\n", "\t", "\x01", "\x7F",
                                            "é",  "€",  "🏠",  " ",  ",",  ":",  "{",    "]",
                                            "\b", "\f", "\r", "~0", "%s", "0",  "\x1F", "\u2028"};
        std::string text;
        for (std::size_t i = below(12); i > 0; --i) text += parts[below(std::size(parts))];
        return text;
    }
    void fill(Value& value, int levels) {
        for (std::size_t i = below(5); i > 0; --i) {
            if (value.kind == Value::Kind::object) {
                value.keys.push_back({text() + std::to_string(i), {}}); // no name twice
            }
            value.items.push_back(next(levels - 1));
        }
    }

    std::mt19937 random_;
};

std::string file_text(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace

TEST_CASE("Two thousand values of every kind come back the same") {
    AnyValue any(7);
    for (int i = 0; i < 2000; ++i) {
        const Value value = any.next(5);
        const std::string out = write_json(value);
        const Parsed in(out);
        INFO(out);
        REQUIRE(in.findings.none());
        REQUIRE(same(in.root(), value));
        REQUIRE(write_json(in.root()) == out);
    }
}

TEST_CASE("Every file that comes with quoin is written as it was read") {
    int files = 0;
    for (const char* folder : {"rates", "examples", "tests/golden/data"}) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(
                 std::filesystem::path(QUOIN_SOURCE_DIR) / folder)) {
            if (entry.path().extension() != ".json") continue;
            ++files;
            const Parsed first(file_text(entry.path()));
            CAPTURE(entry.path().string());
            REQUIRE(first.findings.none());
            const std::string out = write_json(first.root());
            const Parsed second(out);
            REQUIRE(second.findings.none());
            REQUIRE(same(first.root(), second.root()));
            REQUIRE(write_json(second.root()) == out);
        }
    }
    CHECK(files >= 10);
}

TEST_CASE("The written form: two spaces a level, numbers as they were") {
    const Parsed parsed(R"({"a":[1.50,{"b":null},[],{}],"c":"x\ny"})");
    CHECK(write_json(parsed.root()) == R"({
  "a": [
    1.50,
    {
      "b": null
    },
    [],
    {}
  ],
  "c": "x\ny"
})");
}
