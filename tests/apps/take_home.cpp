// What a buyer takes home answers as the desk does, and holds nothing that is not the buyer's.
#include <shown.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include <sys/stat.h>

#include <nlohmann/json.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/sheet.hpp>
#include <quoin/render/answers.hpp>

#include "apps/checked.hpp"
#include "apps/command_line.hpp"
#include "apps/files.hpp"
#include "apps/loading.hpp"
#include "apps/take_home/take_home.hpp"
#include "apps/take_home/what_goes.hpp"
#include "apps/take_home/written_folder.hpp"
#include "support/scratch.hpp"

using namespace quoin;
using namespace quoin::apps;
using quoin::test::Scratch;

namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;

const std::string source = QUOIN_SOURCE_DIR;
const std::set<Private> everything = {Private::score, Private::income, Private::debts,
                                      Private::cash};

const char* const buyers[] = {"/examples/oxbarrow-meadow/buyers/moves-again.json",
                              "/examples/oxbarrow-meadow/buyers/right-under-eighty.json",
                              "/examples/oxbarrow-meadow/buyers/short-of-cash.json",
                              "/examples/oxbarrow-meadow/buyers/six-programs.json",
                              "/examples/oxbarrow-meadow/buyers/va-used-before.json",
                              "/examples/first-home/buyer.json"};

std::string bytes_in(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

Json json_in(const fs::path& path) { return Json::parse(bytes_in(path)); }

void write_json_to(const fs::path& path, const Json& json) {
    std::ofstream(path, std::ios::binary) << json.dump(1);
}

/// The shipped lending data, with a sheet that may be shared or does not say so.
class Rates {
  public:
    explicit Rates(bool shared) : folder_((source + "/rates").c_str()) {
        for (const auto& file : fs::directory_iterator(folder_.path("sheets"))) {
            Json sheet = json_in(file.path());
            sheet["may_be_shared"] = shared;
            write_json_to(file.path(), sheet);
        }
    }
    [[nodiscard]] std::string path() const { return folder_.path(); }

  private:
    Scratch folder_;
};

/// What went, written to a folder.
struct Home {
    Scratch scratch;
    TakenHome taken;

    explicit Home(const TakeHomeAsked& asked) : taken(take_home(asked)) {
        write_folder(scratch.path("home"), taken.files);
    }
    [[nodiscard]] std::string file(const std::string& name) const {
        return scratch.path("home/" + name);
    }
    [[nodiscard]] std::unique_ptr<Loaded> load(Language language) const {
        return load_inquiry(file("inquiry.json"), file("rates"), language, Drawn::yes);
    }
    [[nodiscard]] Json json(const std::string& name) const { return json_in(file(name)); }
    [[nodiscard]] std::string sheet() const {
        return "rates/sheets/" + taken.report.sheet + ".json";
    }
};

// What is not the same at home, and why.

/// Who prepared it stays at the desk. A score that was not ticked is another one.
void without_private(Heading& heading) { heading.prepared_by.clear(); }
void without_private(ScenarioTerms& terms) {
    terms.score.reset();
    terms.down_from_cash = false; // without the cash it is an amount
}
QuoteAnswer told(QuoteAnswer answer) {
    without_private(answer.heading);
    for (ScenarioAnswer& scenario : answer.scenarios) without_private(scenario.terms);
    return answer;
}
CashAnswer told(CashAnswer answer) {
    without_private(answer.heading);
    without_private(answer.scenario.terms);
    return answer;
}
CompareAnswer told(CompareAnswer answer) {
    without_private(answer.heading);
    for (ScenarioAnswer& scenario : answer.scenarios) without_private(scenario.terms);
    return answer;
}
SheetAnswer told(SheetAnswer answer) {
    answer.quote = told(std::move(answer.quote));
    without_private(answer.rooms.heading);
    without_private(answer.site.heading);
    if (answer.cash) answer.cash = told(std::move(*answer.cash));
    return answer;
}
/// What cannot be had here may be of other plans, and is told by their names.
AddsAnswer told(AddsAnswer answer) {
    without_private(answer.heading);
    for (AddsScenario& scenario : answer.scenarios) without_private(scenario.terms);
    std::erase_if(answer.items,
                  [](const AddsItem& item) { return item.standing == Standing::barred; });
    return answer;
}

/// Every figure of the home as it stands.
std::string as_it_stands(const Sitting& sitting, const Catalogue& say) {
    std::string all = json_text_of(told(quote(sitting)), say);
    all += json_text_of(told(compare(sitting)), say);
    all += html_of(told(sheet(sitting)), say);
    for (std::size_t i = 0; i < sitting.rules().size(); ++i) {
        all += json_text_of(told(cash(sitting, i)), say);
    }
    return all;
}

std::string changed(const Sitting& sitting, const Catalogue& say) {
    return json_text_of(told(adds(sitting, {})), say);
}

/// Holds what went to the desk, in each language.
void hold(const std::string& buyer, const std::string& rates, const std::set<Private>& with,
          bool with_changes) {
    const Home home({.inquiry = buyer, .rates = rates, .with = with});
    for (const auto& language : codes<Language>) {
        CAPTURE(buyer, language.code, with.size());
        const Catalogue& say = catalogue_in(language.meaning);
        const auto desk = load_inquiry(buyer, rates, language.meaning, Drawn::yes);
        const auto taken = home.load(language.meaning);
        CHECK(as_it_stands(taken->sitting(), say) == as_it_stands(desk->sitting(), say));
        if (!with_changes) continue;
        CHECK(changed(taken->sitting(), say) == changed(desk->sitting(), say));
    }
}

/// Whether any loan of an inquiry is made by the cash there is.
bool is_by_cash(const std::string& buyer) {
    return bytes_in(buyer).find("{\"cash\"") != std::string::npos;
}

} // namespace

