// Files held in memory, where there is no disk: what files.hpp reads in a browser.
#pragma once

#include <string>
#include <string_view>

namespace quoin::apps {

/// From now on there is a file of this path, which has names of folders with "/" between them.
void hold_file(std::string_view path, std::string bytes);

} // namespace quoin::apps
