// Rendering what options add as text.
#include <quoin/answers/adds.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>
#include <functional>
#include <map>

#include "own_cautions.hpp"
#include "words/adds.hpp"
#include "words/parts.hpp"
#include "words/side_by_side.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

std::string full_name(const auto& one, const Catalogue& say) {
    return one.level.empty() ? one.name : say.adds.named(one.name, one.level);
}

std::vector<Column> month_columns(const AddsAnswer& answer, const Catalogue& say) {
    constexpr std::size_t name_width = 40;
    std::vector<Column> columns{{"", Align::left, name_width, name_width, name_width},
                                {say.adds.price(), Align::right, 12, 11}};
    for (const AddsScenario& scenario : answer.scenarios) {
        columns.push_back({scenario.terms.name, Align::right, 11, 9});
    }
    return columns;
}

/// Reasons of jumps, each written once and named by a letter.
class Reasons {
  public:
    Reasons(bool with_ltv, const Catalogue& say) : with_ltv_(with_ltv), say_(say) {}

    /// The letters of the reasons why an added figure jumps.
    std::string letters(const AddsAnswer& answer, std::size_t scenario, const Added& added) {
        const std::string& whose = answer.scenarios[scenario].terms.name;
        std::string letters;
        for (const Jump& jump : added.jumps) {
            const std::string what = with_ltv_ ? words(jump, added, say_) : words(jump, say_);
            letters += letter(is_of_the_place(jump.lookup) ? what : say_.adds.jump(whose, what));
        }
        if (!added.available()) {
            letters += letter(refused_words(whose, added.refusals.front(), say_));
        }
        return letters.empty() ? letters : " " + letters;
    }
    [[nodiscard]] Blocks text() const {
        Blocks out;
        for (std::size_t i = 0; i < reasons_.size(); ++i) {
            out += paragraph(reasons_[i], "  " + name(i) + "  ", "     ");
        }
        return out.empty() ? out : titled(say_.adds.jumps()) + out;
    }

  private:
    static std::string name(std::size_t index) {
        const std::string letter(1, static_cast<char>('a' + index % 26));
        return index < 26 ? letter : letter + std::to_string(index / 26);
    }
    std::string letter(const std::string& reason) {
        const auto [at, fresh] = index_.emplace(reason, reasons_.size());
        if (fresh) reasons_.push_back(reason);
        return name(at->second);
    }

    bool with_ltv_;
    const Catalogue& say_;
    std::map<std::string, std::size_t> index_;
    std::vector<std::string> reasons_;
};

std::vector<std::string> figures_row(const AddsAnswer& answer, std::string name, Money price,
                                     const std::vector<Added>& by_scenario, Reasons& reasons) {
    std::vector<std::string> cells{std::move(name), signed_dollars(price)};
    for (std::size_t i = 0; i < by_scenario.size(); ++i) {
        const Added& added = by_scenario[i];
        const std::string figure = added.available() ? signed_dollars(added.per_month) : "-";
        cells.push_back(figure + reasons.letters(answer, i, added));
    }
    return cells;
}

/// What comes with an item, what it replaces, what else has to be known; `along` says what comes.
std::string remark(const AddsItem& item, const Phrase<Text>& along, const AddsWords& say) {
    std::string text;
    const auto add = [&](const std::string& words) { text += (text.empty() ? "" : "; ") + words; };
    if (item.wish > 0) add(say.wish(item.wish));
    if (!item.along.empty()) add(along(joined(item.along)));
    if (!item.instead.empty()) add(say.instead_of(joined(item.instead)));
    return text;
}

Blocks heading_of_items(const AddsAnswer& answer, const Catalogue& say) {
    const bool all_chosen =
        std::all_of(answer.items.begin(), answer.items.end(),
                    [](const AddsItem& item) { return item.standing != Standing::offered; });
    return all_chosen ? std::string() : titled(say.adds.alone());
}

Blocks offered_table(const AddsAnswer& answer, Standing standing, Reasons& reasons,
                     const Catalogue& say) {
    Table table(month_columns(answer, say));
    std::string area;
    bool any = false;
    for (const AddsItem& item : answer.items) {
        if (item.standing != standing) continue;
        any = true;
        if (item.area != area) {
            table.title(item.area);
            area = item.area;
        }
        std::string name = full_name(item, say);
        if (item.work.any()) name += " *";
        table.row(figures_row(answer, "  " + name, item.price, item.by_scenario, reasons));
        const auto& along = item.standing == Standing::chosen ? say.adds.and_with : say.adds.with;
        table.remark(remark(item, along, say.adds), 84);
    }
    return any ? Blocks(table) : Blocks();
}

/// Items without figures, each told in words.
Blocks lines_of(const AddsAnswer& answer, Standing standing, const std::string& title,
                const std::function<std::string(const AddsItem&)>& told) {
    Blocks out;
    for (const AddsItem& item : answer.items) {
        if (item.standing != standing) continue;
        out += paragraph(told(item), "  ", "    ");
    }
    return out.empty() ? out : titled(title) + out;
}

Blocks lines_without_figures(const AddsAnswer& answer, const Catalogue& say) {
    const auto held = [&](const AddsItem& item) {
        return say.adds.in_package(full_name(item, say), item.package);
    };
    const auto barred = [&](const AddsItem& item) {
        return say.adds.why_barred(full_name(item, say), words_of(item.why_not, say));
    };
    return lines_of(answer, Standing::held, say.adds.held(), held) +
           lines_of(answer, Standing::barred, say.adds.barred(), barred);
}