TEST_CASE("At home every answer is the desk's, with all that a shared sheet has") {
    const Rates rates(true);
    for (const char* buyer : buyers) hold(source + buyer, rates.path(), everything, true);
}

TEST_CASE("At home every figure stands without what the buyer keeps private") {
    const Rates rates(true);
    for (const char* buyer : buyers) {
        // An option then changes the loan, where it was the cash that stood before.
        hold(source + buyer, rates.path(), {}, !is_by_cash(source + buyer));
    }
}

TEST_CASE("At home the loans stand on the rows alone that they use") {
    const Rates rates(false);
    for (const char* buyer : buyers) {
        hold(source + buyer, rates.path(), everything, false);
        hold(source + buyer, rates.path(), {}, false);
    }
}

TEST_CASE("What goes home passes the check of every command") {
    for (const bool shared : {true, false}) {
        const Rates rates(shared);
        for (const char* buyer : buyers) {
            const Home home({.inquiry = source + buyer, .rates = rates.path()});
            for (const TakenFile& file : home.taken.files) {
                const bool alone = file.path.ends_with(".json") && file.path != "drawing.json" &&
                                   file.path != "site-map.json";
                if (!alone) continue;
                CAPTURE(buyer, file.path);
                CHECK(check_file(home.file(file.path), home.file("rates"), {}).findings.none());
            }
        }
    }
}

// Nothing goes that is not named.

namespace {

/// A word that stands nowhere else.
class Marks {
  public:
    std::string next() {
        all_.push_back("zq" + std::to_string(1000 + all_.size()) + "qz");
        return all_.back();
    }
    [[nodiscard]] const std::vector<std::string>& all() const { return all_; }

