// The table of what may go home knows every member that the files may have, and stays complete.
#include <shown.hpp>

#include <fstream>
#include <set>

#include <nlohmann/json.hpp>

#include "apps/take_home/what_goes.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

using Json = nlohmann::json;
using Names = std::set<std::string>;

/// What stays, whatever file it is in: nobody but the desk is to read it.
const Names stay_everywhere = {"comment", "office_note"};
/// What stays of a file, with the reason.
const Names stay = {
    "inquiry/prepared_by", // the agent's line
    "pricebook/lots/csv",  // a name on the desk's machine; the list goes under one of its own
    "program/rules_of",    // the rules of the other program are written into this one
};

/// "pricebook/options/levels/price/*" of every member that a schema knows; "*" is any name. What is
/// said in several languages counts as one text.
class Known {
  public:
    Known(const std::string& file, Names& names) : file_(file), names_(names) {
        std::ifstream in(QUOIN_SOURCE_DIR "/schemas/" + file + ".schema.json");
        schema_ = Json::parse(in);
        walk(schema_, file_, {});
    }

  private:
    void walk(const Json& part, const std::string& path, std::vector<std::string> above) {
        if (!part.is_object()) return;
        if (part.contains("$ref")) follow(part["$ref"], path, std::move(above));
        const Json properties = part.value("properties", Json::object());
        for (const auto& [name, inner] : properties.items()) {
            if (inner != Json(false)) member(name, inner, path, above);
        }
        const Json patterns = part.value("patternProperties", Json::object());
        for (const auto& [name, inner] : patterns.items()) {
            member("*", inner, path, above);
        }
        if (part.contains("items")) walk(part["items"], path, above);
        for (const char* several : {"anyOf", "oneOf", "allOf"}) {
            const Json parts = part.value(several, Json::array());
            for (const Json& one : parts) {
                if (!one.contains("if")) walk(one, path, above);
            }
        }
    }
    void member(const std::string& name, const Json& inner, const std::string& path,
                const std::vector<std::string>& above) {
        if (name == "en" || name == "es" || stay_everywhere.contains(name)) return;
        names_.insert(path + "/" + name);
        walk(inner, path + "/" + name, above);
    }
    void follow(const std::string& ref, const std::string& path, std::vector<std::string> above) {
        const std::string name = ref.substr(ref.rfind('/') + 1);
        if (std::find(above.begin(), above.end(), name) != above.end()) return;
        above.push_back(name);
        walk(schema_["$defs"][name], path, std::move(above));
    }

    std::string file_;
    Names& names_;
    Json schema_;
};

void add(const Members& members, const std::string& path, Names& names) {
    for (const Member& member : members) {
        const std::string name = path + "/" + std::string(member.name);
        names.insert(name);
        add(member.members, name, names);
    }
}

const std::pair<const char*, FileKind> files[] = {
    {"pricebook", FileKind::price_book}, {"inquiry", FileKind::inquiry},
    {"program", FileKind::program},      {"rates", FileKind::rate_sheet},
    {"place", FileKind::place},          {"drawing", FileKind::drawing},
    {"map", FileKind::site_map}};

} // namespace

TEST_CASE("Of every member that a schema knows, it is said whether it may go home") {
    Names known;
    Names said = stay;
    for (const auto& [file, kind] : files) {
        const Known of_file(file, known);
        add(may_go(kind), file, said);
    }
    CHECK(known.size() > 300);
    for (const std::string& name : known) {
        INFO(name << " is neither in what_goes.cpp nor in the list of what stays");
        CHECK(said.contains(name));
    }
    // What stays is known by that name, so that the list holds no stale entry.
    for (const std::string& name : stay) {
        CAPTURE(name);
        CHECK(known.contains(name));
    }
}

TEST_CASE("Nothing in the table may go that is for the desk alone") {
    for (const auto& [file, kind] : files) {
        Names names;
        add(may_go(kind), file, names);
        CHECK_FALSE(names.empty());
        for (const std::string& name : names) {
            CAPTURE(name);
            CHECK_FALSE(stay.contains(name));
            CHECK_FALSE(stay_everywhere.contains(name.substr(name.rfind('/') + 1)));
        }
    }
    CHECK(may_go(FileKind::apr_problem).empty());
    CHECK(may_go(FileKind::unknown).empty());
}

TEST_CASE("Of other plans goes no more than of the buyer's own") {
    Names own;
    Names other;
    for (const Member& member : may_go(FileKind::price_book)) {
        if (member.name == "plans") add(member.members, "", own);
    }
    add(may_go_of_other_plans(), "", other);
    CHECK(other.size() < own.size());
    for (const std::string& name : other) CHECK(own.contains(name));
    for (const char* apart : {"/note", "/style", "/drawing", "/measures", "/elevations/picture"}) {
        CHECK_FALSE(other.contains(apart));
    }
}
