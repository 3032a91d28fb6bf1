// Reading lending data, whichever files it comes in.
#include <quoin/inquiry/lending.hpp>

#include <quoin/exact/broken.hpp>
#include <quoin/inquiry/desk.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/text/names.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/value.hpp>

namespace quoin {
namespace {

/// Items of one kind, and the document that each was read from.
template <class Item>
struct Shelf {
    std::vector<Item>& items;
    Noun what;
    std::vector<const Document*> documents = {};

    /// Adds an item unless an earlier one has its id.
    void add(Item item, const Document& document, Findings& findings) {
        if (!item.id.empty() && index_of(items, item.id)) {
            const Value* id = document.root.find("id");
            findings.add(problems::id_repeated({id, Path{nullptr, "id"}}, what));
            return;
        }
        items.push_back(std::move(item));
        documents.push_back(&document);
    }
};

/// A member of a document, as checks that come after the reading point at it.
Spot member_of(const Document& document, const Path& path, std::string_view key) {
    const Value* value = document.root.find(key);
    return {value != nullptr ? value : &document.root, value != nullptr ? path : Path{}};
}

/// Rules that a program leaves out are those of the program it names.
void take_over_rules(Lending& lending, const std::vector<const Document*>& documents,
                     Findings& findings) {
    const std::vector<LoanProgram> own = lending.programs;
    ensure_equal(documents.size(), own.size(), "each program knows the file it was read from");
    for (std::size_t i = 0; i < own.size(); ++i) {
        if (own[i].rules_of.empty()) continue;
        const Spot spot = member_of(*documents[i], Path{nullptr, "rules_of"}, "rules_of");
        const auto from = look_up(own, Noun::program, own[i].rules_of, spot, findings);
        if (!from) continue;
        const LoanProgram& other = at(own, *from);
        for (std::size_t rule = 0; rule < rule_count; ++rule) {
            auto& tables = lending.programs[i].rules[rule];
            if (tables.empty()) tables = other.rules[rule];
        }
        auto& ratios = lending.programs[i].ratios;
        if (ratios.empty()) ratios = other.ratios;
    }
}

/// The lowest ceiling that the rungs of an adjustable ladder lead to is over its margin.
void check_rungs(const Ladder& ladder, const AdjustablePlan& plan, const RateIndex& index,
                 const Spot& spot, Findings& findings) {
    const AdjustableTerms terms{plan.initial,   plan.reset, index.value,
                                *ladder.margin, plan.caps,  std::nullopt};
    for (const Rung& rung : ladder.rungs) {
        const LoanTerms loan{Money{}, rung.rate, Months(ladder.months)};
        if (adjustable_problems(loan, terms).empty()) continue;
        findings.add(problems::adjustable_out_of_bounds(
            spot, rung.rate.percent(), plan.caps.life.value(), ladder.margin->value()));
        return;
    }
}

/// An adjustable program's ladder has a margin that its caps leave room for, and its sheet an
/// index.
void check_ladders(const Lending& lending, const RateSheet& sheet, const Document& document,
                   Findings& findings) {
    const Value* list = document.root.find("ladders");
    if (list == nullptr || list->items.size() != sheet.ladders.size()) return;
    const Path ladders{nullptr, "ladders"};
    for (std::size_t i = 0; i < sheet.ladders.size(); ++i) {
        const Ladder& ladder = sheet.ladders[i];
        const Spot spot{&list->items[i], Path{&ladders, {}, static_cast<int>(i)}};
        const auto program = index_of(lending.programs, ladder.program);
        const auto& plan = program ? at(lending.programs, *program).adjustable : std::nullopt;
        if (ladder.margin && !plan) {
            findings.add(problems::margin_of_fixed_rate(spot));
        }
        if (!plan) continue;
        if (!ladder.margin) findings.add(problems::member_missing(spot, "margin"));
        if (!sheet.index) {
            findings.add(problems::member_missing({&document.root, Path{}}, "index"));
        }
        if (ladder.margin && sheet.index) {
            check_rungs(ladder, *plan, *sheet.index, spot, findings);
        }
    }
}

} // namespace

Lending read_lending(const std::vector<Document>& documents, Findings& findings) {
    Lending lending;
    Shelf<LoanProgram> programs{lending.programs, Noun::program};
    Shelf<RateSheet> sheets{lending.sheets, Noun::rate_sheet};
    Shelf<Place> places{lending.places, Noun::place};
    for (const Document& document : documents) {
        switch (kind_of(document)) {
        case FileKind::program:
            programs.add(read_program(document, fee_methods(), findings), document, findings);
            break;
        case FileKind::rate_sheet:
            sheets.add(read_rate_sheet(document, findings), document, findings);
            break;
        case FileKind::place:
            places.add(read_place(document, findings), document, findings);
            break;
        default:
            if (document.root.kind == Value::Kind::null) break; // its own problem is reported
            findings.add(problems::format_not_of_lending({&document.root, Path{}}));
        }
    }
    take_over_rules(lending, programs.documents, findings);
    for (std::size_t i = 0; i < lending.sheets.size(); ++i) {
        check_ladders(lending, lending.sheets[i], *sheets.documents[i], findings);
    }
    return lending;
}

} // namespace quoin
