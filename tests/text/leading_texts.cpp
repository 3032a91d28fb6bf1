// The first texts of an object: which are handed over, and how far the text is read for them.
#include <shown.hpp>

#include <sstream>

#include <quoin/text/leading_texts.hpp>

using namespace quoin;

namespace {

using Texts = std::vector<std::string>;

/// "name=text" of the first `most` texts; where they end, so much of the stream has been read.
Texts leading(std::istream& json, std::size_t most = 100) {
    Texts texts;
    leading_texts(json, [&](std::string_view name, std::string_view text) {
        texts.push_back(std::string(name) + "=" + std::string(text));
        return texts.size() < most;
    });
    return texts;
}

Texts leading(const std::string& json, std::size_t most = 100) {
    std::istringstream stream(json);
    return leading(stream, most);
}

} // namespace

TEST_CASE("The texts of the outermost object are handed over in their order, and no others") {
    CHECK(leading(R"({"a": "1", "n": 2, "b": "two words", "yes": true, "no": null, "c": ""})") ==
          Texts{"a=1", "b=two words", "c="});
    CHECK(leading(R"({"in": {"a": "1"}, "list": ["2", {"b": "3"}, ["4"]], "a": "5"})") ==
          Texts{"a=5"});
    CHECK(leading(R"({"a": "1", "a": "2"})") == Texts{"a=1", "a=2"});
    CHECK(leading("\xEF\xBB\xBF{\"\\u0061\": \"\\u00e9\"}") == Texts{"a=\xC3\xA9"});
    for (const char* other : {"", " ", "[]", R"(["a", "b"])", R"([{"a": "b"}])", R"("a")", "7"}) {
        CAPTURE(other);
        CHECK(leading(other).empty());
    }
}

TEST_CASE("Nothing is parsed after what is enough") {
    CHECK(leading(R"({"a": "1", "b": "2", "c": "3"})", 2) == Texts{"a=1", "b=2"});
    CHECK(leading("{\"a\": \"1\" and no JSON", 1) == Texts{"a=1"});
    std::istringstream stream(R"({"a": "1", "b": "2", "c": "3"})");
    CHECK(leading(stream, 1) == Texts{"a=1"});
    CHECK(static_cast<int>(stream.tellg()) == 9); // past the text's closing quote
}

TEST_CASE("What is no JSON ends the texts where it stands") {
    const std::string whole = R"({"a": "1", "n": [1.5e3, {"x": "y"}], "b": "2"})";
    for (std::size_t end = 0; end < whole.size(); ++end) {
        CAPTURE(end);
        const Texts texts = leading(whole.substr(0, end));
        CHECK(texts.size() == (end < 9 ? 0U : end < 45 ? 1U : 2U));
    }
    CHECK(leading(R"({"a": "1", "b": "\xFF", "c": "3"})") == Texts{"a=1"});
    CHECK(leading(R"({"a": "1", "b" "2"})") == Texts{"a=1"});
    CHECK(leading(R"({"a": "1", "n": 1e999, "b": "2"})") == Texts{"a=1"});
}
