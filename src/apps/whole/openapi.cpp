// Writing the OpenAPI description.
#include "openapi.hpp"

#include <memory>
#include <vector>

#include <quoin/render/shape.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/text/value.hpp>

#include "../wire/media_types.hpp"

namespace quoin::apps {
namespace {

const char* const about =
    "Answers questions about a new home and its loans on this machine. Figures are estimates: not "
    "a "
    "Loan Estimate, not an approval, not an offer to lend; a licensed loan originator gives those. "
    "Money, rates and percents are text with exact decimals.";

constexpr std::string_view schemas = "#/components/schemas/";

void reference(JsonWriter& json, std::string_view schema) {
    json.object("schema", [&] { json.text("$ref", std::string(schemas) + std::string(schema)); });
}

void content(JsonWriter& json, std::string_view type, const auto& schema) {
    json.object("content", [&] { json.object(type, schema); });
}

void problem_response(JsonWriter& json, std::string_view status, std::string_view what) {
    json.object(status, [&] {
        json.text("description", what);
        content(json, json_type, [&] { reference(json, "Problems"); });
    });
}

void parameter(JsonWriter& json, const QuestionOption& option) {
    json.object([&] {
        json.text("name", option.name);
        json.text("in", "query");
        json.text("description", option.summary);
        json.truth("required", option.is_needed());
        json.object("schema", [&] {
            json.text("type", option.is_repeated() ? "array" : "string");
            if (option.is_repeated()) json.object("items", [&] { json.text("type", "string"); });
        });
        if (option.is_repeated()) json.truth("explode", true);
        if (option.kind == QuestionOption::Kind::flag) json.truth("allowEmptyValue", true);
    });
}

void language_parameter(JsonWriter& json) {
    json.object([&] {
        json.text("name", "Accept-Language");
        json.text("in", "header");
        json.text("description", "the language that the answer is told in (RFC 9110, 12.5.4)");
        json.truth("required", false);
        json.object("schema", [&] {
            json.text("type", "string");
            json.text("default", code_of(Language::english));
        });
    });
}

/// What a question gives; an answer by the name of its shape.
void answer_response(JsonWriter& json, const Question& question) {
    const std::string_view type = media_type_of(question.forms.front());
    const std::string command =
        "quoin " + std::string(question.name) + (type == json_type ? " --json" : "");
    json.object("200", [&] {
        json.text("description", "What " + command + " gives for the inquiry");
        content(json, type, [&] {
            if (question.shape != nullptr) return reference(json, question.shape().name);
            json.object("schema", [&] { json.text("type", "string"); });
        });
    });
}

void operation(JsonWriter& json, const Question& question) {
    json.text("operationId", question.name);
    json.text("summary", question.summary);
    json.list("parameters", [&] {
        for (const QuestionOption& option : question.options) {
            if (option.by == QuestionOption::By::anybody) parameter(json, option);
        }
        language_parameter(json);
    });
    json.object("requestBody", [&] {
        json.truth("required", true);
        content(json, json_type, [&] { reference(json, "Inquiry"); });
    });
    json.object("responses", [&] {
        answer_response(json, question);
        problem_response(json, "422", "Something is wrong with the inquiry or an option");
        problem_response(json, "503", "It takes longer than a request may");
        problem_response(json, "4XX", "The request is none that can be answered");
    });
}

void get_path(JsonWriter& json, const std::string& id, std::string_view path,
              std::string_view summary, std::string_view what) {
    json.object(path, [&] {
        json.object("get", [&] {
            json.text("operationId", id);
            json.text("summary", summary);
            json.object("responses", [&] {
                json.object("200", [&] {
                    json.text("description", what);
                    content(json, json_type,
                            [&] { json.object("schema", [&] { json.text("type", "object"); }); });
                });
            });
        });
    });
}

void pictures_path_of(JsonWriter& json) {
    json.object(std::string(pictures_path) + "{picture}", [&] {
        json.object("get", [&] {
            json.text("operationId", "picture");
            json.text("summary", "A picture of a price book, at the address that /api/cases gives");
            json.list("parameters", [&] {
                json.object([&] {
                    json.text("name", "picture");
                    json.text("in", "path");
                    json.truth("required", true);
                    json.object("schema", [&] { json.text("type", "string"); });
                });
            });
            json.object("responses", [&] {
                json.object("200", [&] {
                    json.text("description", "PNG, JPEG, WebP or SVG");
                    content(json, "image/*", [&] { json.object("schema", [] {}); });
                });
                problem_response(json, "4XX", "There is none, or the request is refused");
            });
        });
    });
}

void paths(JsonWriter& json) {
    get_path(json, "cases", "/api/cases", "The price books and inquiries to start from",
             "Price books, inquiries, questions");
    get_path(json, "terms", "/api/terms", "What the words mean",
             "Each term with the sentence that explains it and its source");
    get_path(json, "openapi", "/api/openapi.json", "This description", "An OpenAPI 3.1 document");
    pictures_path_of(json);
    for (const Question& question : questions()) {
        json.object("/api/" + std::string(question.name),
                    [&] { json.object("post", [&] { operation(json, question); }); });
    }
}

/// The thing of the price book that a problem is about, where it is about one.
void about_schema(JsonWriter& json) {
    json.text("type", "object");
    json.list("required", [&] {
        for (const char* name : {"what", "id", "found"}) json.text(name);
    });
    json.object("properties", [&] {
        json.object("what", [&] {
            json.list("enum", [&] {
                for (const auto& each : codes<Subject>) json.text(each.code);
            });
        });
        for (const char* name : {"id", "found"}) {
            json.object(name, [&] { json.text("type", "string"); });
        }
    });
}

void problem_schema(JsonWriter& json) {
    json.text("type", "object");
    json.list("required", [&] {
        for (const char* name : {"id", "found", "expected"}) json.text(name);
    });
    json.object("properties", [&] {
        for (const char* name : {"id", "file", "path", "found", "expected", "advice"}) {
            json.object(name, [&] { json.text("type", "string"); });
        }
        for (const char* name : {"line", "column"}) {
            json.object(name, [&] {
                json.text("type", "integer");
                json.number("minimum", 0);
            });
        }
        json.object("about", [&] { about_schema(json); });
    });
}

void problems_schema(JsonWriter& json) {
    json.text("type", "object");
    json.list("required", [&] { json.text("problems"); });
    json.object("properties", [&] {
        json.object("problems", [&] {
            json.text("type", "array");
            json.object("items", [&] { problem_schema(json); });
        });
    });
}

void inquiry_schema(JsonWriter& json, const std::string& text) {
    Findings findings;
    const Document schema =
        parse_json(std::make_shared<const Source>("inquiry.schema.json", text), findings);
    if (findings.none() && schema.root.kind == Value::Kind::object) {
        return write_json(schema.root, json);
    }
    json.object([&] { json.text("type", "object"); });
}

void answer_schemas(JsonWriter& json) {
    std::vector<Shape> answers;
    for (const Question& question : questions()) {
        if (question.shape != nullptr) answers.push_back(question.shape());
    }
    for (const Shape& shape : named_in(answers)) {
        json.key(shape.name);
        write_schema(shape, schemas, json);
    }
}

void components(JsonWriter& json, const std::string& inquiry) {
    json.object("securitySchemes", [&] {
        json.object("code", [&] {
            json.text("type", "apiKey");
            json.text("in", "header");
            json.text("name", "Quoin-Code");
            json.text("description", "Needed where quoin serve listens beyond this machine");
        });
    });
    json.object("schemas", [&] {
        json.key("Inquiry");
        inquiry_schema(json, inquiry);
        json.object("Problems", [&] { problems_schema(json); });
        answer_schemas(json);
    });
}

void security(JsonWriter& json) {
    json.list("security", [&] {
        json.object([] {});
        json.object([&] { json.list("code", [] {}); });
    });
}

} // namespace

std::string openapi_text(const std::string& inquiry) {
    JsonWriter json;
    json.object([&] {
        json.text("openapi", "3.1.0");
        json.object("info", [&] {
            json.text("title", "quoin");
            json.text("version", QUOIN_VERSION);
            json.text("description", about);
        });
        json.list("servers", [&] { json.object([&] { json.text("url", "/"); }); });
        security(json);
        json.object("paths", [&] { paths(json); });
        json.object("components", [&] { components(json, inquiry); });
    });
    return json.take() + "\n";
}

} // namespace quoin::apps
