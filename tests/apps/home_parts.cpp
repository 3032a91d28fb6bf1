// What a file that is taken home is made of, as it is embedded: whole, or not at all.
#include <shown.hpp>

#include <quoin/exact/broken.hpp>

#include "apps/take_home/home_document.hpp"
#include "apps/whole/home_parts.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

std::size_t last_four_bytes(std::string_view bytes) {
    std::size_t number = 0;
    for (int i = 1; i <= 4; ++i) {
        number = number * 256 + static_cast<unsigned char>(bytes[bytes.size() - std::size_t(i)]);
    }
    return number;
}

} // namespace

TEST_CASE("What a file that is taken home is made of is there whole, or not at all") {
    const HomeParts* parts = home_parts();
    const bool packed = parts == nullptr || parts->packed.substr(0, 2) == "\x1f\x8b";
    CHECK(packed);
    if (parts == nullptr) return; // this build has no page, or no engine for browsers
    CHECK(last_four_bytes(parts->packed) > 2 * parts->packed.size()); // as RFC 1952 ends
    for (const auto& language : codes<Language>) {
        const HomeDocument document(parts->documents, language.meaning);
        const std::string& text = document.text("document");
        CHECK(text.starts_with("<!doctype html>"));
        for (const char* place : {"{{month}}", "{{terms}}", "{{sheet}}", "{{home}}", "{{parts}}"}) {
            CHECK(text.find(place) != std::string::npos);
        }
    }
}

TEST_CASE("A document's places are filled once, and a value that looks like one stays as it is") {
    const HomeDocument document(
        R"({"en": {"a": "{{one}}, {{two}}{{one}}!", "days": ["Jan {{day}}, {{year}}"]}})",
        Language::english);
    CHECK(document.filled("a", {{"one", "{{two}}"}, {"two", "2"}}) == "{{two}}, 2{{two}}!");
    CHECK(document.day(Date::parse("2027-01-09").value()) == "Jan 9, 2027");
    CHECK_THROWS_AS(document.filled("a", {{"one", "1"}}), Broken);
    CHECK_THROWS_AS(document.text("b"), Broken);
}