  private:
    std::vector<std::string> all_;
};

/// Marks every note for those who keep the files: a comment in each object, and office notes.
void mark_for_the_desk(Json& value, Marks& marks) {
    if (value.is_array()) {
        for (Json& item : value) mark_for_the_desk(item, marks);
    }
    if (!value.is_object()) return;
    for (auto& [name, inner] : value.items()) {
        if (name != "office_note") mark_for_the_desk(inner, marks);
    }
    value["comment"] = marks.next();
}

void mark_office_notes(Json& items, Marks& marks) {
    for (Json& item : items) {
        item["office_note"] = {{"en", marks.next()}, {"es", marks.next()}};
        for (const char* inner : {"levels", "choices"}) {
            if (item.contains(inner)) mark_office_notes(item[inner], marks);
        }
    }
}

/// Whatever is said of something that is not this buyer's.
void mark_texts(Json& value, Marks& marks, const std::set<std::string>& but) {
    for (auto& [name, inner] : value.items()) {
        if (but.contains(name)) continue;
        if (name == "note" || name == "text" || name == "name" || name == "style") {
            inner = marks.next();
        } else if (inner.is_structured()) {
            mark_texts(inner, marks, but);
        }
    }
}

/// The example with a mark in each member that has to stay, as six-programs (plan "teasel") sees
/// it.
class Marked {
  public:
    Marked() : folder_((source + "/examples/oxbarrow-meadow").c_str()) {
        fs::copy(source + "/rates", folder_.path("rates"), fs::copy_options::recursive);
        mark_book();
        mark_lots();
        for (const char* plan : {"sorrel", "burdock", "comfrey"}) {
            const std::string file = folder_.path("plans/" + std::string(plan) + ".json");
            Json drawing = json_in(file);
            mark_texts(drawing["floors"], marks, {});
            write_json_to(file, drawing);
        }
        mark_comments("pricebook.json");
        mark_comments("plans/teasel.json");
        mark_comments("site-map.json");
        mark_lending();
        mark_inquiry();
    }
    [[nodiscard]] std::string inquiry() const { return folder_.path("buyers/six-programs.json"); }
    [[nodiscard]] std::string rates() const { return folder_.path("rates"); }

    Marks marks;

  private:
    void mark_comments(const std::string& name) {
        Json json = json_in(folder_.path(name));
        mark_for_the_desk(json, marks);
        write_json_to(folder_.path(name), json);
    }
    void mark_book();
    void mark_lots();
    void mark_lending();
    void mark_inquiry();

    Scratch folder_;
};

void Marked::mark_book() {
    Json book = json_in(folder_.path("pricebook.json"));
    mark_office_notes(book["options"], marks);
    for (Json& plan : book["plans"]) {
        if (plan["id"] == "teasel") continue;
        plan["note"] = marks.next();
        plan["style"] = marks.next();
        plan["measures"][marks.next()] = "1";
        mark_texts(plan["elevations"], marks, {"name"});
        Json dear = plan["elevations"].back(); // one that costs more than the first
        dear["id"] = marks.next();
        dear["name"] = marks.next();
        plan["elevations"].push_back(dear);
    }
    for (Json& option : book["options"]) {
        if (option["id"] == "stair-rail" || option["id"] == "laundry-upstairs") {
            mark_texts(option, marks, {}); // of the two-story plans alone
        }
    }
    for (Json& incentive : book["incentives"]) {
        if (incentive["id"] == "finish-credit") mark_texts(incentive, marks, {});
    }
    for (Json& included : book["included"]) {
        const bool here = !included.contains("plans") ||
                          included["plans"].dump().find("teasel") != std::string::npos;
        if (!here) mark_texts(included, marks, {});
    }
    write_json_to(folder_.path("pricebook.json"), book);
}

/// Its last two columns are an office note in each language, empty but for one lot.
void Marked::mark_lots() {
    std::istringstream in(bytes_in(folder_.path("lots.csv")));
    std::string list;
    std::string line;
    bool first = true;
    while (std::getline(in, line)) {
        if (line.ends_with(",,")) {
            line.resize(line.size() - 2);
            line += "," + marks.next();
            line += "," + marks.next();
        }
        list += line + (first ? ",comment" : "," + marks.next()) + "\n";
        first = false;
    }
    std::ofstream(folder_.path("lots.csv"), std::ios::binary) << list;
}

void Marked::mark_lending() {
    for (const char* program : {"conventional-5-6", "conventional-7-6"}) {
        const std::string file = folder_.path("rates/programs/" + std::string(program) + ".json");
        Json json = json_in(file);
        for (const char* text : {"name", "summary", "catch"}) json[text] = marks.next();
        write_json_to(file, json);
    }
    const std::string old = folder_.path("rates/sheets/2026-10-16.json");
    Json sheet = json_in(old);
    sheet["note"] = marks.next();
    sheet["lender"]["name"] = marks.next();
    write_json_to(old, sheet);
    for (const auto& file : fs::recursive_directory_iterator(rates())) {
        if (!file.is_regular_file()) continue;
        mark_comments(fs::relative(file.path(), folder_.path()).string());
    }
}

void Marked::mark_inquiry() {
    Json json = json_in(inquiry());
    json["prepared_by"] = marks.next();
    mark_for_the_desk(json, marks);
    write_json_to(inquiry(), json);
}

std::string all_bytes(const TakenHome& taken) {
    std::string all;
    for (const TakenFile& file : taken.files) all += file.path + "\n" + file.bytes + "\n";
    return all;
}

} // namespace

