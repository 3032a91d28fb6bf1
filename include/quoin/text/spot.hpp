// Where a value stands in its file: what a problem needs to know of it.
#pragma once

#include <string>
#include <string_view>

namespace quoin {

struct Value;

/// A chain of keys and indexes, spelled out only when needed.
struct Path {
    const Path* parent = nullptr;
    std::string_view key = {};
    int index = -1;
    std::string_view base = {}; ///< a pointer already spelled out, that the chain begins with

    [[nodiscard]] std::string pointer() const; ///< JSON Pointer (RFC 6901)
};

/// A value and where it stands.
struct Spot {
    const Value* value = nullptr;
    Path path;
};

/// A spot that outlives its readers: for checks that come after the whole file was read.
struct Mark {
    const Value* value = nullptr;
    std::string pointer;

    Mark() = default;
    explicit Mark(const Spot& spot) : value(spot.value), pointer(spot.path.pointer()) {}
    [[nodiscard]] Spot spot() const { return {value, Path{nullptr, {}, -1, pointer}}; }
};

} // namespace quoin
