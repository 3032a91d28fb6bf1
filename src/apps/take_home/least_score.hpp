// The least credit score with which loans come to the same figures.
#pragma once

#include <vector>

#include <quoin/inquiry/inquiry.hpp>

namespace quoin::apps {

/// The least score, from that of these scenarios down, with which every figure of them stays: of
/// the home as it stands, and with or without each option that can be added or taken out. So a
/// buyer can leave the real one at home. Precondition: they have one score.
[[nodiscard]] int least_score(const Desk& desk, const Inquiry& inquiry,
                              const std::vector<std::size_t>& scenarios);

} // namespace quoin::apps
