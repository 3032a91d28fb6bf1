// Crowd: connections that wait for a thread, and those that are making room for them.
//
// An open connection keeps its thread, also between two requests. Where others wait, exactly as
// many connections end as there are waiting: not all of them at once, and never none.
#pragma once

#include <mutex>

namespace quoin::apps {

class Crowd {
  public:
    void came() {
        const std::lock_guard lock(mutex_);
        ++waiting_;
    }
    /// The one that came has its thread.
    void served() {
        const std::lock_guard lock(mutex_);
        --waiting_;
    }
    /// Whether the asker is to make room; it says `left` once it has.
    [[nodiscard]] bool wants_room() {
        const std::lock_guard lock(mutex_);
        if (waiting_ <= leaving_) return false;
        ++leaving_;
        return true;
    }
    void left() {
        const std::lock_guard lock(mutex_);
        --leaving_;
    }

  private:
    std::mutex mutex_;
    int waiting_ = 0;
    int leaving_ = 0;
};

} // namespace quoin::apps