TEST_CASE("Nothing of the desk is in any file that goes home") {
    const Marked marked;
    const Home home({.inquiry = marked.inquiry(), .rates = marked.rates()});
    const std::string all = all_bytes(home.taken);
    CHECK(marked.marks.all().size() > 1000);
    for (const std::string& mark : marked.marks.all()) {
        if (all.find(mark) == std::string::npos) continue;
        FAIL_CHECK(mark << " went home: " << all.substr(all.find(mark) - 200, 260));
    }
    // What is the buyer's is found, so that the search would find the rest.
    CHECK(all.find("This is the furnished model. The study is off the entry.") !=
          std::string::npos);
    CHECK(all.find("comment") == std::string::npos);
    CHECK(all.find("office_note") == std::string::npos);
    CHECK(all.find(fs::path(marked.rates()).parent_path().string()) == std::string::npos);
}

// Every literal of the desk, told apart by the table.

namespace {

using Literals = std::set<std::string>;

struct Sorted {
    Literals may_go;
    Literals stay;

    void stays(const Value& value) { collect(value, stay); }
    void sort(const Value& value, const Members& members) {
        if (value.kind == Value::Kind::list) {
            for (const Value& item : value.items) sort(item, members);
        } else if (value.kind != Value::Kind::object) {
            may_go.insert(value.literal);
        }
        for (std::size_t i = 0; i < value.keys.size(); ++i) {
            const std::string& name = value.keys[i].name;
            const auto member =
                std::find_if(members.begin(), members.end(), [&](const Member& one) {
                    return one.name == name || (one.name == "*" && name != "comment");
                });
            const bool text = members.empty() && (name == "en" || name == "es");
            if (member != members.end() || text) {
                sort(value.items[i], text ? Members{} : member->members);
                may_go.insert(name);
            } else if (name == "en" || name == "es") {
                sort(value.items[i], {});
            } else {
                stays(value.items[i]);
            }
        }
    }

  private:
    static void collect(const Value& value, Literals& into) {
        if (value.items.empty() && !value.literal.empty()) into.insert(value.literal);
        for (const Value& item : value.items) collect(item, into);
    }
};

Value value_in(const fs::path& path) {
    Findings findings;
    const Document document = read_json(path, FileMeant::file, findings);
    REQUIRE(findings.none());
    return document.root;
}

Value rows_in(const fs::path& path) {
    Findings findings;
    const Document list = parse_csv(read_file(path, FileMeant::lots, findings), findings);
    REQUIRE(findings.none());
    return list.root;
}

bool is_of_a_word(char letter) {
    return std::isalnum(static_cast<unsigned char>(letter)) != 0 || letter == '.' || letter == '-';
}

/// As a word of its own: "58" is not in "0.58".
bool holds_word(const std::string& text, const std::string& word) {
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        const bool begins = at == 0 || !is_of_a_word(text[at - 1]);
        const bool ends = end == text.size() || !is_of_a_word(text[end]);
        if (begins && ends) return true;
    }
    return false;
}

} // namespace

