// A floor of a plan as a drawing: SVG without style or script, in the color of the text around it.
//
// Walls are class "wall"; what chosen options bring is class "chosen" besides. Each room is a
// <g class="room" data-room="kitchen" data-area="kitchen"> of its ground and its label.
#pragma once

#include <string>

#include <quoin/answers/rooms.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Whether a drawing is a file of its own, which names its language, or stands small on paper, with
/// larger letters and without the sizes of rooms.
enum class SvgStands { alone, on_paper };

/// One of the floors. All floors of a home are drawn to one width, so that they lie over each
/// other at one scale. Precondition: it has the floor, and the floor has a room.
[[nodiscard]] std::string plan_svg(const RoomsAnswer& answer, std::size_t floor,
                                   const Catalogue& say, SvgStands stands = SvgStands::alone);

/// 14' 0" x 12' 6"
[[nodiscard]] std::string size_text(const FloorRoom& room, const Catalogue& say);

} // namespace quoin
