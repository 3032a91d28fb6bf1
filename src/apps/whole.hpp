// What the whole program alone can do: serve, write workbooks, and make what a buyer takes home.
//
// They need libraries that take longer to load than a quote takes to answer, so the program that
// people start goes without them. Where a command needs one of these, it starts the whole program
// in its own place, with the arguments that it was given.
#pragma once

#include <string>

#include <quoin/render/workbook.hpp>

#include "command.hpp"

namespace quoin::apps {

struct Whole {
    /// Returns when it is told to stop. Throws Refused.
    void (*serve)(const Typed& typed);
    /// The bytes of an .xlsx file. Throws Refused where the system leaves no room for it.
    std::string (*xlsx_bytes)(const Workbook& workbook);
    /// Writes what a buyer takes home. Throws Refused.
    Outcome (*take_home)(const Typed& typed);
};

/// Linked into the whole program, and into the tests.
extern const Whole all_of_it;

/// Thrown by a command that the whole program has to do.
struct LeftToWhole {};

/// Throws LeftToWhole where this is not the whole program. To be asked before anything is read:
/// what is read from a pipe is gone for the program that comes next.
[[nodiscard]] const Whole& whole_of(const Typed& typed);

} // namespace quoin::apps
