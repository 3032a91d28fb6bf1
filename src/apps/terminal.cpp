// Asking the system how wide a terminal is.
#include "terminal.hpp"

#include <algorithm>

#include <sys/ioctl.h>
#include <unistd.h>

namespace quoin::apps {

std::optional<std::size_t> terminal_columns() {
    winsize size{};
    if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return std::nullopt;
    return static_cast<std::size_t>(std::clamp<int>(size.ws_col, narrowest, widest));
}

} // namespace quoin::apps
