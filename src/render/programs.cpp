// Rendering the loan programs and rates that an inquiry can use.
#include <quoin/answers/programs.hpp>

#include <fmt/format.h>

#include "shared_fields.hpp"
#include "words/programs.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

namespace {

Blocks ladder_text(const Ladder& ladder, const Catalogue& say) {
    std::vector<std::string> rungs;
    for (const Rung& rung : ladder.rungs) {
        rungs.push_back(say.programs.rung(rung.rate, fixed(rung.points.value(), 3)));
    }
    return paragraph(
        say.programs.ladder(term_text(Months(ladder.months), say), ladder.lock_days, joined(rungs)),
        "  ", "    ");
}

Cautions cautions_of(const ProgramsAnswer& answer, const Catalogue& say) {
    Cautions notes = with_loan_cautions(
        {{CautionCode::points_before_adjustments, say.programs.points_before_adjustments()}},
        answer.heading, {}, say);
    for (const OfferedProgram& program : answer.programs) {
        for (const ListGap& gap : program.gaps.continued) {
            notes.push_back(continued_caution(program.name, gap, say));
        }
    }
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace

Blocks blocks_of(const ProgramsAnswer& answer, const Catalogue& say) {
    Blocks out = heading_text(answer.heading, say.programs.title(), say);
    for (const OfferedProgram& program : answer.programs) {
        out += fmt::format("\n{} ({})\n", program.name, program.id);
        out += paragraph(program.summary, "  ");
        out += paragraph(program.fine_print, "  ");
        for (const Ladder& ladder : program.ladders) out += ladder_text(ladder, say);
        for (const ListGap& gap : program.gaps.unknown) {
            out += paragraph(say.programs.not_available(words(gap, say)), "  ", "    ");
        }
    }
    return out + footing_text(cautions_of(answer, say));
}

template <>
inline constexpr auto
    codes<ListGap::Kind> = coded<ListGap::Kind>({{ListGap::Kind::ended, "ended"},
                                                 {ListGap::Kind::not_yet, "not_yet"},
                                                 {ListGap::Kind::no_row, "no_row"}});

void fields(auto& v, Of<Rung> auto& rung) {
    v("rate", rung.rate);
    v("points", rung.points);
}

void fields(auto& v, Of<Ladder> auto& ladder) {
    v("months", ladder.months);
    v.words("term", [&](const Catalogue& say) { return term_text(Months(ladder.months), say); });
    v("lock_days", ladder.lock_days);
    v("rungs", ladder.rungs);
}

void fields(auto& v, Of<ListGap> auto& gap) {
    v.named("ListGap");
    v("list", gap.list);
    v("kind", gap.kind);
    v.when(gap.kind == ListGap::Kind::ended, [&] { v("until", gap.edge); });
    v.when(gap.kind != ListGap::Kind::ended, [&] { v("effective", gap.edge); });
    v.words("words", [&](const Catalogue& say) { return words(gap, say); });
}

void fields(auto& v, Of<OfferedProgram> auto& program) {
    v.named("Program");
    v("id", program.id);
    v("name", program.name);
    v("kind", program.kind);
    v("choices", program.choices);
    v("summary", program.summary);
    v("fine_print", program.fine_print);
    v("upfront_fee", program.upfront_name);
    v("annual_fee", program.annual_name);
    v("used_beyond_end", program.gaps.continued);
    v("not_known", program.gaps.unknown);
    v("ladders", program.ladders);
}

void fields(auto& v, Of<ProgramsAnswer> auto& answer) {
    v.named("Programs");
    v.constant("question", "programs");
    v("heading", answer.heading);
    v("note", answer.sheet_note);
    v("programs", answer.programs);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const ProgramsAnswer&, const Catalogue&);

template const Shape& shape_of<ProgramsAnswer>();
template std::optional<ProgramsAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
