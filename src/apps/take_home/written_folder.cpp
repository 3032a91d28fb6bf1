// Writing beside a folder, and taking its place.
#include "written_folder.hpp"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

#include <sys/stat.h>
#include <unistd.h>

#include <quoin/inquiry/typed.hpp>
#include <quoin/text/problems.hpp>

#include "../written_file.hpp"

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse_folder(const std::string& folder, int why) {
    refuse(problems::file_unwritable(folder, std::strerror(why)));
}

/// A new folder beside the one that is to be written, its owner's alone, and gone with the object
/// unless it took its place.
class FolderBeside {
  public:
    explicit FolderBeside(std::string folder)
        : folder_(std::move(folder)), made_(folder_ + ".XXXXXX") {
        if (mkdtemp(made_.data()) == nullptr) refuse_folder(folder_, errno);
    }
    ~FolderBeside() {
        std::error_code ignored;
        if (!made_.empty()) fs::remove_all(made_, ignored);
    }
    FolderBeside(const FolderBeside&) = delete;
    FolderBeside& operator=(const FolderBeside&) = delete;

    void write(const TakenFile& file) const {
        fs::path path = made_;
        for (const fs::path& part : fs::path(file.path).parent_path()) add_folder(path /= part);
        write_file(fs::path(made_) / file.path, file.bytes, false);
    }
    /// An empty folder is replaced, anything else is not.
    void take_place() {
        if (std::rename(made_.c_str(), folder_.c_str()) != 0) refuse_folder(folder_, errno);
        made_.clear();
    }

  private:
    void add_folder(const fs::path& path) const {
        if (::mkdir(path.c_str(), S_IRWXU) != 0 && errno != EEXIST) refuse_folder(folder_, errno);
    }

    std::string folder_;
    std::string made_;
};

} // namespace

FolderForAWhile::FolderForAWhile() : path_(fs::temp_directory_path() / "quoin-home-XXXXXX") {
    if (mkdtemp(path_.data()) == nullptr) refuse_folder(path_, errno);
}

FolderForAWhile::~FolderForAWhile() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
}

void write_folder(const std::string& folder, const std::vector<TakenFile>& files) {
    std::string name = folder;
    while (name.size() > 1 && name.back() == '/') name.pop_back();
    std::error_code unreadable; // is then told by what follows
    if (fs::exists(name) && !fs::is_empty(name, unreadable)) refuse_folder(folder, ENOTEMPTY);
    FolderBeside beside(name);
    for (const TakenFile& file : files) beside.write(file);
    beside.take_place();
}

} // namespace quoin::apps
