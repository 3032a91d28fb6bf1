// Problems in their JSON: the thing that one is about stands in a member of its own.
#include <shown.hpp>

#include <nlohmann/json.hpp>

#include <quoin/render/problems.hpp>
#include <quoin/text/problems.hpp>

using namespace quoin;

namespace {

nlohmann::json json_of(Problem problem) {
    Findings findings;
    findings.add(std::move(problem));
    return nlohmann::json::parse(json_text_of(findings))["problems"][0];
}

} // namespace

TEST_CASE("A problem in JSON names the thing it is about, and what was found of it") {
    const auto needs =
        json_of(problems::option_needs({}, {"deck", "deck:composite"}, {"walk-out"}));
    CHECK(needs["found"] == "deck:composite: needs walk-out");
    CHECK(needs["about"] ==
          nlohmann::json{{"what", "option"}, {"id", "deck"}, {"found", "needs walk-out"}});
    const auto given = json_of(problems::incentive_not_here({}, {"winter", "Winter: start"},
                                                            WhyNot{WhyNot::Kind::not_for_lot}));
    CHECK(given["found"] == "Winter: start: not on this lot");
    CHECK(given["about"] ==
          nlohmann::json{{"what", "incentive"}, {"id", "winter"}, {"found", "not on this lot"}});
}

TEST_CASE("A problem that is about no thing of the price book has no such member") {
    const auto wrong = json_of(problems::not_money({}));
    CHECK_FALSE(wrong.contains("about"));
    CHECK(wrong.size() == 8);
}
