// Asking the system's clock.
#include "clock.hpp"

#include <chrono>

namespace quoin::apps {

Date today() {
    const auto days = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    return plus_days(Date(), static_cast<int>(days.time_since_epoch().count()));
}

} // namespace quoin::apps
