// Codes of enumerations: one for programs, a word for people, and files are read by either.
#include <shown.hpp>

#include <quoin/text/codes.hpp>
#include <quoin/text/reader.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace quoin {

enum class Slope { flat, falls_away };
template <>
inline constexpr auto codes<Slope> =
    coded<Slope>({{Slope::flat, "flat"}, {Slope::falls_away, "falls_away", "falls away"}});

} // namespace quoin

namespace {

Slope slope_in(const std::string& json, Findings& findings) {
    const Document document = parse_json(std::make_shared<Source>("f.json", json), findings);
    Reader reader(document.root, Path{}, findings);
    return reader.word<Slope>("slope");
}

} // namespace

TEST_CASE("A code is for programs, a word for people") {
    CHECK(code_of(Slope::falls_away) == "falls_away");
    CHECK(name_of(Slope::falls_away) == "falls away");
    CHECK(name_of(Slope::flat) == "flat");
    CHECK(code_of(static_cast<Slope>(2)).empty());
    CHECK(is_code("per_thousand"));
    for (const char* text : {"", "sq ft", "walk-out", "APR"}) CHECK_FALSE(is_code(text));
}

TEST_CASE("A file has the word or the code, and nothing else") {
    Findings findings;
    CHECK(slope_in(R"({"slope": "falls away"})", findings) == Slope::falls_away);
    CHECK(slope_in(R"({"slope": "falls_away"})", findings) == Slope::falls_away);
    REQUIRE(findings.none());
    CHECK(slope_in(R"({"slope": "falls-away"})", findings) == Slope::flat);
    REQUIRE(findings.problems().size() == 1);
    CHECK(findings.problems().front().path == "/slope");
    CHECK(words_of(findings.problems().front(), catalogue_in(Language::english))
              .expected.find("falls away") != std::string::npos);
}