TEST_CASE("No literal of the desk goes home but those of members that may") {
    const std::string desk = source + "/examples/oxbarrow-meadow/";
    const Home home({.inquiry = desk + "buyers/six-programs.json", .rates = source + "/rates"});
    Sorted sorted;
    sorted.sort(value_in(desk + "buyers/six-programs.json"), may_go(FileKind::inquiry));
    sorted.sort(value_in(desk + "pricebook.json"), may_go(FileKind::price_book));
    for (const auto& [folder, kind] : {std::pair{"programs", FileKind::program},
                                       {"sheets", FileKind::rate_sheet},
                                       {"places", FileKind::place}}) {
        for (const auto& file : fs::directory_iterator(source + "/rates/" + folder)) {
            sorted.sort(value_in(file.path()), may_go(kind));
        }
    }
    for (const char* plan : {"sorrel", "burdock", "comfrey"}) {
        sorted.stays(value_in(desk + "plans/" + plan + ".json"));
    }
    sorted.sort(value_in(desk + "plans/teasel.json"), may_go(FileKind::drawing));
    sorted.sort(value_in(desk + "site-map.json"), may_go(FileKind::site_map));
    for (const char* other : {"moves-again", "right-under-eighty", "short-of-cash"}) {
        sorted.stays(value_in(desk + "buyers/" + other + ".json"));
    }
    for (const Value& lot : rows_in(desk + "lots.csv").items) {
        for (std::size_t i = 0; i < lot.items.size(); ++i) {
            const bool office = lot.keys[i].name.starts_with("office_note");
            (office ? sorted.stay : sorted.may_go).insert(lot.items[i].literal);
        }
    }
    std::string all;
    for (const TakenFile& file : home.taken.files) {
        if (!file.path.starts_with("pictures/")) all += file.bytes;
    }
    std::size_t looked_for = 0;
    for (const std::string& literal : sorted.stay) {
        const bool also_goes =
            std::any_of(sorted.may_go.begin(), sorted.may_go.end(),
                        [&](const std::string& other) { return holds_word(other, literal); });
        // The list of lots always goes under this name, whatever the desk calls it.
        if (also_goes || literal.size() < 3 || literal == "lots.csv") continue;
        ++looked_for;
        if (holds_word(all, literal)) FAIL_CHECK(literal << " went home");
    }
    CHECK(looked_for > 100);
    const bool lots = std::any_of(sorted.stay.begin(), sorted.stay.end(), [](const auto& one) {
        return one.find("Grade stakes") != std::string::npos;
    });
    CHECK(lots);
}

// What is private, and what is not shared.

namespace {

const std::string six = source + "/examples/oxbarrow-meadow/buyers/six-programs.json";

TakenHome six_with(const std::set<Private>& with) {
    return take_home({.inquiry = six, .rates = source + "/rates", .with = with});
}

Json inquiry_of(const TakenHome& taken) {
    const auto file = std::find_if(taken.files.begin(), taken.files.end(),
                                   [](const auto& one) { return one.path == "inquiry.json"; });
    REQUIRE(file != taken.files.end());
    return Json::parse(file->bytes);
}

} // namespace

TEST_CASE("What is private goes only where it is ticked, each for itself") {
    const std::pair<Private, std::string> members[] = {{Private::score, "score"},
                                                       {Private::income, "income"},
                                                       {Private::debts, "debts"},
                                                       {Private::cash, "cash"}};
    const Json real = json_in(six);
    for (const auto& [ticked, its] : members) {
        const Json inquiry = inquiry_of(six_with({ticked}));
        for (const auto& [what, name] : members) {
            CAPTURE(its, name);
            if (what == ticked) {
                CHECK(inquiry[name] == real[name]);
            } else if (what == Private::score) {
                CHECK(inquiry["score"] == "720");
            } else {
                CHECK_FALSE(inquiry.contains(name));
            }
        }
    }
    const std::string none = inquiry_of(six_with({})).dump();
    for (const char* figure : {"742", "9950", "390", "121000", "Sales desk"}) {
        CAPTURE(figure);
        CHECK_FALSE(holds_word(none, figure));
    }
    CHECK(holds_word(none, "Buyer 1"));
    CHECK(holds_word(none, "heated-floor")); // a wish
}

TEST_CASE("Household and taxes go with the income, and the report says what went") {
    const std::string buyer = source + "/examples/oxbarrow-meadow/buyers/va-used-before.json";
    for (const bool ticked : {true, false}) {
        TakeHomeAsked asked{.inquiry = buyer, .rates = source + "/rates"};
        if (ticked) asked.with.insert(Private::income);
        const TakenHome taken = take_home(asked);
        const Json inquiry = inquiry_of(taken);
        for (const char* name : {"income", "income_taxes", "household"}) {
            CHECK(inquiry.contains(name) == ticked);
        }
        const std::vector<Private>& said =
            ticked ? taken.report.asked.in_file : taken.report.asked.at_home;
        CHECK(std::find(said.begin(), said.end(), Private::income) != said.end());
    }
}

