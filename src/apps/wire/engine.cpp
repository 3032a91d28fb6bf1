// Routing requests, and answering them.
#include "engine.hpp"

#include <quoin/exact/rounding.hpp>
#include <quoin/render/glossary.hpp>
#include <quoin/text/problems.hpp>

#include "cases_json.hpp"
#include "option_check.hpp"
#include "replies.hpp"

namespace quoin::apps {
namespace {

constexpr std::size_t longest_path = 200;
/// A request waits for no longer search than this; what is not proven by then says so.
constexpr const char* served_nodes = "200000";
constexpr std::string_view api = "/api/";
constexpr std::string_view cases_path = "/api/cases";
constexpr std::string_view terms_path = "/api/terms";

std::vector<const Question*> those_answered(bool with_workbooks) {
    std::vector<const Question*> asked;
    for (const Question& question : questions()) {
        const bool is_workbook = question.forms.front() == Form::workbook;
        if (with_workbooks || !is_workbook) asked.push_back(&question);
    }
    return asked;
}

/// Alone in its tab it may do nothing, whatever it is. It is for those who may ask: no cache that
/// others share keeps it.
void reply_picture(const CasePicture& one, const HttpRequest& request, HttpResponse& response) {
    const std::string tag = "\"" + one.address.substr(pictures_path.size()) + "\"";
    response.headers.emplace("ETag", tag);
    response.headers.emplace("Cache-Control", "private, max-age=31536000, immutable");
    response.headers.emplace("Content-Security-Policy",
                             "default-src 'none'; style-src 'unsafe-inline'; sandbox");
    if (request.header("If-None-Match") == tag) {
        response.status = 304;
        return;
    }
    response.status = 200;
    set_content(response, one.picture.source->text(), media_type_of(one.picture.kind));
}

void refuse_method(const std::string& path, const char* allowed, HttpResponse& response) {
    response.headers.emplace("Allow", allowed);
    refuse(response, 405, problems::http_method(path, allowed));
}

} // namespace

Engine::Engine(Cases cases, WorkbookBytes workbook_bytes)
    : cases_(std::move(cases)), workbook_bytes_(workbook_bytes),
      asked_(those_answered(workbook_bytes != nullptr)), cases_json_(json_of(cases_, asked_)) {}

void Engine::answer(HttpResponse& response, const std::function<void()>& work) const {
    try {
        work();
    } catch (const Refused& refused) {
        refuse(response, 422, refused.findings());
    } catch (const Stopped&) {
        refuse(response, 503, problems::http_took_too_long(served_limit.count()));
    } catch (const Overflow&) {
        refuse(response, 422, problems::http_figures_too_large());
    } catch (...) {
        count_fault();
        refuse(response, 500, problems::http_fault());
    }
}

/// The question a path asks, or nullptr.
const Question* Engine::question_of(std::string_view path) const {
    if (path.substr(0, api.size()) != api) return nullptr;
    for (const Question* question : asked_) {
        if (question->name == path.substr(api.size())) return question;
    }
    return nullptr;
}

bool Engine::has(const std::string& path) const {
    return path == cases_path || path == terms_path || cases_.picture_at(path) != nullptr;
}

Routed Engine::route(const HttpRequest& request, HttpResponse& response, bool beside) const {
    const bool reads = request.method == "GET" || request.method == "HEAD";
    if (request.path.size() > longest_path) {
        refuse(response, 404, problems::http_path_unknown());
    } else if (question_of(request.path) != nullptr) {
        if (request.method == "POST") return Routed::question;
        refuse_method(request.path, "POST", response);
    } else if (!beside && !has(request.path)) {
        refuse_path(request.path, response);
    } else if (!reads) {
        refuse_method(request.path, "GET", response);
    } else if (beside) {
        return Routed::beside;
    } else {
        get(request, response);
    }
    return Routed::replied;
}

void Engine::refuse_path(const std::string& path, HttpResponse& response) const {
    const std::string name = path.rfind(api, 0) == 0 ? path.substr(api.size()) : "";
    const bool word =
        !name.empty() && name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string::npos;
    if (!word) return refuse(response, 404, problems::http_path_unknown());
    std::vector<std::string> names;
    for (const Question* question : asked_) names.emplace_back(question->name);
    refuse(response, 404, problems::http_question_unknown(name, nearest(name, names), names));
}

void Engine::get(const HttpRequest& request, HttpResponse& response) const {
    if (request.path == cases_path) return reply(response, cases_json_[response.language]);
    if (const CasePicture* one = cases_.picture_at(request.path)) {
        return reply_picture(*one, request, response);
    }
    reply(response, glossary_json(catalogue_in(response.language)));
}

void Engine::ask(const HttpRequest& request, HttpResponse& response, const Watch& watch) const {
    answer(response, [&] {
        const Question& question = *question_of(request.path);
        Given given = request.given;
        check_given(question, given);
        if (question.name == "fit") given.emplace("nodes", served_nodes);
        const Desk* desk = nullptr;
        const Inquiry inquiry = cases_.read(request.body, response.language, desk);
        const Form form = question.forms.front();
        const Told told = question.told({*desk,
                                         inquiry,
                                         given,
                                         &watch,
                                         {},
                                         [&](const auto&) { return watch(); },
                                         response.language},
                                        form);
        const auto* book = std::get_if<Workbook>(&told);
        reply(response, book != nullptr ? workbook_bytes_(*book) : std::get<std::string>(told),
              media_type_of(form));
    });
}

} // namespace quoin::apps
