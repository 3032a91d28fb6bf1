// Writing beside a file, judging what stands there, and taking its place.
#include "written_file.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include <zlib.h>

#include <quoin/render/written_mark.hpp>
#include <quoin/text/problems.hpp>

#include "files.hpp"
#include <quoin/inquiry/typed.hpp>

namespace quoin::apps {
namespace {

/// A file that is open, and closed with the object.
class Open {
  public:
    explicit Open(int file) : file_(file) {}
    ~Open() {
        if (file_ >= 0) ::close(file_);
    }
    Open(const Open&) = delete;
    Open& operator=(const Open&) = delete;
    [[nodiscard]] int get() const { return file_; }
    [[nodiscard]] bool is_good() const { return file_ >= 0; }

  private:
    int file_;
};

[[noreturn]] void refuse_writing(const std::string& path, int why) {
    refuse(problems::file_unwritable(path, std::strerror(why)));
}

/// A new file beside the one that is to be written, open to its owner alone, and gone with the
/// object unless it took its place.
class Beside {
  public:
    Beside(std::string path, std::string_view text)
        : path_(std::move(path)), made_(path_ + ".XXXXXX") {
        const Open file(mkstemp(made_.data()));
        if (!file.is_good()) refuse_writing(path_, errno);
        there_ = true;
        while (!text.empty()) {
            const ssize_t count = ::write(file.get(), text.data(), text.size());
            if (count < 0 && errno == EINTR) continue;
            if (count <= 0) fail(errno);
            text.remove_prefix(static_cast<std::size_t>(count));
        }
        if (fsync(file.get()) != 0) fail(errno);
    }
    ~Beside() {
        if (there_) std::remove(made_.c_str());
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    /// Takes the place where nothing is; false where something is.
    bool take_empty_place() {
        int failed = renameat2(AT_FDCWD, made_.c_str(), AT_FDCWD, path_.c_str(), RENAME_NOREPLACE);
        if (failed == 0) there_ = false;
        // Not every file system can; there the file has two names for a moment.
        if (failed != 0 && errno == EINVAL) failed = ::link(made_.c_str(), path_.c_str());
        if (failed != 0 && errno != EEXIST) fail(errno);
        return failed == 0;
    }
    void take_place() {
        if (std::rename(made_.c_str(), path_.c_str()) != 0) fail(errno);
        there_ = false;
    }

  private:
    [[noreturn]] void fail(int why) {
        std::remove(made_.c_str());
        there_ = false;
        refuse_writing(path_, why);
    }

    std::string path_;
    std::string made_;
    bool there_ = false;
};

bool same_file(const struct stat& one, const struct stat& other) {
    return one.st_dev == other.st_dev && one.st_ino == other.st_ino;
}

std::string bytes_of(int file) {
    std::string bytes;
    constexpr std::size_t piece = 64U * 1024;
    while (bytes.size() <= largest_file) {
        const std::size_t have = bytes.size();
        bytes.resize(have + piece);
        const ssize_t got = ::read(file, bytes.data() + have, piece);
        bytes.resize(have + static_cast<std::size_t>(std::max<ssize_t>(got, 0)));
        if (got <= 0) break;
    }
    return bytes;
}

/// Whether what is under this name is quoin's: read from the open file, and still the one that the
/// name stands for.
bool is_ours(const std::string& path) {
    const Open file(::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC));
    struct stat opened {};
    if (!file.is_good() || fstat(file.get(), &opened) != 0 || !S_ISREG(opened.st_mode))
        return false;
    if (!bears_mark(bytes_of(file.get()))) return false;
    struct stat named {};
    return lstat(path.c_str(), &named) == 0 && same_file(opened, named);
}

std::size_t number_at(std::string_view bytes, std::size_t at, std::size_t width) {
    std::size_t number = 0;
    for (std::size_t i = width; i-- > 0;) {
        const std::size_t where = at + i;
        number =
            number << 8U | (where < bytes.size() ? static_cast<unsigned char>(bytes[where]) : 0);
    }
    return number;
}

/// The beginning of what a deflated stretch holds.
std::string inflated(std::string_view packed) {
    std::string plain(64U * 1024, '\0');
    z_stream stream{};
    constexpr int raw = -15;
    if (inflateInit2(&stream, raw) != Z_OK) return {};
    std::string from(packed);
    stream.next_in = reinterpret_cast<Bytef*>(from.data());
    stream.avail_in = static_cast<uInt>(from.size());
    stream.next_out = reinterpret_cast<Bytef*>(plain.data());
    stream.avail_out = static_cast<uInt>(plain.size());
    const int result = inflate(&stream, Z_SYNC_FLUSH);
    plain.resize(result == Z_OK || result == Z_STREAM_END ? stream.total_out : 0);
    inflateEnd(&stream);
    return plain;
}

/// A file of a ZIP archive by its name (PKWARE's APPNOTE, 4.3), or nothing.
std::string zipped(std::string_view bytes, std::string_view name) {
    const std::size_t end = bytes.rfind("PK\5\6");
    if (end == std::string_view::npos) return {};
    std::size_t at = number_at(bytes, end + 16, 4);
    for (std::size_t left = number_at(bytes, end + 10, 2); left > 0; --left) {
        if (at >= bytes.size() || bytes.substr(at, 4) != "PK\1\2") return {};
        const std::size_t length = number_at(bytes, at + 28, 2);
        if (bytes.substr(std::min(at + 46, bytes.size()), length) == name) break;
        at += 46 + length + number_at(bytes, at + 30, 2) + number_at(bytes, at + 32, 2);
        if (left == 1) return {};
    }
    const std::size_t local = number_at(bytes, at + 42, 4);
    const std::size_t data =
        local + 30 + number_at(bytes, local + 26, 2) + number_at(bytes, local + 28, 2);
    if (data > bytes.size()) return {};
    const std::string_view packed = bytes.substr(data, number_at(bytes, at + 20, 4));
    return number_at(bytes, at + 10, 2) == 0 ? std::string(packed) : inflated(packed);
}

bool has(std::string_view text, std::string_view mark) {
    return text.find(mark) != std::string_view::npos;
}

} // namespace

bool bears_mark(std::string_view bytes) {
    constexpr std::size_t head = 2048;
    if (bytes.substr(0, 9) == "<!doctype") return has(bytes.substr(0, head), sheet_mark);
    if (bytes.substr(0, 2) != "PK") return false;
    return has(zipped(bytes, "docProps/core.xml"), workbook_mark);
}

void check_ending(const std::string& option, const std::string& name,
                  const std::vector<std::string>& endings) {
    const auto ending = std::filesystem::path(name).extension();
    if (std::find(endings.begin(), endings.end(), ending) != endings.end()) return;
    refuse_typed(option, name, {.kind = Wanted::Kind::name_with_ending, .such = endings.front()});
}

void write_file(const std::filesystem::path& path, std::string_view text, bool force) {
    if (std::filesystem::is_directory(path)) refuse_writing(path.string(), EISDIR);
    Beside beside(path.string(), text);
    if (!force) {
        if (beside.take_empty_place()) return;
        if (!is_ours(path.string())) refuse(problems::file_not_ours(path.string()));
    }
    beside.take_place();
}

} // namespace quoin::apps
