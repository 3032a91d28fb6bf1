// Of the rate sheets only the one that an inquiry uses is read whole: the same as if all were.
#include <shown.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>

#include "apps/checked.hpp"
#include "apps/loading.hpp"
#include "apps/plain_afford.hpp"
#include "apps/wire/cases.hpp"
#include "support/files.hpp"
#include "support/findings.hpp"
#include "support/scratch.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

namespace fs = std::filesystem;

const char* const data = QUOIN_SOURCE_DIR "/tests/golden/data";

enum class Fault { none, rungs, cut, no_date, no_such_date, no_id, format };

/// A rate sheet as a test writes it; `marker` tells it from others of its id.
struct Written {
    std::string id;
    std::string date;
    std::string marker;
    Fault fault = Fault::none;

    /// Whether the file says what it is chosen by.
    [[nodiscard]] bool told() const { return fault <= Fault::cut; }

    [[nodiscard]] std::vector<std::string> members() const {
        const std::string second = fault == Fault::rungs ? "5.5" : "6.5";
        std::vector<std::string> members = {
            fault == Fault::format ? R"("format": "quoin/rates/2")"
                                   : R"("format": "quoin/rates/1")",
            R"("good_through": "2199-12-31", "status": "sample")",
            R"("lender": {"name": "Nobody's lender", "license": "none: invented"})",
            R"("index": {"name": "An index", "value": "4", "date": "2001-01-01"})",
            R"("note": ")" + marker + R"(")",
            R"("ladders": [{"program": "short", "months": 12, "lock_days": 60, "rungs": [)"
            R"({"rate": "6", "points": "1"}, {"rate": ")" +
                second + R"(", "points": "0"}]}])",
        };
        if (fault != Fault::no_id) members.push_back(R"("id": ")" + id + R"(")");
        if (fault == Fault::no_such_date) members.emplace_back(R"("date": "2026-02-30")");
        if (fault == Fault::no_date || fault == Fault::no_such_date) return members;
        members.push_back(R"("date": ")" + date + R"(")");
        return members;
    }
    /// With its members in the order they have, or in any.
    [[nodiscard]] std::string text(std::mt19937* chance = nullptr) const {
        std::vector<std::string> all = members();
        if (chance != nullptr) std::shuffle(all.begin(), all.end(), *chance);
        std::string text;
        for (const std::string& member : all) text += (text.empty() ? "{" : ",\n ") + member;
        return text + (fault == Fault::cut ? "" : "}\n");
    }
};

/// The transcripts' small inquiry and its lending data, with other rate sheets.
class Folder {
  public:
    explicit Folder(const std::vector<Written>& sheets = {}) { fill(sheets); }
    /// With these sheets and no others; ten at most, so that they are read in this order.
    void fill(const std::vector<Written>& sheets, std::mt19937* chance = nullptr) const {
        fs::remove_all(path("rates/sheets"));
        fs::create_directory(path("rates/sheets"));
        for (std::size_t i = 0; i < sheets.size(); ++i) {
            write(std::to_string(i), sheets[i].text(chance));
        }
    }
    void write(const std::string& name, const std::string& text) const {
        scratch_.write("rates/sheets/" + name + ".json", text);
    }
    [[nodiscard]] std::string path(const std::string& name) const { return scratch_.path(name); }
    [[nodiscard]] std::string rates() const { return scratch_.path("rates"); }
    [[nodiscard]] Lending all(Findings& findings) const {
        return apps::load_lending(rates(), findings);
    }
    [[nodiscard]] Lending asked(const SheetAsked& asked, Findings& findings) const {
        return apps::load_lending(rates(), asked, findings);
    }
    [[nodiscard]] Ids asked_ids(const SheetAsked& asked) const {
        Findings findings;
        static_cast<void>(this->asked(asked, findings));
        return problem_ids(findings);
    }

  private:
    Scratch scratch_{data};
};

template <class Item>
const Item& one_of(const std::vector<Item>& items, std::mt19937& chance) {
    return items[chance() % items.size()];
}

/// Ids that meet now and then, days that meet often, some before any day that is asked about and
/// some after; one in `faulty` has a fault.
std::vector<Written> generated(std::mt19937& chance, unsigned faulty) {
    const std::vector<std::string> days = {"2026-01-05", "2026-03-01", "2026-03-02", "2026-07-31",
                                           "2026-12-24", "2027-02-01", "2199-01-01"};
    std::vector<Written> sheets;
    const std::size_t count = 1 + chance() % 9;
    for (std::size_t i = 0; i < count; ++i) {
        Written sheet{"s" + std::to_string(chance() % 40), one_of(days, chance),
                      "sheet " + std::to_string(i)};
        if (faulty != 0 && chance() % faulty == 0) sheet.fault = Fault{1 + int(chance() % 6)};
        sheets.push_back(sheet);
    }
    return sheets;
}

