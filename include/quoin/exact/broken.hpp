// Broken: a promise of quoin's own that did not hold. Never a user's mistake.
//
//   ensure(sum == total, "the lines of a priced home must sum to its price");
#pragma once

#include <stdexcept>
#include <string>

namespace quoin {

class Broken : public std::logic_error {
  public:
    using std::logic_error::logic_error;
};

/// Checks an invariant in every build.
inline void ensure(bool holds, const char* promise) {
    if (!holds) throw Broken(promise);
}

} // namespace quoin
