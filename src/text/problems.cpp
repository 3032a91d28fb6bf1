// Problems as they are found: their places, and what is kept of the values that they speak of.
#include <quoin/text/problems.hpp>

#include <algorithm>

#include "utf8.hpp"
#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/text/value.hpp>

namespace quoin {

std::string_view name_of(ProblemId id) {
    static constexpr std::string_view names[] = {
#define QUOIN_PROBLEM_NAME(id, name, signature) name,
        QUOIN_PROBLEMS(QUOIN_PROBLEM_NAME)
#undef QUOIN_PROBLEM_NAME
    };
    return names[static_cast<std::size_t>(id)];
}

namespace {

constexpr std::size_t widest_excerpt = 96;

/// Puts line, column and excerpt of a place into a problem; a very long line is cut around it.
void locate(Problem& problem, const Span& place) {
    if (place.source == nullptr) return;
    const auto position = place.source->position(place.begin);
    problem.file = place.source->name();
    problem.line = position.line;
    problem.column = position.column;
    const std::string_view line = place.source->line(position.line);
    const auto column = static_cast<std::size_t>(position.column - 1);
    const std::size_t from = line.size() > widest_excerpt && column > widest_excerpt / 2
                                 ? column - widest_excerpt / 2
                                 : 0;
    problem.excerpt_from = static_cast<int>(from);
    problem.excerpt = made_printable(line.substr(std::min(from, line.size()), widest_excerpt));
    const std::size_t room = from + problem.excerpt.size();
    const std::size_t width = place.end > place.begin ? place.end - place.begin : 1;
    problem.width = static_cast<int>(std::min(width, room > column ? room - column : 1));
}

std::string short_and_visible(std::string_view text, std::size_t most) {
    return made_visible(cut(text, most));
}

FoundValue found_at(const Spot& spot) {
    using Kind = FoundValue::Kind;
    if (spot.value == nullptr) return {};
    switch (spot.value->kind) {
    case Value::Kind::null:
        return {Kind::null, {}};
    case Value::Kind::list:
        return {Kind::list, {}};
    case Value::Kind::object:
        return {Kind::object, {}};
    default:
        break;
    }
    return {spot.value->kind == Value::Kind::text ? Kind::text : Kind::literal,
            short_and_visible(spot.value->literal, caps::quoted)};
}

} // namespace

namespace problems {

std::string Text::kept(std::string_view text) { return short_and_visible(text, caps::line); }

std::string Quoted::kept(std::string_view text) { return short_and_visible(text, caps::quoted); }

std::vector<std::string> Names::kept(const std::vector<std::string>& names) {
    std::vector<std::string> kept;
    for (const std::string& name : names) kept.push_back(Quoted::kept(name));
    return kept;
}

WhyNot Why::kept(WhyNot why) {
    for (std::string& name : why.names) name = Text::kept(name);
    return why;
}

Wanted Usable::kept(Wanted wanted) {
    wanted.such = Text::kept(wanted.such);
    for (std::string& name : wanted.names) name = Text::kept(name);
    return wanted;
}

Problem Stretch::made(ProblemId id, Span place, Arguments arguments) {
    Problem problem;
    problem.id = id;
    problem.arguments = arguments;
    locate(problem, place);
    return problem;
}

Problem Place::made(ProblemId id, const Spot& spot, Arguments arguments) {
    const Span place = spot.value != nullptr ? spot.value->place : Span{};
    Problem problem = Stretch::made(id, place, arguments);
    problem.path = cut(spot.path.pointer(), caps::line);
    return problem;
}

Problem Shown::made(ProblemId id, const Spot& spot, Arguments arguments) {
    Problem problem = Place::made(id, spot, arguments);
    problem.arguments.insert(problem.arguments.begin(), found_at(spot));
    return problem;
}

Problem File::made(ProblemId id, std::string_view file, Arguments arguments) {
    Problem problem = Stretch::made(id, {}, arguments);
    problem.file = file;
    return problem;
}

} // namespace problems

} // namespace quoin
