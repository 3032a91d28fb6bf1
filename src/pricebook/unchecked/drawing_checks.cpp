// Drawings in a browser were checked before they were handed to it: stands in for the other
// drawing_checks.cpp, which takes longer than all else that is read.
#include "pricebook/drawing_marks.hpp"

namespace quoin {

void check_drawing(const DrawingRead& /*read*/, Findings& /*findings*/) {}

} // namespace quoin