TEST_CASE("The score that goes is the least with the same figures: one less changes them") {
    const Rates rates(true);
    const Home home({.inquiry = six, .rates = rates.path()});
    REQUIRE(home.taken.report.asked.scores.size() == 1);
    const int score = home.taken.report.asked.scores.front().score;
    CHECK(score < 742);
    Json lower = home.json("inquiry.json");
    lower["score"] = score - 1;
    const Catalogue& say = catalogue_in(Language::english);
    const auto same = home.load(Language::english);
    write_json_to(home.file("inquiry.json"), lower);
    const auto other = home.load(Language::english);
    CHECK(changed(same->sitting(), say) != changed(other->sitting(), say));
}

TEST_CASE("A loan with a score of its own keeps it to itself, too") {
    Scratch folder((source + "/examples/oxbarrow-meadow").c_str());
    const std::string file = folder.path("buyers/six-programs.json");
    Json inquiry = json_in(file);
    inquiry["scenarios"][3]["score"] = 655;
    write_json_to(file, inquiry);
    const TakenHome taken = take_home({.inquiry = file, .rates = source + "/rates"});
    CHECK(inquiry_of(taken)["scenarios"][3]["score"] == "640");
    CHECK_FALSE(holds_word(inquiry_of(taken).dump(), "655"));
    CHECK(taken.report.asked.scores.size() == 2);
}

TEST_CASE("A down payment of all the cash goes as what it came to") {
    const std::string buyer = source + "/examples/oxbarrow-meadow/buyers/short-of-cash.json";
    const TakenHome taken = take_home({.inquiry = buyer, .rates = source + "/rates"});
    const Json inquiry = inquiry_of(taken);
    CHECK(inquiry["scenarios"][1]["down"].contains("amount"));
    CHECK_FALSE(holds_word(inquiry.dump(), "22500"));
    CHECK(taken.report.asked.down_as_amount == std::vector<std::string>{"FHA, all available cash"});
    const TakenHome ticked =
        take_home({.inquiry = buyer, .rates = source + "/rates", .with = {Private::cash}});
    CHECK(inquiry_of(ticked)["scenarios"][1]["down"]["cash"] == "22500");
}

TEST_CASE("A loan that the cash does not reach stays at the desk where the cash does") {
    Scratch folder((source + "/examples/oxbarrow-meadow").c_str());
    const std::string file = folder.path("buyers/short-of-cash.json");
    Json inquiry = json_in(file);
    inquiry["scenarios"][1]["down"]["cash"] = "4321";
    write_json_to(file, inquiry);
    const TakenHome taken = take_home({.inquiry = file, .rates = source + "/rates"});
    CHECK(inquiry_of(taken)["scenarios"].size() == 3);
    CHECK(taken.report.asked.loans_at_home == std::vector<std::string>{"FHA, all available cash"});
    CHECK_FALSE(holds_word(all_bytes(taken), "4321"));
}

TEST_CASE("Of a sheet that may be shared go the ladders in play, of any other the rows in use") {
    for (const bool shared : {true, false}) {
        const Rates rates(shared);
        const Home home({.inquiry = six, .rates = rates.path()});
        CHECK(home.taken.report.shared == shared);
        const Json sheet = home.json(home.sheet());
        CHECK(sheet["ladders"].size() == 6);
        std::size_t rungs = 0;
        for (const Json& ladder : sheet["ladders"]) {
            CHECK(ladder["lock_days"] == 180);
            rungs += ladder["rungs"].size();
        }
        CHECK(rungs == (shared ? 54 : 6));
        for (const Json& adjustment : sheet["adjustments"]) {
            CHECK(adjustment["value"] == (shared ? "points" : "points or no rate"));
            CHECK(adjustment["programs"].dump().find("-5-6") == std::string::npos);
        }
        std::size_t factors = 0;
        for (const Json& table : sheet["mortgage_insurance"]) factors += table["rows"].size();
        CHECK(factors == (shared ? 10 : 2));
        CHECK_FALSE(sheet.contains("index")); // of adjustable programs alone
    }
}

