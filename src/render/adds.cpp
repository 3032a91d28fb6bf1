// Rendering what options add as text.
#include <quoin/answers/adds.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>
#include <functional>
#include <map>

#include <fmt/format.h>

#include "own_cautions.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

std::string full_name(const std::string& name, const std::string& level) {
    return level.empty() ? name : name + ": " + level;
}

/// A name that fits its column; a long one is cut at a word.
std::string short_name(const std::string& text, std::size_t width) {
    if (display_width(text) <= width) return text;
    return wrapped(text, width - 4).front() + " ...";
}

std::vector<Column> month_columns(const AddsAnswer& answer, std::size_t name_width) {
    std::vector<Column> columns{{"", Align::left, name_width, name_width},
                                {"price", Align::right, 12, 11}};
    for (const AddsScenario& scenario : answer.scenarios) {
        columns.push_back({scenario.terms.name, Align::right, 11, 9});
    }
    return columns;
}

/// Reasons of jumps, each written once and named by a letter.
class Reasons {
  public:
    explicit Reasons(bool with_ltv) : with_ltv_(with_ltv) {}

    /// The letters of the reasons why an added figure jumps.
    std::string letters(const AddsAnswer& answer, std::size_t scenario, const Added& added) {
        std::string letters;
        for (const Jump& jump : added.jumps) {
            const std::string whose = is_of_the_place(jump.lookup)
                                          ? std::string{}
                                          : answer.scenarios[scenario].terms.name + ": ";
            letters += letter(whose + (with_ltv_ ? words(jump, added) : words(jump)));
        }
        if (!added.available()) {
            letters += letter(
                refused_words(answer.scenarios[scenario].terms.name, added.refusals.front()));
        }
        return letters.empty() ? letters : " " + letters;
    }
    [[nodiscard]] std::string text() const {
        std::string out;
        for (std::size_t i = 0; i < reasons_.size(); ++i) {
            out += paragraph(reasons_[i], "  " + name(i) + "  ", "     ");
        }
        return out.empty() ? out : "\nWhere a figure jumps\n" + out;
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

/// What comes with an item, what it replaces, what else has to be known.
std::string remark(const AddsItem& item) {
    std::string text;
    const auto add = [&](const std::string& words) { text += (text.empty() ? "" : "; ") + words; };
    if (item.wish > 0) add(fmt::format("wish {}", item.wish));
    const bool taken_out = item.standing == Standing::chosen;
    if (!item.along.empty()) add((taken_out ? "and with it " : "with ") + joined(item.along));
    if (!item.instead.empty()) add("instead of " + joined(item.instead));
    return text;
}

std::string heading_of_items(const AddsAnswer& answer) {
    const bool all_chosen =
        std::all_of(answer.items.begin(), answer.items.end(),
                    [](const AddsItem& item) { return item.standing != Standing::offered; });
    return all_chosen ? "" : "\nEach one alone, added to the home as it stands: a month\n";
}

std::string offered_table(const AddsAnswer& answer, Standing standing, Reasons& reasons) {
    constexpr std::size_t name_width = 40;
    Table table(month_columns(answer, name_width));
    std::string area;
    bool any = false;
    for (const AddsItem& item : answer.items) {
        if (item.standing != standing) continue;
        any = true;
        if (item.area != area) {
            table.title(item.area);
            area = item.area;
        }
        std::string name = full_name(item.name, item.level);
        if (item.work.any()) name += " *";
        table.row(figures_row(answer, "  " + short_name(name, name_width - 2), item.price,
                              item.by_scenario, reasons));
        table.remark(remark(item), 84);
    }
    return any ? table.text() : std::string{};
}

/// Items without figures, each with the words that say why.
std::string lines_of(const AddsAnswer& answer, Standing standing, const char* title,
                     const std::function<std::string(const AddsItem&)>& words) {
    std::string out;
    for (const AddsItem& item : answer.items) {
        if (item.standing != standing) continue;
        out += paragraph(full_name(item.name, item.level) + ": " + words(item), "  ", "    ");
    }
    return out.empty() ? out : title + out;
}

std::string lines_without_figures(const AddsAnswer& answer) {
    return lines_of(answer, Standing::held, "\nComes with a package that is chosen\n",
                    [](const AddsItem& item) { return "in " + item.package; }) +
           lines_of(answer, Standing::barred, "\nNot to be had here\n",
                    [](const AddsItem& item) { return item.why_not; });
}

std::string stacked_table(const AddsAnswer& answer, Reasons& reasons) {
    if (answer.stacked.empty()) return {};
    constexpr std::size_t name_width = 40;
    Table table(month_columns(answer, name_width));
    for (const AddsStep& step : answer.stacked) {
        table.row(figures_row(answer, short_name(full_name(step.name, step.level), name_width),
                              step.price, step.by_scenario, reasons));
    }
    table.rule();
    table.row(
        figures_row(answer, "together", answer.whole.price, answer.whole.by_scenario, reasons));
    return "\nStacked in the buyer's order, from the home without options: a month\n" +
           table.text();
}

/// One item in full: by part of the month, cash, years, under every scenario.
std::string parts_table(const AddsAnswer& answer, const AddsItem& item, Reasons& reasons) {
    std::vector<Column> columns{{"", Align::left, 26, 26}};
    for (const AddsScenario& s : answer.scenarios) {
        columns.push_back({s.terms.name, Align::right, 11, 11});
    }
    Table table(std::move(columns));
    const auto row = [&](std::string_view label, const auto& amount) {
        std::vector<std::string> cells{std::string(label)};
        for (const Added& added : item.by_scenario) {
            cells.push_back(added.available() ? signed_dollars(amount(added)) : "-");
        }
        table.row(std::move(cells));
    };
    for (const MonthPartRow& part : month_parts) {
        const auto amount = [&](const Added& added) { return added.monthly[part.part]; };
        const bool any = std::any_of(item.by_scenario.begin(), item.by_scenario.end(),
                                     [&](const Added& added) { return !amount(added).is_zero(); });
        if (any) row(part.name, amount);
    }
    table.rule();
    row("a month", [](const Added& added) { return added.per_month; });
    row("cash needed", [](const Added& added) { return added.cash; });
    row("left to bring at closing", [](const Added& added) { return added.to_close; });
    row("over five years", [](const Added& added) { return added.in_five_years; });
    row("over the whole loan", [](const Added& added) { return added.over_loan; });
    for (std::size_t i = 0; i < item.by_scenario.size(); ++i) {
        (void)reasons.letters(answer, i, item.by_scenario[i]); // listed below the tables
    }
    return table.text();
}

std::string item_heading(const AddsItem& item) {
    const std::string name = full_name(item.name, item.level) + (item.work.any() ? " *" : "");
    std::string out = fmt::format("\n{} ({}), {}", name, item.id, signed_dollars(item.price));
    out += item.standing == Standing::chosen ? ", taken out\n" : ", added\n";
    const std::string words = remark(item);
    if (!words.empty()) out += paragraph(words, "  ");
    if (!item.note.empty()) out += paragraph(item.note, "  ");
    if (!item.cutoff.empty()) out += "  to be chosen before: " + item.cutoff + "\n";
    if (item.later) {
        out += paragraph(fmt::format("after closing instead: about {}. {}",
                                     dollars(item.later->estimate), item.later->note),
                         "  ");
    }
    return out;
}

std::string scenarios_text(const AddsAnswer& answer) {
    std::string out = "\nThe ways to pay\n";
    for (const AddsScenario& s : answer.scenarios) {
        if (!s.refusals.empty()) {
            out += paragraph(refused_words(s.terms.name, s.refusals.front()), "  ", "    ");
            continue;
        }
        out += paragraph(fmt::format("{}: {} a month. {}. Rule of thumb: {} a month for each "
                                     "$1,000 of loan",
                                     s.terms.name, dollars(s.monthly.total()), terms_line(s.terms),
                                     dollars(s.per_thousand)),
                         "  ", "    ");
    }
    return out;
}

std::string items_by_part(const AddsAnswer& answer, Reasons& reasons) {
    std::string out;
    for (const AddsItem& item : answer.items) {
        if (item.by_scenario.empty()) continue;
        out += item_heading(item) + parts_table(answer, item, reasons);
    }
    return out;
}

std::string items_in_tables(const AddsAnswer& answer, Reasons& reasons) {
    std::string out = heading_of_items(answer);
    out += offered_table(answer, Standing::offered, reasons);
    const std::string chosen = offered_table(answer, Standing::chosen, reasons);
    if (!chosen.empty()) out += "\nAlready chosen; taking one out: a month\n" + chosen;
    return out;
}

} // namespace

Cautions cautions_of(const AddsAnswer& answer, const Catalogue& say) {
    Cautions notes = with_loan_cautions(
        {{CautionCode::alone_and_stacked,
          "Each figure is the difference of two whole quotes, rounded as they are; what an option "
          "adds alone and what it adds stacked can differ by cents, and where a rule's line is "
          "crossed by more."}},
        answer.heading, terms_of(answer.scenarios));
    const bool trades = std::any_of(answer.items.begin(), answer.items.end(),
                                    [](const AddsItem& item) { return item.work.any(); });
    if (trades) notes.push_back(work_caution(say));
    notes.push_back(agent_caution(say));
    return notes;
}

std::string text_of(const AddsAnswer& answer, bool by_part, const Catalogue& say) {
    Reasons reasons(by_part);
    std::string out = heading_text(answer.heading, "What each option adds", say);
    out += "contract price as it stands " + dollars(answer.contract_price) + "\n";
    out += scenarios_text(answer);
    out += by_part ? items_by_part(answer, reasons) : items_in_tables(answer, reasons);
    out += lines_without_figures(answer);
    if (!by_part) out += stacked_table(answer, reasons);
    return out + reasons.text() + footing_text(cautions_of(answer, say));
}

} // namespace quoin
