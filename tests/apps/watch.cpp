// Long work ends when nobody waits for it any more, whatever was asked.
#include <shown.hpp>

#include <csignal>

#include <quoin/questions/questions.hpp>

#include "apps/command_line.hpp"
#include "apps/interruption.hpp"
#include "apps/loading.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const std::string buyer =
    QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/right-under-eighty.json";

/// Every option that a question needs, and more work for some.
Given options_of(const Question& question, const Inquiry& inquiry) {
    Given given;
    for (const QuestionOption& option : question.options) {
        if (option.name == "scenario") given.emplace("scenario", inquiry.scenarios.front().name);
        if (option.name == "amount") given.emplace("amount", "9000");
        if (option.name == "monthly") given.emplace("monthly", "4000");
        if (option.name == "cash") given.emplace("cash", "158000");
        if (option.name == "option") given.emplace("option", "deck:composite");
    }
    return given;
}

} // namespace

TEST_CASE("Whatever works out figures ends with the watch, at its first word") {
    const auto loaded = apps::load_inquiry(buyer, QUOIN_SOURCE_DIR "/rates");
    int ended = 0;
    for (const Question& question : questions()) {
        CAPTURE(question.name);
        const Given given = options_of(question, loaded->inquiry);
        int asked = 0;
        const auto answer = [&](int most) {
            asked = 0;
            const Watch watch = [&] { return ++asked < most; };
            static_cast<void>(question.told({loaded->desk, loaded->inquiry, given, &watch},
                                            question.forms.front()));
        };
        answer(1'000'000'000);
        const int all = asked;
        // The search of fit says what it has; the list of programs and the model show no loan.
        if (question.name == "fit" || all == 0) continue;
        ++ended;
        for (const int most : {1, (all + 1) / 2, all}) {
            CHECK_THROWS_AS(answer(most), Stopped);
            CHECK(asked == most);
        }
    }
    CHECK(ended > 12);
}

TEST_CASE("An interrupt ends a command with a code of its own and no answer") {
    const auto loaded = apps::load_inquiry(buyer, QUOIN_SOURCE_DIR "/rates");
    const apps::Interruption interruption;
    CHECK(apps::not_interrupted()());
    std::raise(SIGINT);
    CHECK_FALSE(apps::not_interrupted()());
    CHECK_THROWS_AS(static_cast<void>(loaded->sitting().figures(PricedHome{})), Stopped);
}
