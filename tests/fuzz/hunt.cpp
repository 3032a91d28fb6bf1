// What libFuzzer calls: runs the target that $QUOIN_FUZZ_TARGET names, and changes its inputs.
#include <algorithm>
#include <cctype>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "mutate.hpp"
#include "targets.hpp"

namespace {

using namespace quoin::fuzz;

/// Under the sanitizers, and whatever else the machine does: so long is slow beyond doubt.
constexpr double slow = 25;

const Target& target() {
    static const Target& chosen = []() -> const Target& {
        const char* name = std::getenv("QUOIN_FUZZ_TARGET");
        const Target* found = find_target(name == nullptr ? "" : name);
        if (found == nullptr) {
            std::fprintf(stderr, "QUOIN_FUZZ_TARGET names no target\n");
            std::exit(2);
        }
        return *found;
    }();
    return chosen;
}

Mutator& mutator() {
    static Mutator of_target(target().seeds());
    return of_target;
}

std::size_t put(const std::string& text, std::uint8_t* data, std::size_t room) {
    if (text.size() > room) return 0;
    std::memcpy(data, text.data(), text.size());
    return text.size();
}

std::string text_of(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

/// Keeps the first input of each kind of find, and lets the hunt go on; a process that dies leaves
/// its own behind.
void note(std::string what, const std::string& bytes) {
    std::replace_if(
        what.begin(), what.end(), [](char each) { return std::isalnum(each) == 0; }, '-');
    std::replace_if(
        what.begin(), what.end(), [](char each) { return std::isdigit(each) != 0; }, '0');
    const char* folder = std::getenv("QUOIN_FUZZ_FINDS");
    const std::filesystem::path path =
        std::filesystem::path(folder == nullptr ? "." : folder) / what.substr(0, 80);
    if (std::filesystem::exists(path)) return;
    std::fprintf(stderr, "FIND: %s\n", path.c_str());
    std::ofstream(path, std::ios::binary) << bytes;
}

} // namespace

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t room);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    try {
        run_timed(target(), text_of(data, size), slow);
    } catch (const std::exception& error) {
        note(error.what(), text_of(data, size));
    }
    return 0;
}

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t room, unsigned seed) {
    if (!target().is_json || seed % 20 == 0) return LLVMFuzzerMutate(data, size, room);
    const std::size_t made = put(mutator().changed(text_of(data, size), seed), data, room);
    return made != 0 ? made : size;
}

extern "C" std::size_t LLVMFuzzerCustomCrossOver(const std::uint8_t* one, std::size_t one_size,
                                                 const std::uint8_t* other, std::size_t other_size,
                                                 std::uint8_t* out, std::size_t room,
                                                 unsigned seed) {
    if (!target().is_json) return 0;
    return put(mutator().crossed(text_of(one, one_size), text_of(other, other_size), seed), out,
               room);
}
