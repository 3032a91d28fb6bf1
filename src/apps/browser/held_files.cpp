// The door to files where they are held in memory: stands in for files.cpp.
#include "held_files.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <sstream>

#include <quoin/text/problems.hpp>

#include "../files.hpp"

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

using Held = std::map<fs::path, std::shared_ptr<const Source>>;

Held& held() {
    static Held files;
    return files;
}

std::shared_ptr<const Source> find(const fs::path& path) {
    const auto found = held().find(path.lexically_normal());
    return found == held().end() ? nullptr : found->second;
}

/// The way from a folder to what lies in it or below; empty of what does not.
fs::path way_from(const fs::path& folder, const fs::path& file) {
    const fs::path way = file.lexically_normal().lexically_relative(folder.lexically_normal());
    return way.empty() || *way.begin() == ".." || *way.begin() == "." ? fs::path() : way;
}

/// The JSON files of a folder and of those below it, so many deep.
std::vector<fs::path> json_files_in(const fs::path& folder, std::ptrdiff_t folders_deep) {
    std::vector<fs::path> files;
    for (const auto& [path, source] : held()) {
        const fs::path way = way_from(folder, path);
        const std::ptrdiff_t names = std::distance(way.begin(), way.end());
        const bool near = names > 0 && names <= folders_deep + 1;
        if (near && path.extension() == ".json") files.push_back(folder / way);
    }
    return files; // a map is sorted by its paths
}

std::string near_name(const fs::path& path) {
    std::vector<std::string> names;
    for (const auto& [held_path, source] : held()) {
        if (held_path.parent_path() == path.lexically_normal().parent_path()) {
            names.push_back(held_path.filename().string());
        }
    }
    return nearest(path.filename().string(), names);
}

} // namespace

void hold_file(std::string_view path, std::string bytes) {
    const fs::path normal = fs::path(path).lexically_normal();
    held()[normal] = std::make_shared<const Source>(normal.string(), std::move(bytes));
}

std::shared_ptr<const Source> read_file(const fs::path& path, FileMeant what, Findings& findings) {
    auto source = find(path);
    if (source == nullptr) {
        findings.add(is_folder(path)
                         ? problems::file_is_folder(path.string())
                         : problems::file_missing(path.string(), what, near_name(path)));
        return nullptr;
    }
    if (source->text().size() > largest_file) {
        findings.add(problems::file_too_large(path.string(), source->text().size(), largest_file));
        return nullptr;
    }
    if (source->name() == path.string()) return source;
    return std::make_shared<const Source>(path.string(), std::string(source->text()));
}

std::unique_ptr<std::istream> open_file(const fs::path& path) {
    const auto source = find(path);
    if (source == nullptr || source->text().size() > largest_file) return nullptr;
    return std::make_unique<std::istringstream>(std::string(source->text()));
}

std::vector<fs::path> json_files(const fs::path& folder) { return json_files_in(folder, 0); }

std::vector<fs::path> json_files_below(const fs::path& folder) { return json_files_in(folder, 2); }

bool is_folder(const fs::path& path) {
    return std::any_of(held().begin(), held().end(),
                       [&](const auto& file) { return !way_from(path, file.first).empty(); });
}

std::optional<FileLook> look_at_file(const fs::path& path) {
    const auto source = find(path);
    if (source == nullptr) return is_folder(path) ? std::optional(FileLook{}) : std::nullopt;
    return FileLook{true, source->text().size()};
}

bool lies_below(const fs::path& file, const fs::path& folder) {
    return !way_from(folder, file).empty();
}

/// Nothing came with the program but what is held.
fs::path rates_folder(const std::string& asked) { return asked; }

} // namespace quoin::apps
