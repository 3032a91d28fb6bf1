// Filling in responses.
#include "replies.hpp"

#include <quoin/render/problems.hpp>

namespace quoin::apps {
namespace {

/// What is told in a language says in which.
void set_told(HttpResponse& response, std::string_view body, std::string_view type) {
    response.headers.emplace("Cache-Control", "no-store");
    response.headers.emplace("Content-Language", code_of(response.language));
    set_content(response, body, type);
}

} // namespace

void set_content(HttpResponse& response, std::string_view body, std::string_view type) {
    response.body = body;
    response.type = type;
}

void reply(HttpResponse& response, std::string_view text, std::string_view type) {
    response.status = 200;
    set_told(response, text, type);
}

void refuse(HttpResponse& response, int status, const Findings& findings) {
    response.status = status;
    response.headers.emplace("Connection", "close");
    set_told(response, json_text_of(findings, catalogue_in(response.language)), json_type);
}

void refuse(HttpResponse& response, int status, Problem problem) {
    Findings findings;
    findings.add(std::move(problem));
    refuse(response, status, findings);
}

} // namespace quoin::apps
