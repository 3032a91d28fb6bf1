// A folder that a test may fill and damage; it goes when the test ends.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>

namespace quoin::test {

class Scratch {
  public:
    Scratch() {
        std::string name = std::filesystem::temp_directory_path() / "quoin-test-XXXXXX";
        if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for a test");
        folder_ = name;
    }
    /// With a copy of a folder's files and folders.
    explicit Scratch(const char* from) : Scratch() {
        std::filesystem::copy(from, folder_, std::filesystem::copy_options::recursive);
    }
    ~Scratch() { std::filesystem::remove_all(folder_); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    [[nodiscard]] std::string path(const std::string& name = {}) const {
        return name.empty() ? folder_.string() : (folder_ / name).string();
    }
    void write(const std::string& name, const std::string& text) const {
        std::ofstream(path(name), std::ios::binary) << text;
    }

  private:
    std::filesystem::path folder_;
};

} // namespace quoin::test
