// Broken: a promise of quoin's own that did not hold. Never a user's mistake.
//
//   ensure(payment >= Money{}, "a payment is not negative");
//   ensure_equal(sum, total, "the lines of a priced home sum to its price");
//   // Broken: the lines of a priced home sum to its price: 412900.00 is not 412900.01
//
// docs/promises.md says what is promised of each kind of value, and where.
#pragma once

#include <concepts>
#include <stdexcept>
#include <string>
#include <type_traits>

namespace quoin {

class Broken : public std::logic_error {
  public:
    using std::logic_error::logic_error;
};

namespace promised {

// What throws stands apart from the checks, so that a promise that holds costs a comparison and the
// code around it stays as small as it was.
[[noreturn, gnu::cold, gnu::noinline]] inline void fail(const char* promise) {
    throw Broken(promise);
}

template <class Value>
std::string shown(const Value& value) {
    if constexpr (std::same_as<Value, bool>) {
        return value ? "yes" : "no";
    } else if constexpr (std::integral<Value>) {
        return std::to_string(value);
    } else if constexpr (requires { value.text(); }) {
        return value.text();
    } else if constexpr (requires { value.value().text(); }) {
        return value.value().text(); // a percent, points, an LTV
    } else if constexpr (requires { value.count(); }) {
        return std::to_string(value.count()); // months
    } else {
        return std::string(value);
    }
}

template <class Value>
[[noreturn, gnu::cold, gnu::noinline]] void differ(const Value& a, const Value& b,
                                                   const char* promise) {
    throw Broken(std::string(promise) + ": " + shown(a) + " is not " + shown(b));
}

} // namespace promised

/// Checks an invariant in every build.
inline void ensure(bool holds, const char* promise) {
    if (!holds) promised::fail(promise);
}

/// Checks in every build that two ways to one figure agree; says both where they do not.
template <std::equality_comparable Value>
void ensure_equal(const Value& a, const std::type_identity_t<Value>& b, const char* promise) {
    if (!(a == b)) promised::differ(a, b, promise);
}

} // namespace quoin
