// The fuzz targets: each takes any bytes, and whatever they are, it comes back.
//
// What a target lets pass is what a person may be told: Refused (the input is wrong) and Overflow
// (figures too large to count). Anything else that is thrown is a find, and so is a process that
// dies, an answer that is no JSON, a rechecked figure that differs, and an input that takes long.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace quoin::fuzz {

/// What a target found, in words.
class Find : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

struct Seed {
    std::string name;
    std::string bytes;
};

struct Target {
    std::string_view name; ///< also the folder of its finds
    std::string_view what;
    void (*run)(const std::string& bytes);
    std::vector<Seed> (*seeds)();
    bool is_json = true; ///< then its inputs are changed member by member
};

[[nodiscard]] const std::vector<Target>& targets();
/// The target of this name, or nullptr.
[[nodiscard]] const Target* find_target(std::string_view name);

/// Runs a target and holds it to a time: processor seconds, however busy the machine is. Throws
/// what it found.
void run_timed(const Target& target, const std::string& bytes, double seconds);

} // namespace quoin::fuzz
