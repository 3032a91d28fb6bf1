// The table of targets, and what each does with its bytes.
#include "targets.hpp"

#include <algorithm>
#include <ctime>
#include <sstream>

#include <fmt/format.h>

#include <quoin/answers/apr.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/listing.hpp>

#include "apps/command_line.hpp"
#include "apps/harmless_svg.hpp"
#include "apps/picture_header.hpp"
#include "questions.hpp"
#include "shipped.hpp"
#include <quoin/inquiry/asking.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/pricebook/drawn.hpp>
#include <quoin/text/language.hpp>
#include <quoin/text/value.hpp>

namespace quoin::fuzz {
namespace {

/// What is read comes back the same when it is written and read again.
void run_json(const std::string& bytes) {
    Findings findings;
    const Document document = document_of(bytes, findings);
    render(findings);
    if (!findings.none()) return;
    const std::string written = write_json(document.root);
    const Document again = document_of(written, findings);
    if (!findings.none() || write_json(again.root) != written) {
        throw Find("what was written is not what was read");
    }
}

void run_csv(const std::string& bytes) {
    Findings findings;
    const Document document =
        parse_csv(std::make_shared<const Source>("input.csv", bytes), findings);
    render(findings);
    if (findings.none()) must_be_json(write_json(document.root), "a list of rows");
}

/// The inquiries of a community that can be read at this desk, the first few of them, are asked.
void ask_some(const Desk& desk, const Community& community,
              const std::vector<std::string_view>& names) {
    int left = 2;
    for (const Document& document : community.inquiries) {
        Findings findings;
        const Inquiry inquiry = read_inquiry(document, desk, findings);
        if (!findings.none()) continue;
        ask(desk, inquiry, {}, names);
        if (--left == 0) return;
    }
}

void use_book(const PriceBook& book, const Community& community) {
    static Desk desk;
    desk = {book, community.desk.lending, {}};
    ask_some(desk, community, {"quote", "tour", "site", "shown", "adds", "fit"});
}

/// A price book that is sound is listed, and asked about by the inquiries that it fits.
void run_book(const Document& document, const Document* lots) {
    Findings findings;
    const PriceBook book = read_price_book(document, lots, findings);
    render(findings);
    if (!findings.none()) return;
    for (const Listing what : {Listing::plans, Listing::lots, Listing::options}) {
        static_cast<void>(listing_text(book, what));
        static_cast<void>(listing_csv(book, what));
        must_be_json(listing_json(book, what), "list");
    }
    use_book(book, example());
    use_book(book, small());
}

const Document& shipped_lots() {
    static const Document lots = [] {
        for (const Seed& file : files_ending_in(".csv")) {
            if (file.name.find("examples/") != 0) continue;
            Findings findings;
            Document list =
                parse_csv(std::make_shared<const Source>("lots.csv", file.bytes), findings);
            choose_lot_texts(list, Language::english);
            return list;
        }
        throw Find("the shipped list of lots is missing");
    }();
    return lots;
}

void run_price_book(const std::string& bytes) {
    Findings findings;
    const Document document = data_of(bytes, findings);
    if (!findings.none()) return;
    const bool listed = lots_file(document.root).has_value();
    run_book(document, listed ? &shipped_lots() : nullptr);
}

/// The shipped price book with the bytes as its list of lots.
void run_lots(const std::string& bytes) {
    static const Document book = [] {
        Findings findings;
        for (const Seed& file : files_of(FileKind::price_book)) {
            Document document = data_of(file.bytes, findings);
            if (lots_file(document.root) && file.name.find("examples/") == 0) return document;
        }
        throw Find("the shipped price book is missing");
    }();
    Findings findings;
    Document lots = parse_csv(std::make_shared<const Source>("lots.csv", bytes), findings);
    choose_lot_texts(lots, Language::english);
    if (findings.none()) run_book(book, &lots);
}

/// A drawing of any plan of the example; a sound one is drawn with all of its changes.
void run_drawing(const std::string& bytes) {
    Findings findings;
    const Document document = data_of(bytes, findings);
    if (!findings.none()) return;
    const PriceBook& book = example().desk.book;
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        Findings wrong;
        const PlanDrawing drawing = read_drawing(document, book, plan, wrong);
        render(wrong);
        if (!wrong.none()) continue;
        const auto made = changes_made(drawing, [](const DrawnIf&) { return true; });
        if (floors_drawn(drawing, made).size() != drawing.floors.size()) {
            throw Find("changes add a floor or take one away");
        }
    }
}

/// A document in the place of the shipped one of its id, or beside them; the desk is then asked.
void use_lending(Document document, Community& community) {
    const Value* id = document.root.find("id");
    auto at = community.lending.begin();
    while (at != community.lending.end() && (kind_of(*at) != kind_of(document) || id == nullptr ||
                                             at->root.find("id")->literal != id->literal)) {
        ++at;
    }
    const bool is_new = at == community.lending.end();
    std::vector<Document> documents = community.lending;
    if (is_new) {
        documents.push_back(std::move(document));
    } else {
        documents[static_cast<std::size_t>(at - community.lending.begin())] = std::move(document);
    }
    Findings findings;
    static Desk desk;
    desk = {community.desk.book, read_lending(documents, findings), {}};
    render(findings);
    if (findings.none()) {
        ask_some(desk, community, {"quote", "compare", "cash", "recheck", "afford", "programs"});
    }
}

/// The head of any bytes is told or not; that of a sound sheet is its own.
void check_head(const std::string& bytes, const RateSheet* sheet) {
    std::istringstream json(bytes);
    const auto head = head_of_rate_sheet(json);
    if (sheet == nullptr) return;
    if (!head || head->id != sheet->id || head->date != sheet->date) {
        throw Find("the head of a rate sheet is not that of the whole");
    }
}

void run_lending(const std::string& bytes) {
    check_head(bytes, nullptr);
    Findings findings;
    const Document document = data_of(bytes, findings);
    if (!findings.none()) return;
    switch (kind_of(document)) {
    case FileKind::program:
        static_cast<void>(read_program(document, fee_methods(), findings));
        break;
    case FileKind::rate_sheet:
        if (const RateSheet sheet = read_rate_sheet(document, findings); findings.none()) {
            check_head(bytes, &sheet);
        }
        break;
    case FileKind::place:
        static_cast<void>(read_place(document, findings));
        break;
    default:
        return;
    }
    render(findings);
    if (!findings.none()) return;
    use_lending(document, small());
    use_lending(document, example());
}

/// Calls `use` for an inquiry that is sound at the desk of a community, with its options.
void with_inquiry(const std::string& bytes,
                  void (*use)(const Desk&, const Inquiry&, std::string_view)) {
    Findings findings;
    const Document document = document_of(bytes, findings);
    if (!findings.none()) return;
    for (const Community* community : {&example(), &small()}) {
        Findings wrong;
        const Inquiry inquiry = read_inquiry(document, community->desk, wrong);
        render(wrong);
        if (!wrong.none()) continue;
        const Value* comment = document.root.find("comment");
        use(community->desk, inquiry,
            comment == nullptr ? std::string_view{} : std::string_view(comment->literal));
        return;
    }
}

void run_inquiry(const std::string& bytes) {
    with_inquiry(bytes, [](const Desk& desk, const Inquiry& inquiry, std::string_view options) {
        ask(desk, inquiry, options, {"quote"});
    });
}

void run_questions(const std::string& bytes) { with_inquiry(bytes, ask_all); }

void run_apr(const std::string& bytes) {
    Findings findings;
    const Document document = document_of(bytes, findings);
    if (!findings.none()) return;
    const AprAnswer answer = read_and_solve_apr(document, findings);
    render(findings);
    if (!findings.none()) return;
    static_cast<void>(text_of(answer));
    must_be_json(json_text_of(answer), "apr");
}

std::vector<std::string> words_of(const std::string& bytes) {
    std::vector<std::string> words;
    std::size_t begin = 0;
    while (begin < bytes.size()) {
        const std::size_t end = std::min(bytes.find_first_of(" \n", begin), bytes.size());
        if (end > begin) words.push_back(bytes.substr(begin, end - begin));
        begin = end + 1;
    }
    return words;
}

/// A command line of options and their values alone: no file is named, none is written.
void run_typed(const std::string& bytes) {
    const std::vector<std::string> words = words_of(bytes);
    if (words.empty()) return;
    if (words.front() == "option") {
        static_cast<void>(picks_named(example().desk.book, {words.begin() + 1, words.end()}));
        return;
    }
    if (words.front() != "payment" && words.front() != "afford") return;
    for (std::size_t i = 1; i < words.size(); i += 2) {
        if (words[i].rfind("--", 0) != 0 || words[i].rfind("--r", 0) == 0) {
            if (words[i] != "--rate" && words[i] != "--region" && words[i] != "--reserves") return;
        }
        if (words[i].find('=') != std::string::npos) return;
    }
    if (words.size() % 2 == 0) return;
    for (const char* way : {"--json", ""}) {
        std::vector<std::string> arguments = words;
        if (*way != '\0') arguments.emplace_back(way);
        const apps::Result result = apps::run(arguments);
        if (result.code == apps::fault) throw Find(result.errors);
        if (result.code == apps::done && *way != '\0') must_be_json(result.output, "typed");
    }
}

/// A picture is judged, whatever it is; one of points has a size, and is no SVG picture, too.
void run_picture(const std::string& bytes) {
    const auto raster = apps::raster_of(bytes);
    const auto fault = apps::svg_fault(bytes);
    if (raster && (raster->width == 0 || raster->height == 0)) throw Find("a picture of no size");
    if (raster && !fault) throw Find("a picture of two kinds");
}

std::vector<Seed> typed_seeds() {
    return {
        {"payment", "payment --loan 250000 --rate 6.5 --years 30"},
        {"months", "payment --loan 9000000000 --rate 0 --months 480"},
        {"afford", "afford --income 8400 --debts 450 --cash 60000 --rate 6.25"},
        {"usda", "afford --income 8400 --rate 6.25 --program usda --persons 4 --region west "
                 "--taxes 1700 --square-feet 2000 --score 640 --as-of 2026-02-28"},
        {"va", "afford --income 12000 --rate 0.125 --program va --years 15 --down 10 --dues 60 "
               "--property-tax 1.9 --insurance 0.35 --closing-costs 3 --reserves 6 --step 10000"},
        {"options", "option deck:composite recessed-lights=8 light-fixtures=2640.50 fireplace"},
    };
}

template <FileKind kind>
std::vector<Seed> seeds_of() {
    return files_of(kind);
}

std::vector<Seed> json_seeds() { return files_ending_in(".json"); }
std::vector<Seed> csv_seeds() { return files_ending_in(".csv"); }
std::vector<Seed> picture_seeds() { return files_ending_in(".svg"); }

/// Each inquiry, and once more with options in its comment.
std::vector<Seed> question_seeds() {
    std::vector<Seed> seeds = files_of(FileKind::inquiry);
    Value comment;
    comment.kind = Value::Kind::text;
    comment.literal = "appraised=455000 amount=15000 years=5 instead=1 steps=2 step=0.25 "
                      "reserves=2 automated=1 month=7 loan-rate=11.5 loan-months=60 extra=150 "
                      "by-part=1 monthly=2900 cash=60000 index=5.5";
    for (const Seed& file : files_of(FileKind::inquiry)) {
        Findings findings;
        Value root = document_of(file.bytes, findings).root;
        const auto at = std::find_if(root.keys.begin(), root.keys.end(),
                                     [](const Key& key) { return key.name == "comment"; });
        if (at == root.keys.end()) {
            root.keys.push_back({"comment", {}});
            root.items.push_back(comment);
        } else {
            root.items[static_cast<std::size_t>(at - root.keys.begin())] = comment;
        }
        seeds.push_back({file.name + " with options", write_json(root)});
    }
    return seeds;
}

} // namespace

