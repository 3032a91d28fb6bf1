// Ending long work that nobody waits for any more.
//
// Every question works out loan figures again and again; before each of them the watch of its rules
// is asked. Whoever answers a question without an answer says so.
#pragma once

#include <exception>
#include <functional>

namespace quoin {

/// Asked many times a second; false ends the work.
using Watch = std::function<bool()>;

/// How the work ends then.
class Stopped : public std::exception {
  public:
    [[nodiscard]] const char* what() const noexcept override { return "stopped"; }
};

/// Throws Stopped where the watch says so; `watch` may be nullptr.
inline void keep_on(const Watch* watch) {
    if (watch != nullptr && *watch && !(*watch)()) throw Stopped();
}

} // namespace quoin
