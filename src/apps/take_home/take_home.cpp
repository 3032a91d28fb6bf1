// Gathering what a buyer takes home, file by file.
#include "take_home.hpp"

#include <algorithm>
#include <map>
#include <memory>

#include <quoin/text/names.hpp>
#include <quoin/text/problems.hpp>

#include "../files.hpp"
#include "../loading.hpp"
#include "book_of_plan.hpp"
#include "edited.hpp"
#include "kept.hpp"
#include "lots_list.hpp"
#include "program_in_play.hpp"
#include "sheet_in_play.hpp"

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

/// A file that was read once already: what was wrong with it would have been told.
Document read_again(const fs::path& path, FileMeant what) {
    Findings findings;
    Document document = read_json(path, what, findings);
    if (!findings.none()) throw Refused(std::move(findings));
    return document;
}

Document read_list_again(const fs::path& path) {
    Findings findings;
    Document list;
    if (auto source = read_file(path, FileMeant::lots, findings)) {
        list = parse_csv(std::move(source), findings);
    }
    if (!findings.none()) throw Refused(std::move(findings));
    return list;
}

std::size_t length_of(const Value& object, std::string_view list) {
    const Value* value = object.find(list);
    return value == nullptr ? 0 : value->items.size();
}

std::size_t rungs_of(const Value& sheet) {
    std::size_t count = 0;
    const Value* ladders = sheet.find("ladders");
    for (const Value& ladder : ladders->items) count += length_of(ladder, "rungs");
    return count;
}

/// Lending data by what it is and the id that it tells. What is at fault in a file that no loan
/// here needs keeps nobody from home.
using Files = std::map<std::pair<FileKind, std::string>, Value>;

Files lending_files(const fs::path& rates) {
    Files files;
    for (const char* kind : {"programs", "sheets", "places"}) {
        for (const fs::path& path : json_files(rates / kind)) {
            Findings faults;
            Document document = read_json(path, FileMeant::lending_data, faults);
            if (!faults.none()) continue;
            const FileKind what = kind_of(document);
            files.emplace(std::pair(what, text_in(document.root, "id")), std::move(document.root));
        }
    }
    return files;
}

std::size_t programs_of(const Files& files) {
    return static_cast<std::size_t>(std::count_if(files.begin(), files.end(), [](const auto& file) {
        return file.first.first == FileKind::program;
    }));
}

fs::path book_of(const std::string& file, const Inquiry& inquiry) {
    return (fs::path(file).parent_path() / inquiry.price_book).lexically_normal();
}

class Gathering {
  public:
    explicit Gathering(const TakeHomeAsked& asked)
        : asked_(asked),
          loaded_(load_inquiry(asked.inquiry, asked.rates, asked.language, Drawn::yes)),
          document_(read_again(asked.inquiry, FileMeant::inquiry)),
          whole_book_(read_again(book_of(asked.inquiry, loaded_->inquiry), FileMeant::price_book)),
          book_(book_of_plan(whole_book_.root, text_in(document_.root, "plan"))) {}

    [[nodiscard]] TakenHome gather();

  private:
    void add(std::string path, std::string bytes);
    void add(std::string path, const Value& value) {
        add(std::move(path), write_json(value) + "\n");
    }
    void count(TakenPart part, std::size_t went, std::size_t all) {
        taken_.report.counts.push_back({part, went, all});
    }

    void take_inquiry();
    void take_book();
    void take_lots(Value& book, const fs::path& file);
    void take_drawings(Value& book, const fs::path& folder);
    void take_looks(Value& book);
    void take_lending();
    void take_programs(const Sitting& sitting, const Files& files);

    const TakeHomeAsked& asked_;
    std::unique_ptr<Loaded> loaded_;
    Document document_;
    Document whole_book_;
    Value book_;      ///< the part that is about the plan
    Inquiry inquiry_; ///< as it goes home
    TakenHome taken_;
};

void Gathering::add(std::string path, std::string bytes) {
    taken_.files.push_back({std::move(path), std::move(bytes)});
}

void Gathering::take_inquiry() {
    InquiryToTake& asked = taken_.report.asked;
    asked = inquiry_to_take(document_, loaded_->desk, loaded_->inquiry, asked_.with);
    taken_.report.wishes_left_out = take_out_wishes_elsewhere(asked.inquiry, book_);
    Findings findings;
    inquiry_ = read_inquiry({document_.source, asked.inquiry}, loaded_->desk, findings);
    if (!findings.none()) throw Refused(std::move(findings));
    add("inquiry.json", asked.inquiry);
}

