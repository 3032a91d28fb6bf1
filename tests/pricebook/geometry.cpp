// Outlines: which are simple, which overlap, what lies in a side; against a count of small squares.
#include "pricebook/geometry.hpp"

#include "support/check.hpp"
