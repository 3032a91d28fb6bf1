// Writing a folder: its owner's alone, whole or not at all, and only where nothing is.
#pragma once

#include <string>
#include <vector>

#include "take_home.hpp"

namespace quoin::apps {

/// The folder must not exist, or be empty. Throws Refused where it cannot be written; nothing of it
/// is then left.
void write_folder(const std::string& folder, const std::vector<TakenFile>& files);

/// An empty folder of its owner's alone, gone with the object. Throws Refused where none can be.
class FolderForAWhile {
  public:
    FolderForAWhile();
    ~FolderForAWhile();
    FolderForAWhile(const FolderForAWhile&) = delete;
    FolderForAWhile& operator=(const FolderForAWhile&) = delete;

    [[nodiscard]] const std::string& path() const { return path_; }

  private:
    std::string path_;
};

} // namespace quoin::apps
