// Pictures in a browser were looked at before they were handed to it: stands in for
// harmless_svg.cpp, whose XML reader is as large as a third of the module.
#include "../harmless_svg.hpp"

namespace quoin::apps {

std::optional<SvgFault> svg_fault(std::string_view /*text*/) { return {}; }

} // namespace quoin::apps
