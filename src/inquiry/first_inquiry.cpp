// Making the inquiry that a new buyer begins with.
#include <quoin/inquiry/first_inquiry.hpp>

#include <algorithm>
#include <memory>

#include <quoin/inquiry/inquiry.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/text/value.hpp>

namespace quoin {
namespace {

// Common practice, no source: a home to be built closes about half a year after the contract, and
// a score is assumed until the buyer gives one.
constexpr int days_to_closing = 180;
constexpr int assumed_score = 740;
constexpr int usual_years = 30;

struct Home {
    const Plan* plan = nullptr;
    const Lot* lot = nullptr;
};

Home first_home(const PriceBook& book) {
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        if (at(book.plans, plan).elevations.empty()) continue;
        for (const Lot& lot : book.lots) {
            if (lot.status == LotStatus::free && allows(lot.plans, plan)) {
                return {&at(book.plans, plan), &lot};
            }
        }
    }
    return {};
}

void write_scenario(const LoanProgram& program, const Ladder& ladder, const std::string& percent,
                    JsonWriter& json) {
    const std::string down = percent == "0" ? "nothing" : percent + "%";
    json.object([&] {
        json.text("name", program.name + ", " + down + " down");
        json.text("program", program.id);
        json.number("years", usual_years);
        json.number("lock_days", ladder.lock_days);
        json.object("down", [&] { json.text("percent", percent); });
        json.object("rate", [&] { json.text("points", "0"); });
    });
}

void write_scenarios(const Lending& lending, const RateSheet& sheet, JsonWriter& json) {
    for (const LoanProgram& program : lending.programs) {
        const Ladder* ladder = sheet.ladder(program.id, usual_years * 12, days_to_closing);
        if (program.adjustable || ladder == nullptr) continue;
        for (const Percent down : program.policy.usual_down) {
            write_scenario(program, *ladder, down.value().text(), json);
        }
    }
}

FirstAssumed assumed_of(const PriceBook& book, Date as_of, Date today) {
    using enum FirstAssumed::Prices;
    const auto prices = today > book.expires ? ended : today < book.effective ? coming : current;
    return {prices, as_of, assumed_score, days_to_closing};
}

bool is_sound(const std::string& json, const Desk& desk) {
    Findings findings;
    const Document document = parse_json(std::make_shared<const Source>("inquiry", json), findings);
    if (findings.none()) (void)read_inquiry(document, desk, findings);
    return findings.none();
}

} // namespace

std::optional<std::string> first_inquiry(const std::string& book, const Desk& desk, Date today,
                                         const FirstComment& comment) {
    const PriceBook& prices = desk.book;
    const Date as_of = std::clamp(today, prices.effective, prices.expires);
    const RateSheet* sheet = desk.lending.newest_sheet(as_of);
    const Home home = first_home(prices);
    if (home.lot == nullptr || sheet == nullptr) return std::nullopt;
    JsonWriter json;
    json.object([&] {
        json.text("format", "quoin/inquiry/1");
        json.text("comment", comment(assumed_of(prices, as_of, today)));
        json.text("price_book", book);
        json.text("buyer", "New buyer");
        json.text("as_of", as_of.text());
        json.text("contract", as_of.text());
        json.text("closing", plus_days(as_of, days_to_closing).text());
        json.text("plan", home.plan->id);
        json.text("elevation", home.plan->elevations.front().id);
        json.text("lot", home.lot->id);
        json.number("score", assumed_score);
        json.list("scenarios", [&] { write_scenarios(desk.lending, *sheet, json); });
    });
    std::string inquiry = json.take();
    if (!is_sound(inquiry, desk)) return std::nullopt;
    return inquiry;
}

} // namespace quoin
