// Cutting a rate sheet to the loans in play.
#include "sheet_in_play.hpp"

#include <optional>
#include <string>

#include <quoin/lending/told_points.hpp>

#include "edited.hpp"
#include "rows_in_use.hpp"

namespace quoin::apps {
namespace {

/// The items of a list member for which `cut` leaves something, as it leaves them; the member goes
/// where none is left.
void cut_items(Value& owner, std::string_view list, const auto& cut) {
    Value* value = member(owner, list);
    if (value == nullptr) return;
    std::vector<Value> left;
    for (std::size_t i = 0; i < value->items.size(); ++i) {
        if (auto item = cut(i, value->items[i])) left.push_back(std::move(*item));
    }
    value->items = std::move(left);
    if (value->items.empty()) take_out(owner, list);
}

/// Row `row` of a table as it was read, as a row of its own: a grid has one for each band across.
Value row_of(const Value& table, int row) {
    const Value* across = table.find("across");
    const Value* bands = across != nullptr ? across->find("bands") : nullptr;
    const std::size_t width = bands != nullptr ? bands->items.size() : 1;
    const auto at = static_cast<std::size_t>(row);
    Value one = table.find("rows")->items[at / width];
    if (bands == nullptr) return one;
    const Value value = one.find("values")->items[at % width];
    take_out(one, "values");
    set(one, text_in(*across, "dimension"), bands->items[at % width]);
    set(one, "value", value);
    return one;
}

/// Where a loan has no row, an adjustment adds nothing: a row that says so of this loan alone.
/// Nothing where a dimension of the table is not told of it.
std::optional<Value> row_of_nothing(const BandTable& table, const Case& where) {
    Value row = object_of("value", text_of_value("0"));
    for (const Dimension dimension : table.dimensions) {
        const std::int64_t at = where.at(static_cast<std::size_t>(dimension));
        if (at == Case::unset) return std::nullopt;
        set(row, name_of(dimension), text_of_value("= " + Decimal::billionths(at).text()));
    }
    return row;
}

bool has_row(const std::vector<Value>& rows, const Value& row) {
    const std::string text = write_json(row);
    return std::any_of(rows.begin(), rows.end(),
                       [&](const Value& other) { return write_json(other) == text; });
}

/// The rows in use; nothing where there is none.
std::optional<Value> excerpt(Value table, const BandTable& read, const RowsInUse& use) {
    std::vector<Value> rows;
    const auto used = use.rows.find(&read);
    if (used != use.rows.end()) {
        for (const int row : used->second) rows.push_back(row_of(table, row));
    }
    const auto without = use.without.find(&read);
    if (without != use.without.end()) {
        for (const Case& where : without->second) {
            auto row = row_of_nothing(read, where);
            if (row && !has_row(rows, *row)) rows.push_back(std::move(*row));
        }
    }
    if (rows.empty()) return std::nullopt;
    for (const std::string_view all : {"across", "covers"}) take_out(table, all);
    set(table, "rows", list_of(std::move(rows)));
    return table;
}

/// Names of it no program that is not in play; false where none is left.
bool cut_programs(Value& adjustment, const std::set<std::string>& programs) {
    keep_items(adjustment, "programs",
               [&](const Value& program) { return programs.contains(program.literal); });
    return !adjustment.find("programs")->items.empty();
}

class InPlay {
  public:
    InPlay(Value sheet, const Sitting& sitting)
        : sheet_(std::move(sheet)), read_(sitting.sheet()), use_(rows_in_use(sitting)),
          shared_(may_be_shared(sheet_)) {
        for (const ScenarioRules& rules : sitting.rules()) {
            programs_.insert(rules.program->id);
            insured_ = insured_ || rules.lender_insures();
            adjustable_ = adjustable_ || rules.program->adjustable.has_value();
        }
    }

    [[nodiscard]] Value cut() {
        cut_ladders();
        cut_adjustments();
        cut_tables("mortgage_insurance", read_.mortgage_insurance);
        cut_tables("single_premium", read_.single_premium);
        if (!adjustable_) take_out(sheet_, "index");
        return std::move(sheet_);
    }

  private:
    void cut_ladders();
    void cut_adjustments();
    void cut_tables(std::string_view list, const std::vector<BandTable>& tables);

    Value sheet_;
    const RateSheet& read_;
    RowsInUse use_;
    bool shared_;
    std::set<std::string> programs_;
    bool insured_ = false;
    bool adjustable_ = false;
};

void InPlay::cut_ladders() {
    cut_items(sheet_, "ladders", [&](std::size_t i, Value& ladder) -> std::optional<Value> {
        const auto used = use_.rungs.find(&read_.ladders[i]);
        if (used == use_.rungs.end()) return std::nullopt;
        if (shared_) return ladder;
        std::vector<Value> rungs;
        for (const int rung : used->second) {
            rungs.push_back(ladder.find("rungs")->items[static_cast<std::size_t>(rung)]);
        }
        set(ladder, "rungs", list_of(std::move(rungs)));
        return ladder;
    });
    if (sheet_.find("ladders") == nullptr) set(sheet_, "ladders", list_of({})); // there must be one
}

void InPlay::cut_adjustments() {
    cut_items(sheet_, "adjustments", [&](std::size_t i, Value& table) -> std::optional<Value> {
        if (!cut_programs(table, programs_)) return std::nullopt;
        if (shared_) return table;
        auto rows = excerpt(table, read_.adjustments[i].table, use_);
        if (rows) set(*rows, "value", text_of_value(std::string(points_or_no_rate)));
        return rows;
    });
}

void InPlay::cut_tables(std::string_view list, const std::vector<BandTable>& tables) {
    cut_items(sheet_, list, [&](std::size_t i, Value& table) -> std::optional<Value> {
        if (!insured_) return std::nullopt;
        if (shared_) return table;
        return excerpt(table, tables[i], use_);
    });
}

} // namespace

bool may_be_shared(const Value& sheet) { return text_in(sheet, "may_be_shared") == "true"; }

Value sheet_in_play(Value sheet, const Sitting& sitting) {
    return InPlay(std::move(sheet), sitting).cut();
}

} // namespace quoin::apps
