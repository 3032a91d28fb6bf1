// "Which loan is better for us?" The scenarios side by side on one home, without a verdict.
#pragma once

#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>

namespace quoin {

struct CompareAnswer {
    Heading heading;
    Money contract_price;
    std::vector<ScenarioAnswer> scenarios; ///< in the inquiry's order
};

[[nodiscard]] CompareAnswer compare(const Sitting& sitting);

} // namespace quoin
