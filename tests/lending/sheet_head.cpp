// The head of a rate sheet: told wherever its members stand, and only where they can be relied on.
#include <shown.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "support/files.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/text/language.hpp>

using namespace quoin;
using namespace quoin::test;

namespace {

std::optional<SheetHead> head_of(const std::string& text) {
    std::istringstream json(text);
    return head_of_rate_sheet(json);
}

/// "id date", or nothing.
std::string told(const std::string& text) {
    const auto head = head_of(text);
    return head ? head->id + " " + head->date.text() : "";
}

const std::string format = R"("format": "quoin/rates/1")";

} // namespace

TEST_CASE("The head of a shipped sheet is that of the sheet read whole, and stands in front") {
    for (const char* name : {"2026-10-16", "2026-11-20"}) {
        std::ifstream file(std::string(QUOIN_SOURCE_DIR "/rates/sheets/") + name + ".json");
        const std::string text(std::istreambuf_iterator<char>(file), {});
        Findings findings;
        Document document = json(text);
        choose_texts(document, Language::english, findings);
        const RateSheet sheet = read_rate_sheet(document, findings);
        REQUIRE(findings.none());
        CHECK(told(text) == sheet.id + " " + sheet.date.text());
        CHECK(told(text) == std::string(name) + " " + name);
        CHECK(told(text.substr(0, 100)) == told(text));
    }
}

TEST_CASE("Members may stand in any order, with any others between them") {
    std::vector<std::string> members = {format, R"("id": "day")", R"("date": "2026-11-20")",
                                        R"("index": {"id": "no", "date": "2020-01-01"})",
                                        R"("ladders": [{"rungs": [], "date": 7}])"};
    std::sort(members.begin(), members.end());
    do {
        std::string text;
        for (const std::string& member : members) text += (text.empty() ? "{" : ",") + member;
        CAPTURE(text);
        CHECK(told(text + "}") == "day 2026-11-20");
    } while (std::next_permutation(members.begin(), members.end()));
}

TEST_CASE("Cut off anywhere, the head is the same or not told") {
    const std::string text = "{" + format + R"(, "date": "2026-11-20", "id": "day", "note": "a"})";
    const std::size_t end = text.find("\"day\"") + 5;
    for (std::size_t cut = 0; cut <= text.size(); ++cut) {
        CAPTURE(cut);
        CHECK(told(text.substr(0, cut)) == (cut < end ? "" : "day 2026-11-20"));
    }
}

TEST_CASE("What is not told as it should be is not told by the head") {
    for (const std::string members : {
             R"("id": "day", "date": "2026-11-20")",
             R"("format": "quoin/rates/2", "id": "day", "date": "2026-11-20")",
             R"("format": "quoin/program/1", "id": "day", "date": "2026-11-20")",
             R"("id": "day", "date": "2026-11-20", "format": "quoin/place/1")",
             R"("format": "quoin/rates/1", "date": "2026-11-20")",
             R"("format": "quoin/rates/1", "id": 7, "date": "2026-11-20")",
             R"("format": "quoin/rates/1", "id": "day")",
             R"("format": "quoin/rates/1", "id": "day", "date": "2026-11-31")",
             R"("format": "quoin/rates/1", "id": "day", "date": ["2026-11-20"])",
             R"("format": "quoin/rates/1", "date": "soon", "id": "day", "date": "2026-11-20")",
             R"("format": "quoin/rates/1", "id": "day" "date": "2026-11-20")",
         }) {
        CAPTURE(members);
        CHECK(told("{" + members + "}").empty());
    }
    CHECK(told("[{" + format + R"(, "id": "day", "date": "2026-11-20"}])").empty());
    CHECK(told("").empty());
    // What is wrong after the head is not looked at.
    CHECK(told("{" + format + R"(, "id": "day", "date": "2026-11-20", and so on)") ==
          "day 2026-11-20");
}