TEST_CASE("Where the rows in use are all that is told, another loan has no rate") {
    const Rates rates(false);
    const std::string buyer = source + "/examples/oxbarrow-meadow/buyers/right-under-eighty.json";
    const Home home({.inquiry = buyer, .rates = rates.path()});
    Json inquiry = home.json("inquiry.json");
    for (Json& scenario : inquiry["scenarios"]) scenario["down"] = {{"percent", "10"}};
    write_json_to(home.file("inquiry.json"), inquiry);
    const auto taken = home.load(Language::english);
    const QuoteAnswer answer = quote(taken->sitting());
    for (const ScenarioAnswer& scenario : answer.scenarios) CHECK_FALSE(scenario.available());
}

TEST_CASE("A program that takes over another's rules goes alone") {
    Scratch folder((source + "/examples/oxbarrow-meadow").c_str());
    const std::string file = folder.path("buyers/moves-again.json");
    Json inquiry = json_in(file);
    inquiry["scenarios"] = {inquiry["scenarios"][1]};
    write_json_to(file, inquiry);
    const Home home({.inquiry = file, .rates = source + "/rates", .with = everything});
    const fs::directory_iterator programs(home.file("rates/programs"));
    CHECK(std::distance(begin(programs), end(programs)) == 1);
    const Catalogue& say = catalogue_in(Language::english);
    const auto desk = load_inquiry(file, source + "/rates", Language::english, Drawn::yes);
    CHECK(as_it_stands(home.load(Language::english)->sitting(), say) ==
          as_it_stands(desk->sitting(), say));
}

// The home and its pictures.

TEST_CASE("A wish that only other plans have stays, and that is told") {
    Scratch folder((source + "/examples/oxbarrow-meadow").c_str());
    const std::string file = folder.path("buyers/six-programs.json");
    Json inquiry = json_in(file);
    inquiry["wishes"].push_back({{"option", "laundry-upstairs"}, {"rank", 7}});
    write_json_to(file, inquiry);
    const Home home({.inquiry = file, .rates = source + "/rates"});
    CHECK(home.taken.report.wishes_left_out == std::vector<std::string>{"laundry-upstairs"});
    CHECK(home.json("inquiry.json")["wishes"].size() == 6);
    CHECK(home.load(Language::english)->inquiry.wishes.size() == 6);
}

TEST_CASE("The plan goes whole, the others by name, size and price") {
    const Home home({.inquiry = six, .rates = source + "/rates"});
    const Json book = home.json("pricebook.json");
    const Json whole = json_in(source + "/examples/oxbarrow-meadow/pricebook.json");
    for (std::size_t i = 0; i < 4; ++i) {
        Json plan = whole["plans"][i];
        if (plan["id"] == "teasel") {
            plan["drawing"] = "drawing.json";
            CHECK(book["plans"][i] == plan);
            continue;
        }
        const Json least = {{"id", "field"}, {"name", "Field"}, {"price", "0"}};
        CHECK(book["plans"][i]["elevations"] == Json::array({least}));
        for (const char* member : {"note", "style", "measures", "drawing"}) {
            CHECK_FALSE(book["plans"][i].contains(member));
        }
    }
    for (const Json& option : book["options"]) {
        CHECK(option["only"]["plans"] == Json::array({"teasel"}));
        if (option.contains("price") && option["price"].is_object()) {
            CHECK(option["price"].size() == 1);
        }
    }
    CHECK(book["model"]["plan"] == "teasel");
    CHECK(home.json("drawing.json")["floors"].size() > 0);
    CHECK(home.json("site-map.json")["lots"].size() == 12);
}

