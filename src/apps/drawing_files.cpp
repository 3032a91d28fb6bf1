// Reading drawings beside their price book.
#include "drawing_files.hpp"

#include "loading.hpp"

namespace quoin::apps {
namespace fs = std::filesystem;

namespace {

std::optional<PlanDrawing> read_one(const PriceBook& book, Index<Plan> plan, const fs::path& folder,
                                    Language language, Findings& findings) {
    const std::string& file = at(book.plans, plan).drawing;
    if (file.empty()) return {};
    const Document document = read_data(folder / file, FileMeant::drawing, language, findings);
    if (document.root.kind == Value::Kind::null) return {};
    return read_drawing(document, book, plan, findings);
}

PerItem<Plan, Footprint> footprints_of(const PriceBook& book, const Drawings& drawings) {
    std::vector<Footprint> footprints;
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        footprints.push_back(footprint_of(at(book.plans, plan), drawings.of(plan)));
    }
    return PerItem<Plan, Footprint>(std::move(footprints));
}

std::optional<SiteMap> read_map(const PriceBook& book, const Drawings& drawings,
                                const fs::path& folder, Language language, Findings& findings) {
    if (book.map.empty()) return {};
    const Document document = read_data(folder / book.map, FileMeant::site_map, language, findings);
    if (document.root.kind == Value::Kind::null) return {};
    return read_site_map(document, book, footprints_of(book, drawings), findings);
}

} // namespace

Drawings read_drawings(const PriceBook& book, const fs::path& folder, Language language,
                       Findings& findings) {
    std::vector<std::optional<PlanDrawing>> plans;
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        plans.push_back(read_one(book, plan, folder, language, findings));
    }
    Drawings drawings{PerItem<Plan, std::optional<PlanDrawing>>(std::move(plans)), {}};
    drawings.map = read_map(book, drawings, folder, language, findings);
    return drawings;
}

} // namespace quoin::apps
