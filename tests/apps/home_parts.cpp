// What a file that is taken home is made of, as it is embedded: whole, or not at all.
#include <shown.hpp>

#include <quoin/exact/broken.hpp>

#include "apps/take_home/home_document.hpp"
#include "apps/whole/home_parts.hpp"

using namespace quoin;
using namespace quoin::apps;

TEST_CASE("What a file that is taken home is made of is there whole, or not at all") {
    const HomeParts* parts = home_parts();
    const bool whole = parts == nullptr || // this build has no page, or no engine for browsers
                       (parts->packed.size() > 100'000 && // a length, a colon, letters
                        parts->packed.find_first_not_of("0123456789") == parts->packed.find(':') &&
                        parts->packed.find('<') == std::string_view::npos);
    CHECK(whole);
    if (parts == nullptr) return;
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