TEST_CASE("Pictures of the home go as far as there is room, those of what is chosen first") {
    const TakenHome all = six_with({});
    CHECK(all.report.pictures > 100);
    CHECK(all.report.picture_bytes <= most_picture_bytes);
    CHECK(all.report.pictures_left_out.empty());
    const Home few({.inquiry = six, .rates = source + "/rates", .most_picture_bytes = 20'000});
    const TakenReport& report = few.taken.report;
    CHECK(report.picture_bytes <= 20'000);
    CHECK(report.pictures + report.pictures_left_out.size() == all.report.pictures);
    const std::string first = "pictures/elevation-teasel-orchard.svg";
    CHECK(fs::exists(few.file(first)));
    CHECK(bytes_in(few.file(first)) == bytes_in(source + "/examples/oxbarrow-meadow/" + first));
    const std::string book = bytes_in(few.file("pricebook.json"));
    for (const std::string& file : report.pictures_left_out) {
        CHECK_FALSE(fs::exists(few.file(file)));
        CHECK(book.find(file) == std::string::npos);
    }
    CHECK(check_file(few.file("pricebook.json"), few.file("rates"), {}).findings.none());
    for (const TakenFile& file : all.files) {
        CHECK(file.path.find("elevation-burdock") == std::string::npos);
        CHECK(file.path.find("stair-rail") == std::string::npos);
    }
}

// The folder.

TEST_CASE("A folder is written whole, for its owner alone, and only where nothing is") {
    const Scratch scratch;
    const std::vector<TakenFile> files = {{"one.json", "1"}, {"in/side/two.json", "2"}};
    write_folder(scratch.path("new/"), files);
    CHECK(bytes_in(scratch.path("new/in/side/two.json")) == "2");
    struct stat status {};
    for (const char* each : {"new", "new/in", "new/in/side", "new/one.json"}) {
        REQUIRE(stat(scratch.path(each).c_str(), &status) == 0);
        CHECK((status.st_mode & (S_IRWXG | S_IRWXO)) == 0);
    }
    fs::create_directory(scratch.path("empty"));
    write_folder(scratch.path("empty"), files);
    CHECK(bytes_in(scratch.path("empty/one.json")) == "1");
    CHECK_THROWS_AS(write_folder(scratch.path("empty"), files), Refused);
    scratch.write("file", "somebody's");
    CHECK_THROWS_AS(write_folder(scratch.path("file"), files), Refused);
    CHECK(bytes_in(scratch.path("file")) == "somebody's");
    CHECK_THROWS_AS(write_folder(scratch.path("nowhere/new"), files), Refused);
}

TEST_CASE("Where writing fails, nothing of a folder is left") {
    const Scratch scratch;
    // A file where a folder has to be.
    const std::vector<TakenFile> files = {{"one", "1"}, {"one/two", "2"}};
    CHECK_THROWS_AS(write_folder(scratch.path("new"), files), Refused);
    CHECK(fs::is_empty(scratch.path()));
}

TEST_CASE("The command says what went, in each language and as JSON") {
    const Scratch scratch;
    const auto ask = [&](const std::string& folder, std::vector<std::string> more) {
        std::vector<std::string> words = {"take-home",       six,      "--rates",
                                          source + "/rates", "--desk", scratch.path(folder)};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, &quoin::apps::all_of_it);
    };
    const Result english = ask("en", {"--with", "income"});
    CHECK(english.code == done);
    CHECK(english.output.find("the file says 720") != std::string::npos);
    CHECK(english.output.find("income and household, as you asked") != std::string::npos);
    CHECK(ask("es", {"--language", "es"}).output.find("No se incluye") != std::string::npos);
    const Json told = Json::parse(ask("json", {"--json"}).output);
    CHECK(told["left_out"] == Json::array({"income", "debts", "cash"}));
    CHECK(told["options"]["all"] == 79);
    CHECK(ask("en", {}).code == input_wrong); // it is not empty any more
    CHECK(ask("new", {"--with", "everything"}).code == use_wrong);
}

TEST_CASE("An inquiry that cannot be read leaves no folder behind") {
    const Scratch scratch;
    scratch.write("broken.json", "{");
    for (const char* name : {"broken.json", "missing.json"}) {
        const Result result = run({"take-home", scratch.path(name), "--desk", scratch.path("new"),
                                   "--rates", source + "/rates"},
                                  &quoin::apps::all_of_it);
        CHECK(result.code == input_wrong);
        CHECK_FALSE(fs::exists(scratch.path("new")));
    }
}
