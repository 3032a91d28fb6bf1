// Reading lots, from the price book itself or from a list out of a spreadsheet.
#include "book_reader.hpp"

namespace quoin {
namespace {

Lot read_common(Reader& item) {
    Lot lot;
    lot.id = item.id("id");
    lot.premium = item.money("premium");
    lot.status = item.word<LotStatus>("status");
    lot.grade = item.word<Grade>("grade");
    lot.flood_zone = item.flag_or("flood_zone", false);
    lot.note = item.text_or("note", "");
    lot.office_note = item.text_or("office_note", "");
    return lot;
}

/// On every plan that fits, a home has a price above zero.
void check_premium(Reader& item, const PriceBook& book, const Lot& lot) {
    for (const Index<Plan> index : indexes_of(book.plans)) {
        const Plan& plan = at(book.plans, index);
        if (!allows(lot.plans, index)) continue;
        for (const Elevation& elevation : plan.elevations) {
            const Money home = plan.base_price + elevation.price;
            if (home <= Money{} || home + lot.premium > Money{}) continue;
            item.report(problems::premium_takes_all(item.spot("premium")));
            return;
        }
    }
}

void add(Reader& item, PriceBook& book, Lot lot) {
    check_premium(item, book, lot);
    distinct_id(item, book.lots, lot.id, Noun::lot);
    book.lots.push_back(std::move(lot));
}

/// A row of the list: plans are words in one cell, measures are columns "measure.<name>".
void read_row(Reader& item, PriceBook& book) {
    Lot lot = read_common(item);
    const std::string plans = item.text_or("plans", "");
    for (std::size_t i = 0; i < plans.size();) {
        const std::size_t begin = plans.find_first_not_of(' ', i);
        if (begin == std::string::npos) break;
        i = std::min(plans.find(' ', begin), plans.size());
        const auto plan = look_up(book.plans, Noun::plan, plans.substr(begin, i - begin),
                                  item.spot("plans"), item.findings());
        if (plan) lot.plans.push_back(*plan);
    }
    constexpr std::string_view prefix = "measure.";
    for (const Key& key : item.here().value->keys) {
        if (key.name.substr(0, prefix.size()) != prefix) continue;
        lot.measures.push_back({key.name.substr(prefix.size()), item.decimal(key.name)});
    }
    add(item, book, std::move(lot));
}

} // namespace

const Decimal* find_measure(const std::vector<Measure>& measures, std::string_view name) {
    for (const Measure& measure : measures) {
        if (measure.name == name) return &measure.value;
    }
    return nullptr;
}

std::optional<std::string> lots_file(const Value& book) {
    const Value* lots = book.find("lots");
    const Value* csv = lots != nullptr ? lots->find("csv") : nullptr;
    if (csv == nullptr || csv->kind != Value::Kind::text) return std::nullopt;
    return csv->literal;
}

void choose_lot_texts(Document& list, Language language) {
    for (const std::string_view text : {"note", "office_note"}) choose_column(list, text, language);
}

void read_lots(Reader& root, const Document* list, PriceBook& book) {
    const Value* lots = root.raw("lots");
    if (lots != nullptr && lots->kind == Value::Kind::object) {
        root.object("lots", [](Reader& item) { item.text("csv"); });
        if (list == nullptr) return; // the missing file is reported where it was looked for
        int index = 0;
        for (const Value& row : list->root.items) {
            Reader item(row, Path{nullptr, {}, index++}, root.findings());
            read_row(item, book);
            item.finish();
        }
        return;
    }
    root.each(
        "lots",
        [&](Reader& item) {
            Lot lot = read_common(item);
            lot.plans = index_list(item, "plans", book.plans, Noun::plan);
            lot.measures = measures(item, "measures");
            add(item, book, std::move(lot));
        },
        true);
}

} // namespace quoin