SheetAsked generated_asked(const std::vector<Written>& sheets, std::mt19937& chance) {
    if (chance() % 2 == 0) return {chance() % 5 == 0 ? "none" : one_of(sheets, chance).id, {}};
    return {{},
            date(one_of<const char*>(
                {"2025-12-31", "2026-03-01", "2026-04-01", "2026-12-24", "2027-06-30"}, chance))};
}

/// Looked for among those that say what they are chosen by: one by one, without the program's rule.
const Written* expected(const std::vector<Written>& sheets, const SheetAsked& asked) {
    std::vector<const Written*> may;
    for (const Written& sheet : sheets) {
        const bool answers =
            asked.id.empty() ? sheet.date <= asked.day.text() : sheet.id == asked.id;
        if (sheet.told() && answers) may.push_back(&sheet);
    }
    if (asked.id.empty()) {
        std::stable_sort(may.begin(), may.end(),
                         [](const Written* a, const Written* b) { return a->date > b->date; });
    }
    return may.empty() ? nullptr : may.front();
}

bool has(const Findings& findings, const std::string& id) {
    const Ids ids = problem_ids(findings);
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

/// Whether every line of one listing is in another, in the same order.
bool within(const Findings& some, const Findings& all) {
    std::size_t at = 0;
    const auto same = [](const Problem& a, const Problem& b) {
        return a.file == b.file && a.id == b.id && a.path == b.path && a.arguments == b.arguments;
    };
    for (const Problem& problem : all.problems()) {
        if (at < some.problems().size() && same(problem, some.problems()[at])) ++at;
    }
    return at == some.problems().size();
}

std::vector<std::string> notes(const Lending& lending) {
    std::vector<std::string> notes;
    for (const RateSheet& sheet : lending.sheets) notes.push_back(sheet.note);
    return notes;
}

} // namespace

TEST_CASE("Of any sound sheets the same is chosen as if all were read") {
    std::mt19937 chance(20261127);
    const Folder folder;
    int chosen = 0;
    int fewer = 0;
    int none = 0;
    for (int round = 0; round < 40; ++round) {
        const std::vector<Written> sheets = generated(chance, 0);
        folder.fill(sheets, &chance);
        Findings in_all;
        const Lending all = folder.all(in_all);
        for (int question = 0; question < 8; ++question) {
            const SheetAsked asked = generated_asked(sheets, chance);
            CAPTURE(round, asked.id, asked.day.text());
            Findings findings;
            const Lending lending = folder.asked(asked, findings);
            CHECK(within(findings, in_all)); // ids that are told twice
            if (!in_all.none()) continue;
            REQUIRE(findings.none());
            const RateSheet* whole = all.sheet(asked);
            const RateSheet* sheet = lending.sheet(asked);
            REQUIRE((sheet == nullptr) == (whole == nullptr));
            if (sheet == nullptr) { // a message names the nearest of all
                CHECK(notes(lending) == notes(all));
                ++none;
                continue;
            }
            CHECK(sheet->note == whole->note);
            CHECK(sheet->note == expected(sheets, asked)->marker);
            CHECK(lending.sheets.size() == 1);
            CHECK(lending.programs.size() == all.programs.size());
            CHECK(lending.places.size() == all.places.size());
            ++chosen;
            fewer += all.sheets.size() > 1 ? 1 : 0;
        }
    }
    CHECK(chosen > 100);
    CHECK(fewer > 80);
    CHECK(none > 15);
}

