// Reading a rate sheet.
#include <quoin/lending/rate_sheet.hpp>

#include "dated_list.hpp"

#include "not_negative.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/text/leading_texts.hpp>

namespace quoin {
namespace {

constexpr std::string_view rates_format = "quoin/rates/1";

Ladder read_ladder(Reader& item) {
    Ladder ladder;
    ladder.program = item.id("program");
    ladder.months = item.whole("months", shortest_term.count(), longest_term.count());
    ladder.lock_days = item.whole("lock_days", 1, 720);
    if (const auto margin = item.maybe_decimal("margin")) {
        ladder.margin = Percent(*margin);
        if (*margin < Decimal{}) item.report(problems::margin_below_zero(item.spot("margin")));
    }
    item.each(
        "rungs",
        [&](Reader& rung) {
            const Rung next{rung.rate("rate"), rung.points("points")};
            if (!ladder.rungs.empty() && (next.rate <= ladder.rungs.back().rate ||
                                          next.points >= ladder.rungs.back().points)) {
                rung.report(problems::ladder_not_falling(rung.here()));
            }
            ladder.rungs.push_back(next);
        },
        true);
    return ladder;
}

} // namespace

const Ladder* RateSheet::ladder(const std::string& program, int months, int days) const {
    const Ladder* best = nullptr;
    for (const Ladder& ladder : ladders) {
        if (ladder.program != program || ladder.months != months || ladder.lock_days < days) {
            continue;
        }
        if (best == nullptr || ladder.lock_days < best->lock_days) best = &ladder;
    }
    return best;
}

RateSheet read_rate_sheet(const Document& document, Findings& findings) {
    RateSheet sheet;
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return sheet;
    if (!root.format_is(rates_format)) return sheet;
    sheet.id = root.id("id");
    sheet.date = root.date("date");
    sheet.good_through = root.date("good_through");
    if (root.sound() && sheet.good_through < sheet.date) {
        findings.add(problems::dates_reversed(root.spot("good_through"), "date", "good_through"));
    }
    sheet.sample = root.word("status", Words<bool>{{true, "sample"}, {false, "quoted"}});
    root.flag_or("may_be_shared", false); // no figure rests on it: take-home reads it of the file
    root.object(
        "lender",
        [&](Reader& item) {
            sheet.lender = item.name("name");
            sheet.license = item.name("license");
        },
        true);
    sheet.note = root.text_or("note", "");
    root.object("index", [&](Reader& item) {
        sheet.index = RateIndex{item.name("name"), item.percent("value"), item.date("date")};
    });
    sheet.ladders = root.list("ladders", read_ladder, true);
    sheet.adjustments = root.list("adjustments", [](Reader& item) {
        return Adjustment{item.texts("programs"), read_band_table(item)};
    });
    sheet.mortgage_insurance = read_dated_list(root, "mortgage_insurance", read_table_not_negative);
    sheet.single_premium = read_dated_list(root, "single_premium", read_table_not_negative);
    sheet.per_diem_year =
        root.word_or("per_diem_year", Words<int>{{360, "360"}, {365, "365"}}, 360);
    sheet.costs = root.list("costs", read_closing_cost);
    root.finish();
    return sheet;
}

std::optional<SheetHead> head_of_rate_sheet(std::istream& json) {
    bool rates = false;
    std::optional<std::string> id;
    std::optional<Date> date;
    leading_texts(json, [&](std::string_view name, std::string_view text) {
        if (name == "format") {
            rates = text == rates_format;
            if (!rates) return false;
        }
        if (name == "id") id = text;
        if (name == "date") {
            date = Date::parse(text);
            if (!date) return false;
        }
        return !(rates && id && date);
    });
    if (!rates || !id || !date) return std::nullopt;
    return SheetHead{std::move(*id), *date};
}

} // namespace quoin