/// A list beside the book goes under a name of its own: what was written may lead anywhere.
void Gathering::take_lots(Value& book, const fs::path& file) {
    const Document list = read_list_again(file);
    add("lots.csv", lots_list(kept_rows(list.root, may_go_of_lots())));
    set(book, "lots", object_of("csv", text_of_value("lots.csv")));
}

/// That of the plan, and the map.
void Gathering::take_drawings(Value& book, const fs::path& folder) {
    for (Value& plan : member(book, "plans")->items) {
        const std::string file = text_in(plan, "drawing");
        if (file.empty() || text_in(plan, "id") != text_in(document_.root, "plan")) continue;
        const Document drawing = read_again(folder / file, FileMeant::drawing);
        add("drawing.json", kept(drawing_for(drawing.root, book), may_go(FileKind::drawing)));
        set(plan, "drawing", text_of_value("drawing.json"));
    }
    const std::string file = text_in(book, "map");
    if (file.empty()) return;
    const Document map = read_again(folder / file, FileMeant::site_map);
    const bool degrees = map.root.find("format") == nullptr;
    add("site-map.json",
        kept(map.root, degrees ? may_go_of_map_in_degrees() : may_go(FileKind::site_map)));
    set(book, "map", text_of_value("site-map.json"));
}

void Gathering::take_looks(Value& book) {
    TakenReport& report = taken_.report;
    PicturesTaken looks =
        take_pictures(book, report.asked.inquiry, whole_book_.source, asked_.most_picture_bytes);
    for (const Picture& picture : looks.pictures) {
        add(picture.file, std::string(picture.source->text()));
    }
    report.pictures = looks.pictures.size();
    report.picture_bytes = looks.bytes;
    report.most_picture_bytes = asked_.most_picture_bytes;
    report.pictures_left_out = std::move(looks.left_out);
}

void Gathering::take_book() {
    const Desk& desk = loaded_->desk;
    const Plan& plan = at(desk.book.plans, inquiry_.selection.plan);
    TakenReport& report = taken_.report;
    report.plan = plan.name;
    report.elevation = at(plan.elevations, inquiry_.selection.elevation).name;
    report.other_plans = desk.book.plans.size() - 1;
    Value book = kept(book_, may_go(FileKind::price_book));
    const fs::path folder = fs::path(whole_book_.source->name()).parent_path();
    if (const auto list = lots_file(whole_book_.root)) take_lots(book, folder / *list);
    take_drawings(book, folder);
    take_looks(book);
    add("pricebook.json", book);
    count(TakenPart::options, length_of(book, "options"), desk.book.options.size());
    count(TakenPart::incentives, length_of(book, "incentives"), desk.book.incentives.size());
    count(TakenPart::lots, desk.book.lots.size(), desk.book.lots.size());
}

void Gathering::take_programs(const Sitting& sitting, const Files& files) {
    std::map<std::string, std::set<int>> terms;
    for (const ScenarioRules& rules : sitting.rules()) {
        terms[rules.program->id].insert(rules.scenario.term.count());
    }
    for (const auto& [id, months] : terms) {
        const Value& program = files.at({FileKind::program, id});
        const auto rules_of = files.find({FileKind::program, text_in(program, "rules_of")});
        const Value* other = rules_of == files.end() ? nullptr : &rules_of->second;
        add("rates/programs/" + id + ".json",
            kept(program_in_play(program, other, months), may_go(FileKind::program)));
    }
    count(TakenPart::programs, terms.size(), programs_of(files));
}

void Gathering::take_lending() {
    const Sitting sitting(loaded_->desk, inquiry_);
    const Files files = lending_files(rates_folder(asked_.rates));
    take_programs(sitting, files);
    const std::string& id = sitting.sheet().id;
    const Value& sheet = files.at({FileKind::rate_sheet, id});
    const Value in_play = kept(sheet_in_play(sheet, sitting), may_go(FileKind::rate_sheet));
    add("rates/sheets/" + id + ".json", in_play);
    taken_.report.sheet = id;
    taken_.report.shared = may_be_shared(sheet);
    count(TakenPart::rates, rungs_of(in_play), rungs_of(sheet));
    for (const std::string& place : std::set{sitting.place().id, sitting.book().community.place}) {
        add("rates/places/" + place + ".json",
            kept(files.at({FileKind::place, place}), may_go(FileKind::place)));
    }
}

TakenHome Gathering::gather() {
    take_inquiry();
    take_book();
    take_lending();
    return std::move(taken_);
}

} // namespace

TakenHome take_home(const TakeHomeAsked& asked) { return Gathering(asked).gather(); }

} // namespace quoin::apps
