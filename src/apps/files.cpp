// Reading files, and finding the data that came with the program.
#include "files.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iterator>

#include <quoin/text/problems.hpp>

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

std::string near_name(const fs::path& path) {
    std::vector<std::string> names;
    std::error_code error;
    const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        if (!entry.is_directory(error)) names.push_back(entry.path().filename().string());
    }
    return nearest(path.filename().string(), names);
}

/// That of the program that runs; bin/ or libexec/ of an installation. "" where there is no
/// telling.
fs::path own_folder() {
    std::error_code error;
    return fs::read_symlink("/proc/self/exe", error).parent_path();
}

} // namespace

std::shared_ptr<const Source> read_file(const fs::path& path, FileMeant what, Findings& findings) {
    std::error_code error;
    const auto none = [&](Problem problem) {
        findings.add(std::move(problem));
        return std::shared_ptr<const Source>();
    };
    const fs::file_status status = fs::status(path, error);
    if (!fs::exists(status))
        return none(problems::file_missing(path.string(), what, near_name(path)));
    if (fs::is_directory(status)) return none(problems::file_is_folder(path.string()));
    const std::uintmax_t size = fs::is_regular_file(status) ? fs::file_size(path, error) : 0;
    if (size > largest_file && !error)
        return none(problems::file_too_large(path.string(), size, largest_file));
    errno = 0;
    std::ifstream in(path, std::ios::binary);
    std::string text;
    constexpr std::size_t usual_piece = 64U * 1024;
    // All of it at once, and a look at its end; what is no regular file has no size beforehand.
    std::size_t piece = size == 0 || error ? usual_piece : static_cast<std::size_t>(size) + 1;
    while (in && text.size() <= largest_file) {
        const std::size_t have = text.size();
        text.resize(have + piece);
        in.read(text.data() + have, static_cast<std::streamsize>(piece));
        text.resize(have + static_cast<std::size_t>(in.gcount()));
        piece = usual_piece;
    }
    if (in.bad() || (!in && !in.eof()))
        return none(problems::file_unreadable(path.string(), std::strerror(errno)));
    if (text.size() > largest_file)
        return none(problems::file_too_large(path.string(), text.size(), largest_file));
    return std::make_shared<const Source>(path.string(), std::move(text));
}

std::unique_ptr<std::istream> open_file(const fs::path& path) {
    std::error_code error;
    if (fs::file_size(path, error) > largest_file) return nullptr; // so is that of no regular file
    return std::make_unique<std::ifstream>(path, std::ios::binary);
}

std::vector<fs::path> json_files(const fs::path& folder) {
    std::vector<fs::path> files;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        if (entry.path().extension() == ".json") files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

std::vector<fs::path> json_files_below(const fs::path& folder) {
    constexpr int folders_deep = 2;
    constexpr std::size_t most_files = 2000;
    std::vector<fs::path> files;
    std::error_code error;
    fs::recursive_directory_iterator it(folder, fs::directory_options::skip_permission_denied,
                                        error);
    while (!error && it != fs::recursive_directory_iterator() && files.size() < most_files) {
        if (it.depth() >= folders_deep) it.disable_recursion_pending();
        if (it->is_regular_file(error) && it->path().extension() == ".json") {
            files.push_back(it->path());
        }
        it.increment(error);
    }
    std::sort(files.begin(), files.end());
    return files;
}

bool is_folder(const fs::path& path) {
    std::error_code error;
    return fs::is_directory(path, error);
}

std::optional<FileLook> look_at_file(const fs::path& path) {
    std::error_code error;
    if (!fs::exists(path, error)) return {};
    if (!fs::is_regular_file(path, error)) return FileLook{};
    const std::uintmax_t size = fs::file_size(path, error);
    return FileLook{true, error ? 0 : size};
}

bool lies_below(const fs::path& file, const fs::path& folder) {
    std::error_code error;
    const fs::path home = fs::canonical(folder, error);
    if (error) return false;
    const fs::path real = fs::canonical(file, error);
    if (error) return false;
    const fs::path way = real.lexically_relative(home);
    return !way.empty() && *way.begin() != "..";
}

fs::path data_folder(std::string_view name) {
    std::error_code error;
    const fs::path own = own_folder();
    const fs::path installed = own.parent_path() / "share" / "quoin" / name;
    if (!own.empty() && fs::is_directory(installed, error)) return installed;
    return fs::path(QUOIN_SOURCE_DATA) / name;
}

fs::path whole_program() {
    std::error_code error;
    const fs::path name = fs::path("libexec") / "quoin";
    const fs::path own = own_folder();
    if (own.empty()) return {}; // never one that happens to lie where the program is started
    const fs::path beside = own / name; // as it is built
    return fs::exists(beside, error) ? beside : own.parent_path() / name;
}

fs::path rates_folder(const std::string& asked) {
    if (!asked.empty()) return asked;
    if (const char* set = std::getenv("QUOIN_RATES"); set != nullptr && *set != '\0') return set;
    return data_folder("rates");
}

} // namespace quoin::apps
