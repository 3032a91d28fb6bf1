// Writing JSON: to the byte what a general library writes, for values and bytes of every kind.
#include <shown.hpp>

#include <random>

#include <nlohmann/json.hpp>

#include <quoin/exact/broken.hpp>
#include <quoin/text/json_writer.hpp>

using namespace quoin;

namespace {

using Json = nlohmann::ordered_json;

std::string of_library(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

/// Values from a fixed seed: every kind, nested, their texts of any bytes at all.
class AnyJson {
  public:
    explicit AnyJson(unsigned seed) : random_(seed) {}

    int below(int limit) { return std::uniform_int_distribution(0, limit - 1)(random_); }

    std::string bytes() {
        static const std::string pieces[] = {"a",
                                             "\"",
                                             "\\",
                                             "/",
                                             "\n",
                                             "\t",
                                             "\x7F",
                                             "\x01",
                                             "\xC3\xA9",
                                             "\xE2\x80\x94",
                                             "\xC3",
                                             "\xE2\x80",
                                             "\xED\xA0",
                                             "\xC0\xAF",
                                             "\xF0\x9F\x8F\xA0",
                                             "\xF0\x9F",
                                             "\xFF",
                                             "\xF4\x90\x80\x80"};
        std::string text;
        for (int i = below(7); i > 0; --i) {
            text += below(4) == 0 ? std::string(1, static_cast<char>(below(256)))
                                  : pieces[below(static_cast<int>(std::size(pieces)))];
        }
        return text;
    }

    Json next(int levels) {
        switch (below(levels == 0 ? 4 : 6)) {
        case 0:
            return nullptr;
        case 1:
            return below(2) == 0;
        case 2:
            return std::uniform_int_distribution<std::int64_t>(
                std::numeric_limits<std::int64_t>::min())(random_);
        case 3:
            return bytes();
        case 4: {
            Json list = Json::array();
            for (int i = below(4); i > 0; --i) list.push_back(next(levels - 1));
            return list;
        }
        default: {
            Json object = Json::object();
            for (int i = below(4); i > 0; --i)
                object["m" + std::to_string(i) + bytes()] = next(levels - 1);
            return object;
        }
        }
    }

  private:
    std::mt19937 random_;
};

void write(const Json& value, JsonWriter& json) {
    switch (value.type()) {
    case Json::value_t::object:
        return json.object([&] {
            for (const auto& [name, member] : value.items()) {
                json.key(name);
                write(member, json);
            }
        });
    case Json::value_t::array:
        return json.list([&] {
            for (const Json& item : value) write(item, json);
        });
    case Json::value_t::string:
        return json.text(value.get<std::string>());
    case Json::value_t::boolean:
        return json.truth(value.get<bool>());
    case Json::value_t::null:
        return json.null();
    default:
        return json.number(value.get<std::int64_t>());
    }
}

} // namespace

TEST_CASE("JSON is written as a general library writes it, values and bytes of every kind") {
    AnyJson any(20261127);
    std::size_t replaced = 0;
    for (int i = 0; i < 20'000; ++i) {
        const Json value = any.next(4);
        JsonWriter json;
        write(value, json);
        const std::string text = json.take();
        const std::string expected = of_library(value);
        if (text != expected) FAIL("written " << text << "\nexpected " << expected);
        if (text.find("\xEF\xBF\xBD") != std::string::npos) ++replaced;
    }
    CHECK(replaced > 1'000);
}

TEST_CASE("JSON far larger than a page of the writer, with texts larger than one") {
    AnyJson any(20261128);
    Json large = Json::array();
    for (int i = 0; i < 5'000; ++i) large.push_back(any.next(3));
    for (const std::size_t letters : {32'767U, 32'768U, 200'000U}) {
        large.push_back(std::string(letters, 'x'));
        large.push_back(std::string(letters, '"'));
    }
    JsonWriter json;
    for (int again = 0; again < 2; ++again) {
        write(large, json);
        const std::string text = json.take();
        CHECK(text.size() > 500'000);
        CHECK((text == of_library(large))); // in brackets: so much is not told
    }
}

TEST_CASE("A member with its value, and what is empty") {
    JsonWriter json;
    json.object([&] {
        json.text("name", "Deck");
        json.number("rank", -3);
        json.truth("must", false);
        json.list("parts", [] {});
        json.object("later", [] {});
    });
    CHECK(json.take() == "{\n  \"name\": \"Deck\",\n  \"rank\": -3,\n  \"must\": false,\n"
                         "  \"parts\": [],\n  \"later\": {}\n}");
}

TEST_CASE("JSON that is not closed, or a name without its value, is our own fault and said") {
    JsonWriter open;
    CHECK_THROWS_AS(open.list([&] { (void)open.take(); }), Broken);
    JsonWriter nameless;
    CHECK_THROWS_AS(nameless.object([&] {
        nameless.key("a");
        nameless.key("b");
    }),
                    Broken);
    JsonWriter without;
    CHECK_THROWS_AS(without.object([&] { without.key("a"); }), Broken);
    JsonWriter nowhere;
    CHECK_THROWS_AS(nowhere.key("a"), Broken);
}
