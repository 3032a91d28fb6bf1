// at: an item of a list by the index another item keeps of it. An index that does not fit is our
// own mistake, never a user's.
//
//   at(book.options, pick.option).name
#pragma once

#include <cstddef>

#include <quoin/exact/broken.hpp>

namespace quoin {

template <class List>
[[nodiscard]] auto& at(List& list, int index) {
    const auto position = static_cast<std::size_t>(index);
    ensure(position < list.size(), "an index must fit its list");
    return list[position];
}

} // namespace quoin
