// The languages that there is a catalogue in.
#pragma once

#include <quoin/words/catalogue.hpp>

namespace quoin {

namespace english {
extern const Catalogue catalogue;
}

namespace spanish {
extern const Catalogue catalogue;
}

} // namespace quoin