const std::vector<Target>& targets() {
    static const std::vector<Target> table = {
        {"questions", "an inquiry, every question, every rendering", run_questions, question_seeds},
        {"inquiry", "an inquiry at the example desk", run_inquiry, seeds_of<FileKind::inquiry>},
        {"price-book", "a price book, listed and asked about", run_price_book,
         seeds_of<FileKind::price_book>},
        {"drawing", "a drawing of the example's plans", run_drawing, seeds_of<FileKind::drawing>},
        {"program", "a loan program at the desk", run_lending, seeds_of<FileKind::program>},
        {"sheet", "a rate sheet at the desk", run_lending, seeds_of<FileKind::rate_sheet>},
        {"place", "a place at the desk", run_lending, seeds_of<FileKind::place>},
        {"apr", "an APR problem", run_apr, seeds_of<FileKind::apr_problem>},
        {"lots", "the list of lots of the example", run_lots, csv_seeds, false},
        {"json", "any JSON", run_json, json_seeds, false},
        {"csv", "any CSV", run_csv, csv_seeds, false},
        {"picture", "a picture beside a price book", run_picture, picture_seeds, false},
        {"typed", "figures and days on the command line", run_typed, typed_seeds, false},
    };
    return table;
}

const Target* find_target(std::string_view name) {
    for (const Target& target : targets()) {
        if (target.name == name) return &target;
    }
    return nullptr;
}

void run_timed(const Target& target, const std::string& bytes, double seconds) {
    const std::clock_t began = std::clock();
    try {
        target.run(bytes);
    } catch (const Refused& refused) {
        render(refused.findings());
    } catch (const Overflow&) {
        // told as figures too large to count
    }
    const double took = static_cast<double>(std::clock() - began) / CLOCKS_PER_SEC;
    if (took > seconds) throw Find(fmt::format("took {:.1f} s", took));
}

} // namespace quoin::fuzz