TEST_CASE(
    "Among faulty sheets none is chosen that would not be, and a fault that matters is told") {
    std::mt19937 chance(11272026);
    const Folder folder;
    int answered = 0;
    int refused = 0;
    for (int round = 0; round < 80; ++round) {
        const std::vector<Written> sheets = generated(chance, 4);
        folder.fill(sheets, &chance);
        Findings in_all;
        static_cast<void>(folder.all(in_all));
        for (int question = 0; question < 5; ++question) {
            const SheetAsked asked = generated_asked(sheets, chance);
            CAPTURE(round, asked.id, asked.day.text());
            Findings findings;
            const Lending lending = folder.asked(asked, findings);
            CHECK(within(findings, in_all));
            const Written* right = expected(sheets, asked);
            if (right == nullptr) { // any fault may be why
                CHECK(listing(findings) == listing(in_all));
                continue;
            }
            const auto same_id =
                std::count_if(sheets.begin(), sheets.end(), [&](const Written& sheet) {
                    return sheet.told() && sheet.id == right->id;
                });
            const bool untold = !std::all_of(sheets.begin(), sheets.end(),
                                             [](const Written& sheet) { return sheet.told(); });
            const bool faulty =
                std::any_of(sheets.begin(), sheets.end(), [&](const Written& sheet) {
                    return sheet.fault != Fault::none && sheet.id == right->id;
                });
            INFO(listing(findings));
            CHECK(findings.none() == (same_id == 1 && !untold && !faulty));
            if (same_id > 1 && !faulty) CHECK(has(findings, "id-repeated"));
            (findings.none() ? answered : refused) += 1;
            if (findings.none()) CHECK(lending.sheet(asked)->note == right->marker);
        }
    }
    CHECK(answered > 80);
    CHECK(refused > 100);
}

TEST_CASE("A fault of a sheet that is not used is told by check and serve, and by no question") {
    const Folder folder({{"day", "2026-11-20", "used"}, {"old", "2026-10-20", "", Fault::rungs}});
    const std::string buyer = folder.path("buyer.json");
    CHECK(apps::load_inquiry(buyer, folder.rates())->sitting().sheet().id == "day");
    const Given figures = {{"income", "8400"}, {"rate", "6.25"}, {"program", "short"}};
    CHECK_FALSE(apps::plain_case(figures, folder.rates(), date("2026-11-24")).assumptions.empty());

    const apps::Checked checked = apps::check_file(buyer, folder.rates(), {});
    CHECK(problem_ids(checked.findings) == Ids{"ladder-not-falling"});
    Findings left_out;
    const auto serve = [&] {
        const apps::Cases cases(folder.path(""), folder.rates(), date("2026-11-24"), left_out);
    };
    CHECK_THROWS_AS(serve(), Refused);
}

TEST_CASE("An id told twice is found where one of the two would answer") {
    const Folder folder({{"day", "2026-11-20", ""},
                         {"day", "2026-10-20", ""},
                         {"old", "2026-01-01", ""},
                         {"old", "2026-01-02", ""},
                         {"new", "2026-12-01", ""}});
    CHECK(folder.asked_ids({{}, date("2026-11-24")}) == Ids{"id-repeated"});
    CHECK(folder.asked_ids({"day", {}}) == Ids{"id-repeated"});
    CHECK(folder.asked_ids({{}, date("2026-12-01")}).empty());
    CHECK(folder.asked_ids({{}, date("2026-01-01")}) == Ids{"id-repeated"});
    CHECK(folder.asked_ids({"none", {}}) == Ids{"id-repeated", "id-repeated"});
}

TEST_CASE("A file that does not say what it is chosen by is read whole, wherever it lies") {
    const SheetAsked day{{}, date("2026-11-24")};
    const Folder folder({{"day", "2026-11-20", "used"}});
    CHECK(folder.asked_ids(day).empty());
    folder.write("other", R"({"format": "quoin/place/1", "id": "there")");
    CHECK(folder.asked_ids(day) == Ids{"not-json"});
    folder.write("other", "");
    CHECK(folder.asked_ids(day) == Ids{"not-json"});
    folder.write("other", std::string(17U * 1024 * 1024, ' '));
    CHECK(folder.asked_ids(day) == Ids{"file-too-large"});
    fs::remove(folder.path("rates/sheets/other.json"));
    fs::create_directory(folder.path("rates/sheets/other.json"));
    CHECK(folder.asked_ids(day) == Ids{"file-unreadable"});
    fs::remove(folder.path("rates/sheets/other.json"));
    // A file of the system's that can be opened, and not be read from its beginning.
    fs::create_symlink("/proc/self/mem", folder.path("rates/sheets/other.json"));
    CHECK(folder.asked_ids(day) == Ids{"file-unreadable"});
    fs::remove(folder.path("rates/sheets/other.json"));
    // A sheet among the programs is one of the sheets all the same.
    const Written newer{"newer", "2026-11-23", "newer"};
    std::ofstream(folder.path("rates/programs/newer.json")) << newer.text();
    Findings findings;
    CHECK(notes(folder.asked(day, findings)) == std::vector<std::string>{"newer"});
    CHECK(notes(folder.asked({"day", {}}, findings)) == std::vector<std::string>{"used"});
    CHECK(findings.none());
}
