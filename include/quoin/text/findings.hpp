// What is wrong with a person's input: each problem with its place, what was found, what was
// expected and what to do. Problems are collected and reported together.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace quoin {

struct Problem {
    std::string id;       ///< stable name, such as "not-money"
    std::string file;     ///< empty where the input is no file
    int line = 0;         ///< from 1; 0 where unknown
    int column = 0;       ///< from 1
    int width = 0;        ///< bytes to underline
    std::string excerpt;  ///< the line itself, or the part of it around the place
    int excerpt_from = 0; ///< bytes of the line cut off before the excerpt
    std::string path;     ///< JSON Pointer of the value, such as /options/3/price
    std::string found;    ///< "found 12500.555"
    std::string expected; ///< "expected dollars with at most two decimals"
    std::string advice;   ///< what to do; may be empty
};

class Findings {
  public:
    /// Keeps the first hundred; then says once that there are more, and keeps no others.
    void add(Problem problem);
    /// Whether another problem would not be told.
    [[nodiscard]] bool full() const { return full_; }
    [[nodiscard]] bool none() const { return problems_.empty(); }
    [[nodiscard]] const std::vector<Problem>& problems() const { return problems_; }
    /// Moves another's problems behind these.
    void take(Findings&& other);

  private:
    std::vector<Problem> problems_;
    bool full_ = false;
};

/// Thrown where input cannot be used; carries everything that was found.
class Refused {
  public:
    explicit Refused(Findings findings) : findings_(std::move(findings)) {}
    [[nodiscard]] const Findings& findings() const { return findings_; }

  private:
    Findings findings_;
};

/// The candidate closest to a mistyped name, or empty where none is near.
[[nodiscard]] std::string nearest(std::string_view name,
                                  const std::vector<std::string>& candidates);

} // namespace quoin
