// A JSON text with a JSON Patch (RFC 6902) applied, to make one mistake at a time.
#pragma once

#include <string>

#include <nlohmann/json.hpp>

namespace quoin::test {

inline std::string patched(const std::string& text, const std::string& patch) {
    using Json = nlohmann::ordered_json;
    return Json::parse(text).patch(Json::parse(patch)).dump(1);
}

/// One operation of a patch.
inline std::string op_replace(const std::string& path, const std::string& value) {
    return R"({"op": "replace", "path": ")" + path + R"(", "value": )" + value + "}";
}
inline std::string op_add(const std::string& path, const std::string& value) {
    return R"({"op": "add", "path": ")" + path + R"(", "value": )" + value + "}";
}
inline std::string op_remove(const std::string& path) {
    return R"({"op": "remove", "path": ")" + path + R"("})";
}

} // namespace quoin::test