Blocks stacked_table(const AddsAnswer& answer, Reasons& reasons, const Catalogue& say) {
    if (answer.stacked.empty()) return {};
    Table table(month_columns(answer, say));
    for (const AddsStep& step : answer.stacked) {
        table.row(figures_row(answer, full_name(step, say), step.price, step.by_scenario, reasons));
    }
    table.rule();
    table.row(figures_row(answer, say.adds.together(), answer.whole.price, answer.whole.by_scenario,
                          reasons));
    return titled(say.adds.stacked()) + table;
}

/// One item in full: by part of the month, cash, years, under every scenario.
Blocks parts_table(const AddsAnswer& answer, const AddsItem& item, Reasons& reasons,
                   const Catalogue& say) {
    const std::vector<Added>& figures = item.in_home ? item.in_home->by_scenario : item.by_scenario;
    std::vector<Column> columns{{"", Align::left, 26, 26}};
    for (const AddsScenario& s : answer.scenarios) {
        columns.push_back({s.terms.name, Align::right, 11, 11});
    }
    Table table(std::move(columns));
    table.beside();
    const auto row = [&](std::string label, const auto& amount) {
        std::vector<std::string> cells{std::move(label)};
        for (const Added& added : figures) {
            cells.push_back(added.available() ? signed_dollars(amount(added)) : "-");
        }
        table.row(std::move(cells));
    };
    for (const MonthPartRow& part : month_parts) {
        const auto amount = [&](const Added& added) { return added.monthly[part.part]; };
        const bool any = std::any_of(figures.begin(), figures.end(),
                                     [&](const Added& added) { return !amount(added).is_zero(); });
        if (any) row(say.parts.month(part.part), amount);
    }
    table.rule();
    row(say.adds.a_month(), [](const Added& added) { return added.per_month; });
    row(say.side.cash_needed(), [](const Added& added) { return added.cash; });
    row(say.adds.to_close(), [](const Added& added) { return added.to_close; });
    row(say.adds.over_five_years(), [](const Added& added) { return added.in_five_years; });
    row(say.adds.over_loan(), [](const Added& added) { return added.over_loan; });
    for (std::size_t i = 0; i < figures.size(); ++i) {
        (void)reasons.letters(answer, i, figures[i]); // listed below the tables
    }
    return table;
}

Blocks item_heading(const AddsItem& item, const Catalogue& say) {
    const std::string name = full_name(item, say) + (item.work.any() ? " *" : "");
    const AddsWords& of = say.adds;
    const auto& has = item.in_home;
    Blocks out = titled((has ? of.in_home : of.added)(
        name, item.id, signed_dollars(has ? has->price : item.price)));
    const std::string words = remark(item, has ? of.counted_with : of.with, of);
    if (!words.empty()) out += paragraph(words, "  ");
    if (!item.note.empty()) out += paragraph(item.note, "  ");
    if (!item.cutoff.empty()) out += "  " + say.adds.before(item.cutoff) + "\n";
    if (item.later) {
        out += paragraph(say.adds.after_closing(item.later->estimate, item.later->note), "  ");
    }
    return out;
}

Blocks scenarios_text(const AddsAnswer& answer, const Catalogue& say) {
    Blocks out = titled(say.adds.loans());
    for (const AddsScenario& s : answer.scenarios) {
        if (!s.refusals.empty()) {
            out += paragraph(refused_words(s.terms.name, s.refusals.front(), say), "  ", "    ");
            continue;
        }
        out += paragraph(say.adds.scenario(s.terms.name, s.monthly.total(),
                                           terms_line(s.terms, say), s.per_thousand),
                         "  ", "    ");
    }
    return out;
}

Blocks items_by_part(const AddsAnswer& answer, Reasons& reasons, const Catalogue& say) {
    Blocks out;
    for (const AddsItem& item : answer.items) {
        if (item.by_scenario.empty()) continue;
        out += item_heading(item, say) + parts_table(answer, item, reasons, say);
    }
    return out;
}

Blocks items_in_tables(const AddsAnswer& answer, Reasons& reasons, const Catalogue& say) {
    Blocks out = heading_of_items(answer, say);
    out += offered_table(answer, Standing::offered, reasons, say);
    const Blocks chosen = offered_table(answer, Standing::chosen, reasons, say);
    if (!chosen.empty()) out += titled(say.adds.taking_out()) + chosen;
    return out;
}

} // namespace

Cautions cautions_of(const AddsAnswer& answer, const Catalogue& say) {
    Cautions notes =
        with_loan_cautions({{CautionCode::alone_and_stacked, say.adds.alone_and_stacked()}},
                           answer.heading, terms_of(answer.scenarios), say);
    const bool trades = std::any_of(answer.items.begin(), answer.items.end(),
                                    [](const AddsItem& item) { return item.work.any(); });
    if (trades) notes.push_back(work_caution(say));
    notes.push_back(agent_caution(say));
    return notes;
}

Blocks blocks_of(const AddsAnswer& answer, bool by_part, const Catalogue& say) {
    Reasons reasons(by_part, say);
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n";
    out += heading_text(answer.heading, say.adds.title(), say);
    out += say.adds.contract_price(answer.contract_price) + "\n";
    out += by_part ? items_by_part(answer, reasons, say) : items_in_tables(answer, reasons, say);
    out += lines_without_figures(answer, say);
    if (!by_part) out += stacked_table(answer, reasons, say);
    return out + reasons.text() + scenarios_text(answer, say) +
           footing_text(cautions_of(answer, say));
}

} // namespace quoin
