// Taking one interrupt as a wish to stop.
#include "interruption.hpp"

namespace quoin::apps {
namespace {

volatile std::sig_atomic_t interrupted = 0;

extern "C" void note_interrupt(int number) {
    interrupted = 1;
    std::signal(number, SIG_DFL); // the next one ends the program
}

} // namespace

Interruption::Interruption() {
    interrupted = 0;
    struct sigaction noting = {};
    noting.sa_handler = note_interrupt;
    noting.sa_flags = SA_RESTART;
    sigemptyset(&noting.sa_mask);
    sigaction(SIGINT, &noting, &before_);
}

Interruption::~Interruption() { sigaction(SIGINT, &before_, nullptr); }

bool Interruption::asked() { return interrupted != 0; }

const Watch& not_interrupted() {
    static const Watch watch = [] { return !Interruption::asked(); };
    return watch;
}

} // namespace quoin::apps
