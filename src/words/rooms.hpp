// The floor plan: rooms and their sizes, and the letters in its drawing.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct RoomsWords {
    Phrase<> title;
    Phrase<> no_drawing;
    Phrase<Text, Text> floor; ///< its name, square feet to live in; one of the tables
    Phrase<Text> other_floor; ///< its name; one that nobody lives on

    // The tables.
    Phrase<> room;
    Phrase<> size;
    Phrase<> square_feet;
    Phrase<Text> brought_by;         ///< names of options
    Phrase<Text, Text> size_of_room; ///< width, depth, as 14' 0"
    Phrase<Text> up_to;              ///< the size of a room of another shape than a rectangle
    Phrase<> sizes_as_drawn;         ///< a caution

    // The drawing.
    Phrase<Text, Text> drawing;       ///< plan, floor
    Phrase<Text, Text> room_and_size; ///< its name, its size
    Phrase<> up;                      ///< what stairs do
    Phrase<> down;
    Phrase<> refrigerator; ///< letters that fit on it, likewise below
    Phrase<> washer;
    Phrase<> dryer;
    Phrase<> furnace;
    Phrase<> water_heater;
    Phrase<> in_color; ///< beside a drawing on paper
    Phrase<> scale;    ///< how long the bar is
};

} // namespace quoin
