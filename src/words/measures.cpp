// Saying what a measure of a lot or a plan is called, and in which unit it is.
#include <quoin/words/measures.hpp>

#include <algorithm>

#include "parts.hpp"

namespace quoin {
namespace {

std::string words_of_stem(std::string_view code, const PartWords& say) {
    if (const auto common = meaning_in(codes<CommonMeasure>, code)) return say.measure(*common);
    std::string name(code);
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

} // namespace

SaidMeasure said_measure(std::string_view name, const Catalogue& catalogue) {
    const PartWords& say = catalogue.parts;
    const auto without = [&](std::string_view unit) {
        return name.substr(0, name.size() - unit.size());
    };
    constexpr std::string_view square_feet = "_sq_ft";
    constexpr std::string_view feet = "_ft";
    if (name.ends_with(square_feet)) {
        return {words_of_stem(without(square_feet), say), " " + say.unit(Unit::square_foot)};
    }
    if (name.ends_with(feet)) return {words_of_stem(without(feet), say), " " + say.feet()};
    return {words_of_stem(name, say), {}};
}

} // namespace quoin
