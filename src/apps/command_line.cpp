// Running a command, and every way it can end.
#include "command_line.hpp"

#include <cstdio>
#include <new>
#include <optional>

#include <quoin/exact/broken.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/text/findings.hpp>

#include "interruption.hpp"
#include "parsing.hpp"
#include "words/apps.hpp"

namespace quoin::apps {
namespace {

bool write(const std::string& text, std::FILE* to) {
    return std::fwrite(text.data(), 1, text.size(), to) == text.size() && std::fflush(to) == 0;
}

} // namespace

Result fault_of(const std::string& what, const Catalogue& say) {
    return {fault, {}, "quoin: " + say.apps.end.fault(what) + "\n"};
}

Result result_of(const std::function<Outcome()>& work, const Typed& typed) {
    const Catalogue& say = catalogue_in(typed.language);
    const EndWords& of = say.apps.end;
    try {
        Outcome outcome = work();
        return {outcome.input_sound ? done : input_wrong, std::move(outcome.output),
                std::move(outcome.errors)};
    } catch (const Refused& refused) {
        const Findings& findings = refused.findings();
        return {input_wrong, {}, typed.json ? json_text_of(findings, say) : text_of(findings, say)};
    } catch (const Stopped&) {
        return {stopped, {}, "quoin: " + of.stopped() + "\n"};
    } catch (const LeftToWhole&) {
        return {done, {}, {}, true};
    } catch (const Overflow& error) {
        return {input_wrong, {}, "quoin: " + of.too_large(error.what()) + "\n"};
    } catch (const std::bad_alloc&) {
        return fault_of(of.no_memory(), say);
    } catch (const std::exception& error) {
        return fault_of(error.what(), say);
    } catch (...) {
        return fault_of(of.untold(), say);
    }
}

Result run(const std::vector<std::string>& arguments, const Whole* whole,
           std::optional<std::size_t> columns) {
    const Interruption interruption;
    Typed typed;
    typed.whole = whole;
    typed.width = columns;
    std::optional<Result> no_work; // help, version and wrong use
    const auto parsing = [&] {
        no_work = parse(arguments, typed);
        return Outcome{};
    };
    Result result = result_of(parsing, Typed{});
    if (no_work) return std::move(*no_work);
    if (result.code != done) return result;
    const auto work = [&] {
        try {
            return typed.command->run(typed);
        } catch (const WrongUse& wrong) {
            no_work = wrong_use(arguments, wrong.what());
            return Outcome{};
        }
    };
    result = result_of(work, typed);
    return no_work ? std::move(*no_work) : result;
}

int written(const Result& result) {
    write(result.errors, stderr);
    if (!write(result.output, stdout)) {
        write("quoin: the answer could not be written\n", stderr);
        return fault;
    }
    return result.code;
}

} // namespace quoin::apps
