// Running the command, and telling what went and what did not.
#include "taking_home.hpp"

#include <quoin/render/blocks.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/words/catalogue.hpp>

#include "../written_file.hpp"
#include "home_file.hpp"
#include "take_home.hpp"
#include "words/apps.hpp"
#include "written_folder.hpp"

namespace quoin::apps {
namespace {

int kb_of_all(std::size_t bytes) { return static_cast<int>((bytes + 999) / 1000); }

std::size_t bytes_of(const std::vector<TakenFile>& files) {
    std::size_t bytes = 0;
    for (const TakenFile& file : files) bytes += file.bytes.size();
    return bytes;
}

/// Lines under a heading.
struct Told {
    Blocks& out;

    void operator()(const std::string& line) const { out += paragraph(line, "  ", "    "); }
};

void tell_what_went(const TakenReport& report, const TakeHomeWords& of, Blocks& out) {
    const Told tell{out};
    out += of.went() + "\n";
    tell(of.plan(report.plan, report.elevation));
    if (report.other_plans > 0) tell(of.other_plans(static_cast<int>(report.other_plans)));
    for (const TakenCount& count : report.counts) {
        tell(of.counted(of.part(count.part), static_cast<int>(count.went),
                        static_cast<int>(count.all)));
    }
    tell(report.shared ? of.all_rates(report.sheet) : of.own_rates(report.sheet));
    tell(of.pictures(static_cast<int>(report.pictures), kb_of_all(report.picture_bytes)));
    for (const Private what : report.asked.in_file) tell(of.in_file(of.of_buyer(what)));
}

void tell_what_stays(const TakenReport& report, const TakeHomeWords& of, Blocks& out) {
    const Told tell{out};
    const InquiryToTake& asked = report.asked;
    out += of.left_out() + "\n";
    for (const ScoreSaid& score : asked.scores) {
        tell(score.scenario.empty() ? of.least_score(score.score)
                                    : of.least_of(score.scenario, score.score));
    }
    for (const Private what : asked.at_home) tell(of.of_buyer(what));
    for (const std::string& loan : asked.down_as_amount) tell(of.down_as_amount(loan));
    for (const std::string& loan : asked.loans_at_home) tell(of.loan_at_home(loan));
    for (const std::string& option : report.wishes_left_out) tell(of.wish(option));
    for (const std::string& picture : report.pictures_left_out) {
        tell(of.no_picture(picture, kb_of_all(report.most_picture_bytes)));
    }
    tell(of.for_the_desk());
}

void write_privates(const TakenReport& report, JsonWriter& json) {
    const InquiryToTake& asked = report.asked;
    json.list("in_file", [&] {
        for (const Private what : asked.in_file) json.text(code_of(what));
    });
    json.list("left_out", [&] {
        for (const Private what : asked.at_home) json.text(code_of(what));
    });
    json.list("scores", [&] {
        for (const ScoreSaid& score : asked.scores) {
            json.object([&] {
                if (!score.scenario.empty()) json.text("scenario", score.scenario);
                json.number("score", score.score);
            });
        }
    });
    const auto names = [&](std::string_view name, const std::vector<std::string>& all) {
        json.list(name, [&] {
            for (const std::string& one : all) json.text(one);
        });
    };
    names("down_as_amount", asked.down_as_amount);
    names("scenarios_left_out", asked.loans_at_home);
    names("wishes_left_out", report.wishes_left_out);
    names("pictures_left_out", report.pictures_left_out);
}

std::string report_json(const TakenHome& taken) {
    JsonWriter json;
    json.object([&] {
        json.list("files", [&] {
            for (const TakenFile& file : taken.files) {
                json.object([&] {
                    json.text("path", file.path);
                    json.number("bytes", static_cast<std::int64_t>(file.bytes.size()));
                });
            }
        });
        for (const TakenCount& count : taken.report.counts) {
            json.object(code_of(count.part), [&] {
                json.number("went", static_cast<std::int64_t>(count.went));
                json.number("all", static_cast<std::int64_t>(count.all));
            });
        }
        json.text("rate_sheet", taken.report.sheet);
        json.truth("shared", taken.report.shared);
        write_privates(taken.report, json);
    });
    return json.take() + "\n";
}

std::string report_text(const TakenHome& taken, const std::string& where, int files,
                        std::size_t bytes, const Typed& typed) {
    const TakeHomeWords& of = catalogue_in(typed.language).apps.take_home;
    Blocks out;
    tell_what_went(taken.report, of, out);
    tell_what_stays(taken.report, of, out);
    out += of.written(made_visible(where), files, kb_of_all(bytes)) + "\n";
    return out.text(typed.width.value_or(usual_width));
}

Outcome written_desk(const TakenHome& taken, const Typed& typed) {
    const std::string folder = typed.given.one("desk");
    write_folder(folder, taken.files);
    return {typed.json ? report_json(taken)
                       : report_text(taken, folder, static_cast<int>(taken.files.size()),
                                     bytes_of(taken.files), typed)};
}

} // namespace

Outcome take_home_command(const Typed& typed) {
    TakeHomeAsked asked{
        .inquiry = typed.given.one("inquiry"), .rates = typed.rates, .language = typed.language};
    for (const std::string& name : typed.given.all("with")) {
        if (const auto what = meaning_in(codes<Private>, name)) asked.with.insert(*what);
    }
    const std::string file = typed.given.one("output");
    if (!file.empty()) check_ending("--output", file, {".html"});
    const TakenHome taken = take_home(asked);
    if (file.empty()) return written_desk(taken, typed);
    const std::string html = home_file(taken, typed.language, file);
    write_file(file, html, typed.given.has("force"));
    return {typed.json ? report_json(taken) : report_text(taken, file, 1, html.size(), typed)};
}

} // namespace quoin::apps
