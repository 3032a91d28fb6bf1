// Finding, reading and checking the pictures of a price book.
#include "pictures.hpp"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <limits>
#include <set>

#include <quoin/text/problems.hpp>

#include "files.hpp"
#include "harmless_svg.hpp"

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t kb = 1000;
constexpr std::size_t most_kb = 400;    ///< of a file
constexpr std::size_t most_svg_kb = 60; ///< of one that is drawn element by element
/// Of one that is shown, at four bytes a pixel: as of 4,000 pixels a side.
constexpr std::size_t most_shown_kb = std::size_t{4} * 4000 * 4000 / kb;
constexpr std::size_t most_pictures = 500; ///< of one book: they are all held in memory

using EachNamed = std::function<void(const Spot& picture)>;

void name_picture(const Value& item, const Path& path, const EachNamed& named) {
    const Value* picture = item.find("picture");
    if (picture != nullptr) named({picture, Path{&path, "picture"}});
}

/// Of each item of a list, and of what it consists of itself.
void name_pictures(const Value& owner, const Path& above, std::string_view list,
                   std::initializer_list<std::string_view> inner, const EachNamed& named) {
    const Value* items = owner.find(list);
    if (items == nullptr) return;
    const Path path{&above, list};
    int index = 0;
    for (const Value& item : items->items) {
        const Path here{&path, {}, index++};
        name_picture(item, here, named);
        for (const std::string_view each : inner) name_pictures(item, here, each, {}, named);
    }
}

/// Every place of a price book where a picture is named.
void name_pictures(const Document& document, const EachNamed& named) {
    const Path top;
    name_pictures(document.root, top, "plans", {"elevations"}, named);
    name_pictures(document.root, top, "options", {"levels", "choices"}, named);
}

/// In 64 bits whatever the machine has: sides of 2^31 points can be written.
std::size_t kb_of(std::uint64_t bytes) {
    constexpr std::uint64_t most = std::numeric_limits<std::size_t>::max();
    return static_cast<std::size_t>(std::min((bytes + kb - 1) / kb, most));
}

std::optional<Problem> svg_problem(std::string_view text, const Spot& named) {
    if (const auto fault = svg_fault(text)) {
        return fault->part.empty() ? problems::not_a_picture(named)
                                   : problems::picture_active(named, fault->part);
    }
    if (kb_of(text.size()) > most_svg_kb) {
        return problems::picture_too_large(named, kb_of(text.size()), most_svg_kb);
    }
    return {};
}

std::optional<Problem> raster_problem(const Raster& raster, const Spot& named) {
    const std::size_t shown_kb = kb_of(std::uint64_t{4} * raster.width * raster.height);
    if (shown_kb <= most_shown_kb) return {};
    return problems::picture_too_large(named, shown_kb, most_shown_kb);
}

/// What is wrong with a file's bytes; `kind` is then what they are.
std::optional<Problem> problem_of(std::string_view bytes, const Spot& named, PictureKind& kind) {
    if (const auto raster = raster_of(bytes)) {
        kind = raster->kind;
        return raster_problem(*raster, named);
    }
    kind = PictureKind::svg;
    return svg_problem(bytes, named);
}

/// What keeps a file from being read at all.
std::optional<Problem> file_problem(const fs::path& path, const fs::path& folder,
                                    const Spot& named) {
    const auto look = look_at_file(path);
    if (!look) return {}; // reading it says so, and names what is near
    if (!lies_below(path, folder)) return problems::file_elsewhere(named);
    if (!look->regular) return problems::not_a_picture(named);
    if (look->size > kb * most_kb) {
        return problems::picture_too_large(named, kb_of(look->size), most_kb);
    }
    return {};
}

std::optional<Picture> read_picture(const fs::path& folder, const Spot& named, Findings& findings) {
    const std::string& file = named.value->literal;
    if (auto problem = file_problem(folder / file, folder, named)) {
        findings.add(std::move(*problem));
        return {};
    }
    Picture picture{file, PictureKind::svg, read_file(folder / file, FileMeant::picture, findings)};
    if (picture.source == nullptr) return {};
    if (auto problem = problem_of(picture.source->text(), named, picture.kind)) {
        findings.add(std::move(*problem));
        return {};
    }
    return picture;
}

} // namespace

std::vector<Picture> read_pictures(const Document& document, Findings& findings) {
    std::vector<Picture> pictures;
    if (document.source == nullptr) return pictures;
    fs::path folder = fs::path(document.source->name()).parent_path();
    if (folder.empty()) folder = ".";
    std::set<std::string> seen;
    name_pictures(document, [&](const Spot& named) {
        if (findings.full() || !seen.insert(named.value->literal).second) return;
        if (seen.size() > most_pictures) {
            if (seen.size() == most_pictures + 1) {
                findings.add(problems::too_many(named, seen.size(), most_pictures));
            }
            return;
        }
        if (auto picture = read_picture(folder, named, findings)) {
            pictures.push_back(std::move(*picture));
        }
    });
    return pictures;
}

namespace {

/// Every look of a book, in its own order.
void each_look(PriceBook& book, const std::function<void(Look&)>& look) {
    for (Plan& plan : book.plans) {
        for (Elevation& elevation : plan.elevations) look(elevation.look);
    }
    for (Option& option : book.options) {
        look(option.look);
        for (Level& level : option.levels) look(level.look);
        for (Choice& choice : option.choices) look(choice.look);
    }
}

} // namespace

void keep_pictures(PriceBook& book, const std::vector<Picture>& pictures) {
    std::set<std::string_view> kept;
    for (const Picture& picture : pictures) kept.insert(picture.file);
    each_look(book, [&](Look& look) {
        if (!kept.contains(look.picture)) look.picture.clear();
    });
}

} // namespace quoin::apps
