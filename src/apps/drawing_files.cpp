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

std::optional<SiteMap> read_map(const PriceBook& book, const fs::path& folder, Language language,
                                Findings& findings) {
    if (book.map.empty()) return {};
    const Document document = read_data(folder / book.map, FileMeant::site_map, language, findings);
    if (document.root.kind == Value::Kind::null) return {};
    return read_site_map(document, book, findings);
}

} // namespace

Drawings read_drawings(const PriceBook& book, const fs::path& folder, Language language,
                       Findings& findings) {
    std::vector<std::optional<PlanDrawing>> plans;
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        plans.push_back(read_one(book, plan, folder, language, findings));
    }
    return {PerItem<Plan, std::optional<PlanDrawing>>(std::move(plans)),
            read_map(book, folder, language, findings)};
}

} // namespace quoin::apps
