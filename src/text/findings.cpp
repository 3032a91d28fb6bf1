// Collecting problems, and guessing which name was meant.
#include <quoin/text/findings.hpp>

#include <algorithm>
#include <numeric>

#include <quoin/text/caps.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {

std::optional<About> about(const Problem& problem) {
    for (const Argument& argument : problem.arguments) {
        if (const auto* thing = std::get_if<About>(&argument)) return *thing;
    }
    return std::nullopt;
}

void Findings::add(Problem problem) {
    if (full_) return;
    problems_.push_back(std::move(problem));
    full_ = problems_.size() >= caps::problems;
    if (full_) problems_.push_back(problems::too_many_problems(caps::problems));
}

void Findings::take(Findings&& other) {
    std::move(other.problems_.begin(), other.problems_.end(), std::back_inserter(problems_));
    other.problems_.clear();
}

namespace {

/// Levenshtein distance: insertions, deletions and changes of single bytes. Any number that is not
/// below `enough` where it is not.
std::size_t edits(std::string_view a, std::string_view b, std::size_t enough) {
    if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) >= enough) return enough;
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
        }
        if (*std::min_element(row.begin(), row.end()) >= enough) return enough;
    }
    return row[b.size()];
}

} // namespace

std::string nearest(std::string_view name, const std::vector<std::string>& candidates) {
    constexpr std::size_t longest_compared = 80;
    if (name.size() > longest_compared) return {};
    std::string best;
    std::size_t fewest = name.size() / 3 + 2; // about one slip in three letters
    for (const std::string& candidate : candidates) {
        if (candidate.size() > longest_compared) continue;
        const std::size_t distance = edits(name, candidate, fewest);
        if (distance < fewest) {
            fewest = distance;
            best = candidate;
        }
    }
    return best;
}

} // namespace quoin
