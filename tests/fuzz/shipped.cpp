// Reading the shipped files once.
#include "shipped.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include <nlohmann/json.hpp>

#include <quoin/render/problems.hpp>
#include <quoin/text/language.hpp>

#include "apps/loading.hpp"

namespace quoin::fuzz {
namespace {

namespace fs = std::filesystem;

std::string read(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<Seed> all_files() {
    std::vector<Seed> files;
    const fs::path root = QUOIN_SOURCE_DIR;
    for (const char* folder : {"examples", "rates", "tests/golden/data", "tests/errors"}) {
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const fs::path ending = entry.path().extension();
            const bool read_by_some = ending == ".json" || ending == ".csv" || ending == ".svg";
            if (!entry.is_regular_file() || !read_by_some) continue;
            files.push_back(
                {entry.path().lexically_relative(root).generic_string(), read(entry.path())});
        }
    }
    std::sort(files.begin(), files.end(),
              [](const Seed& a, const Seed& b) { return a.name < b.name; });
    return files;
}

Document shipped(const fs::path& path) {
    Findings findings;
    Document document = apps::read_data(path, FileMeant::file, Language::english, findings);
    if (!findings.none()) throw Refused(std::move(findings));
    return document;
}

/// Every JSON file of a folder, in the order of their names.
void add_documents(const fs::path& folder, FileKind kind, std::vector<Document>& documents) {
    std::vector<fs::path> paths;
    for (const auto& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() == ".json") paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end());
    for (const fs::path& path : paths) {
        Document document = shipped(path);
        if (kind == FileKind::unknown || kind_of(document) == kind) {
            documents.push_back(std::move(document));
        }
    }
}

Community read_community(const fs::path& book, const fs::path& rates, const fs::path& buyers) {
    Community community;
    community.folder = book.parent_path().string();
    for (const char* kind : {"programs", "sheets", "places"}) {
        add_documents(rates / kind, FileKind::unknown, community.lending);
    }
    community.desk.book = apps::load_price_book(book.string());
    Findings findings;
    community.desk.lending = read_lending(community.lending, findings);
    if (!findings.none()) throw Refused(std::move(findings));
    add_documents(buyers, FileKind::inquiry, community.inquiries);
    return community;
}

} // namespace

const std::vector<Seed>& files_ending_in(std::string_view ending) {
    static const std::vector<Seed> all = all_files();
    const auto ends = [](std::string_view wanted) {
        std::vector<Seed> files;
        std::copy_if(all.begin(), all.end(), std::back_inserter(files),
                     [&](const Seed& file) { return fs::path(file.name).extension() == wanted; });
        return files;
    };
    static const std::vector<Seed> json = ends(".json");
    static const std::vector<Seed> csv = ends(".csv");
    static const std::vector<Seed> svg = ends(".svg");
    if (ending == ".svg") return svg;
    return ending == ".json" ? json : csv;
}

std::vector<Seed> files_of(FileKind kind) {
    std::vector<Seed> files;
    for (const Seed& file : files_ending_in(".json")) {
        Findings findings;
        if (kind_of(document_of(file.bytes, findings)) == kind) files.push_back(file);
    }
    return files;
}

Document document_of(const std::string& bytes, Findings& findings) {
    return parse_json(std::make_shared<const Source>("input", bytes), findings);
}

Community& example() {
    const fs::path root = QUOIN_SOURCE_DIR;
    const fs::path folder = root / "examples/oxbarrow-meadow";
    static Community community =
        read_community(folder / "pricebook.json", root / "rates", folder / "buyers");
    return community;
}

Community& small() {
    const fs::path data = fs::path(QUOIN_SOURCE_DIR) / "tests/golden/data";
    static Community community = read_community(data / "book.json", data / "rates", data);
    return community;
}

Document data_of(const std::string& bytes, Findings& findings) {
    Document document = document_of(bytes, findings);
    choose_texts(document, Language::english, findings);
    return document;
}

void must_be_json(const std::string& text, const char* what) {
    if (!nlohmann::json::accept(text)) throw Find(std::string(what) + ": not JSON");
}

void render(const Findings& findings) {
    if (text_of(findings).empty() && !findings.none()) throw Find("a problem without words");
    must_be_json(json_text_of(findings), "problems");
}

} // namespace quoin::fuzz
