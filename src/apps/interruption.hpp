// Ctrl-C during long work: the first asks it to stop, the second ends the program.
#pragma once

#include <csignal>

namespace quoin::apps {

/// While it lives, an interrupt is taken as a wish to stop. Only one at a time.
class Interruption {
  public:
    Interruption();
    ~Interruption();
    Interruption(const Interruption&) = delete;
    Interruption& operator=(const Interruption&) = delete;

    [[nodiscard]] static bool asked();

  private:
    struct sigaction before_ = {};
};

} // namespace quoin::apps
