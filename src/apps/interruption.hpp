// Ctrl-C during long work: the first asks it to stop, the second ends the program.
#pragma once

#include <csignal>

#include <quoin/loan/watch.hpp>

namespace quoin::apps {

/// While it lives, an interrupt is taken as a wish to stop. Only one at a time: a command line has
/// one as long as it runs.
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

/// Holds until an interrupt.
[[nodiscard]] const Watch& not_interrupted();

} // namespace quoin::apps
