// Checking the options of a request.
#include "option_check.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include <quoin/text/problems.hpp>

namespace quoin::apps {
namespace {

void check_option(const QuestionOption& option, const Given& given, Findings& findings) {
    const std::size_t count = given.count(option.name);
    if (count > 1 && !option.is_repeated()) {
        findings.add(problems::http_option_repeated(option.name));
    }
    if (count == 0 && option.is_needed()) {
        findings.add(problems::http_option_missing(option.name, option.summary));
    }
    if (count > 0 && given.contains(option.excludes)) {
        findings.add(problems::http_options_exclude(option.name, option.excludes));
    }
}

} // namespace

void check_given(const Question& question, const Given& given) {
    Findings findings;
    std::vector<std::string> names;
    for (const QuestionOption& option : question.options) {
        if (option.by == QuestionOption::By::command) continue;
        names.emplace_back(option.name);
        check_option(option, given, findings);
    }
    for (auto it = given.begin(); it != given.end(); it = given.upper_bound(it->first)) {
        if (std::find(names.begin(), names.end(), it->first) != names.end()) continue;
        findings.add(names.empty()
                         ? problems::http_option_of_none(question.name, it->first)
                         : problems::http_option_unknown(question.name, it->first,
                                                         nearest(it->first, names), names));
    }
    if (!findings.none()) throw Refused(std::move(findings));
}

} // namespace quoin::apps
