// Answering what a home can be paid with: programs against the rate sheet of the inquiry.
#include <quoin/answers/programs.hpp>

#include <algorithm>

#include <quoin/loan/fee_methods.hpp>

namespace quoin {
namespace {

ProgramChoices choices_of(const LoanProgram& program) {
    const bool insured = program.annual != nullptr && program.annual->is_lenders;
    const auto by_use = [](const BandTable& table) {
        const auto& by = table.dimensions;
        return std::find(by.begin(), by.end(), Dimension::use) != by.end();
    };
    const bool use = std::any_of(program.rules.begin(), program.rules.end(),
                                 [&](const std::vector<BandTable>& tables) {
                                     return std::any_of(tables.begin(), tables.end(), by_use);
                                 });
    return {program.upfront != nullptr, insured, insured, use};
}

} // namespace

ProgramsAnswer programs(const Sitting& sitting) {
    ProgramsAnswer answer;
    answer.heading = heading_of(sitting);
    answer.sheet_note = sitting.sheet().note;
    const RuleDays days{sitting.inquiry().as_of, sitting.inquiry().closing};
    for (const LoanProgram& program : sitting.lending().programs) {
        OfferedProgram offered{program.id,
                               program.name,
                               program.summary,
                               program.fine_print,
                               program.upfront_name,
                               program.annual_name,
                               program.kind,
                               choices_of(program),
                               {},
                               editions_of(program, days).gaps()};
        for (const Ladder& ladder : sitting.sheet().ladders) {
            if (ladder.program == program.id) offered.ladders.push_back(ladder);
        }
        if (!offered.ladders.empty()) answer.programs.push_back(std::move(offered));
    }
    return answer;
}

} // namespace quoin
