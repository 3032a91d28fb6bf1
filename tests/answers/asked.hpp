// Every question that answers in JSON, asked of an inquiry.
#pragma once

#include <quoin/questions/questions.hpp>

#include "support/files.hpp"

namespace quoin::test {

/// What a question needs beside the inquiry, under this scenario.
inline Given given_for(const Question& question, const Scenario& scenario) {
    Given given;
    for (const QuestionOption& option : question.options) {
        if (option.name == "scenario") given.emplace("scenario", scenario.name);
    }
    if (question.name == "credit") given.emplace("amount", "10000");
    if (question.name == "later") given.emplace("option", "irrigation");
    if (question.name == "fit") {
        given.emplace("monthly", "3000");
        given.emplace("cash", "60000");
        given.emplace("nodes", "2000");
    }
    return given;
}

/// Its JSON, once under each scenario where it asks for one.
template <class Use>
void each_json(const Question& question, const apps::Loaded& loaded, const Use& use) {
    for (const Scenario& scenario : loaded.inquiry.scenarios) {
        use(question.text({loaded.desk, loaded.inquiry, given_for(question, scenario)},
                          Form::json));
    }
}

} // namespace quoin::test
