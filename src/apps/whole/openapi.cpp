// Writing the OpenAPI description.
#include "openapi.hpp"

#include <nlohmann/json.hpp>

#include "media_types.hpp"

namespace quoin::apps {
namespace {

using Json = nlohmann::ordered_json;

const char* const about =
    "Answers questions about a new home and its loans on this machine. Figures are estimates: not "
    "a "
    "Loan Estimate, not an approval, not an offer to lend; a licensed loan originator gives those. "
    "Money, rates and percents are text with exact decimals.";

Json reference(const char* schema) {
    return {{"$ref", std::string("#/components/schemas/") + schema}};
}

Json content(const Json& schema) { return {{"application/json", {{"schema", schema}}}}; }

Json response(const char* what, const Json& schema) {
    return {{"description", what}, {"content", content(schema)}};
}

Json parameter_of(const QuestionOption& option) {
    const bool repeated = option.is_repeated();
    const Json text = {{"type", "string"}};
    Json parameter = {{"name", option.name},
                      {"in", "query"},
                      {"description", option.summary},
                      {"required", option.is_needed()},
                      {"schema", repeated ? Json{{"type", "array"}, {"items", text}} : text}};
    if (repeated) parameter["explode"] = true;
    if (option.kind == QuestionOption::Kind::flag) parameter["allowEmptyValue"] = true;
    return parameter;
}

Json problem_responses() {
    const Json problems = reference("Problems");
    return {{"422", response("Something is wrong with the inquiry or an option", problems)},
            {"503", response("It takes longer than a request may", problems)},
            {"4XX", response("The request is none that can be answered", problems)}};
}

Json operation_of(const Question& question) {
    Json parameters = Json::array();
    for (const QuestionOption& option : question.options) {
        if (option.by == QuestionOption::By::command) continue;
        parameters.push_back(parameter_of(option));
    }
    const std::string_view type = media_type_of(question.forms.front());
    const bool json = type == json_type;
    const std::string command = "quoin " + std::string(question.name) + (json ? " --json" : "");
    const Json schema = {{"type", json ? "object" : "string"}};
    Json responses = {{"200",
                       {{"description", "What " + command + " gives for the inquiry"},
                        {"content", {{std::string(type), {{"schema", schema}}}}}}}};
    responses.update(problem_responses());
    return {{"operationId", question.name},
            {"summary", question.summary},
            {"parameters", parameters},
            {"requestBody", {{"required", true}, {"content", content(reference("Inquiry"))}}},
            {"responses", responses}};
}

Json get_operation(const char* id, const char* summary, const char* what) {
    return {{"operationId", id},
            {"summary", summary},
            {"responses", {{"200", response(what, {{"type", "object"}})}}}};
}

Json problems_schema() {
    Json members = Json::object();
    for (const char* name : {"id", "file", "path", "found", "expected", "advice"}) {
        members[name] = {{"type", "string"}};
    }
    for (const char* name : {"line", "column"}) {
        members[name] = {{"type", "integer"}, {"minimum", 0}};
    }
    const Json problem = {
        {"type", "object"}, {"required", {"id", "found", "expected"}}, {"properties", members}};
    return {{"type", "object"},
            {"required", {"problems"}},
            {"properties", {{"problems", {{"type", "array"}, {"items", problem}}}}}};
}

Json inquiry_schema_of(const std::string& text) {
    Json schema = Json::parse(text, nullptr, false);
    return schema.is_object() ? schema : Json{{"type", "object"}};
}

Json paths() {
    Json all = Json::object();
    all["/api/cases"]["get"] = get_operation("cases", "The price books and inquiries to start from",
                                             "Price books, inquiries, questions");
    all["/api/openapi.json"]["get"] =
        get_operation("openapi", "This description", "An OpenAPI 3.1 document");
    for (const Question& question : questions()) {
        all["/api/" + std::string(question.name)]["post"] = operation_of(question);
    }
    return all;
}

} // namespace

std::string openapi_text(const std::string& inquiry_schema) {
    const Json code = {{"type", "apiKey"},
                       {"in", "header"},
                       {"name", "Quoin-Code"},
                       {"description", "Needed where quoin serve listens beyond this machine"}};
    const Json document = {
        {"openapi", "3.1.0"},
        {"info", {{"title", "quoin"}, {"version", QUOIN_VERSION}, {"description", about}}},
        {"servers", {{{"url", "/"}}}},
        {"security", {Json::object(), {{"code", Json::array()}}}},
        {"paths", paths()},
        {"components",
         {{"securitySchemes", {{"code", code}}},
          {"schemas",
           {{"Inquiry", inquiry_schema_of(inquiry_schema)}, {"Problems", problems_schema()}}}}}};
    return document.dump(2) + "\n";
}

} // namespace quoin::apps
