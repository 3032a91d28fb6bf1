// Changing a JSON input the way a person's slip or another file would: member by member.
#pragma once

#include <cstdint>
#include <map>
#include <random>
#include <string>
#include <vector>

#include <quoin/text/value.hpp>

#include "targets.hpp"

namespace quoin::fuzz {

class Mutator {
  public:
    /// Values and members to put in are taken from these.
    explicit Mutator(const std::vector<Seed>& seeds);

    /// Another JSON text, or the same where it is none.
    [[nodiscard]] std::string changed(const std::string& bytes, std::uint64_t seed);
    /// One text with members of the other.
    [[nodiscard]] std::string crossed(const std::string& one, const std::string& other,
                                      std::uint64_t seed);

  private:
    struct Place {
        Value* value = nullptr;
        std::string key; ///< its name, or its list's
        Value* parent = nullptr;
        std::size_t index = 0;
    };
    void gather(const Value& value, const std::string& key);
    void list_places(Value& value, const std::string& key, std::vector<Place>& places);
    void change(Value& root);
    void change_literal(Value& value, const std::string& key);
    void add_member(Value& object);
    [[nodiscard]] std::size_t below(std::size_t end) { return random_() % end; }

    std::map<std::string, std::vector<Value>> values_; ///< by the key they stood under
    std::vector<std::string> keys_;
    std::mt19937_64 random_;
};

} // namespace quoin::fuzz
