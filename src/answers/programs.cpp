// Answering what a home can be paid with: programs against the rate sheet of the inquiry.
#include <quoin/answers/programs.hpp>

namespace quoin {

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
