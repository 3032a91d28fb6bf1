// Rendering the loan programs and rates that an inquiry can use.
#include <quoin/render/programs.hpp>

#include <fmt/format.h>

#include "json_parts.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

std::string_view name_of(ProgramKind kind) {
    switch (kind) {
    case ProgramKind::conventional:
        return "conventional";
    case ProgramKind::fha:
        return "fha";
    case ProgramKind::va:
        return "va";
    case ProgramKind::usda:
        return "usda";
    }
    return {};
}

std::string ladder_text(const Ladder& ladder) {
    std::string rungs;
    for (const Rung& rung : ladder.rungs) {
        rungs += fmt::format("{}{} % at {}", rungs.empty() ? "" : ", ", rung.rate.text(),
                             rung.points.value().text());
    }
    return paragraph(fmt::format("{}, locked {} days: {}", term_text(Months(ladder.months)),
                                 ladder.lock_days, rungs),
                     98, "  ", "    ");
}

Json ladder_json(const Ladder& ladder) {
    Json json = {{"months", ladder.months},
                 {"term", term_text(Months(ladder.months))},
                 {"lock_days", ladder.lock_days}};
    json["rungs"] = Json::array();
    for (const Rung& rung : ladder.rungs) {
        json["rungs"].push_back(
            {{"rate", rung.rate.text()}, {"points", rung.points.value().text()}});
    }
    return json;
}

Json gaps_json(const std::vector<ListGap>& gaps) {
    Json json = Json::array();
    for (const ListGap& gap : gaps) {
        const bool ended = gap.kind == ListGap::Kind::ended;
        json.push_back({{"list", std::string(quoin::name_of(gap.list))},
                        {ended ? "until" : "effective", gap.edge.text()},
                        {"words", words(gap)}});
    }
    return json;
}

Json program_json(const OfferedProgram& program) {
    Json json = {{"id", program.id},
                 {"name", program.name},
                 {"kind", std::string(name_of(program.kind))},
                 {"summary", program.summary},
                 {"fine_print", program.fine_print},
                 {"upfront_fee", program.upfront_name},
                 {"annual_fee", program.annual_name}};
    json["used_beyond_end"] = gaps_json(program.gaps.continued);
    json["not_known"] = gaps_json(program.gaps.unknown);
    json["ladders"] = Json::array();
    for (const Ladder& ladder : program.ladders) json["ladders"].push_back(ladder_json(ladder));
    return json;
}

std::vector<std::string> cautions_of(const ProgramsAnswer& answer) {
    std::vector<std::string> notes{
        "Points are percents of the loan before adjustments for score, loan to value and term; a "
        "minus is a credit. An APR goes with a loan: 'quoin compare' shows it beside each rate."};
    for (std::string& note : loan_cautions(answer.heading, {})) notes.push_back(std::move(note));
    for (const OfferedProgram& program : answer.programs) {
        for (const ListGap& gap : program.gaps.continued) {
            notes.push_back(continued_caution(program.name, gap));
        }
    }
    notes.push_back(agent_caution());
    return notes;
}

} // namespace

std::string text_of(const ProgramsAnswer& answer) {
    std::string out = heading_text(answer.heading, "The loan programs and the rates of the day");
    for (const OfferedProgram& program : answer.programs) {
        out += fmt::format("\n{} ({})\n", program.name, program.id);
        out += paragraph(program.summary, 98, "  ", "  ");
        out += paragraph(program.fine_print, 98, "  ", "  ");
        for (const Ladder& ladder : program.ladders) out += ladder_text(ladder);
        for (const ListGap& gap : program.gaps.unknown) {
            out += paragraph("Not to be had: " + words(gap) + ".", 98, "  ", "    ");
        }
    }
    return out + footing_text(cautions_of(answer));
}

std::string json_text_of(const ProgramsAnswer& answer) {
    Json json = {{"question", "programs"},
                 {"heading", json_of(answer.heading)},
                 {"note", answer.sheet_note}};
    json["programs"] = Json::array();
    for (const OfferedProgram& program : answer.programs) {
        json["programs"].push_back(program_json(program));
    }
    json["cautions"] = cautions_json(cautions_of(answer));
    return written(json);
}

} // namespace quoin
