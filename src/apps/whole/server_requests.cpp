// Replying to requests.
#include "server_requests.hpp"

#include <quoin/exact/rounding.hpp>
#include <quoin/render/glossary.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/text/problems.hpp>

#include "media_types.hpp"
#include "page_assets.hpp"
#include "server_given.hpp"
#include "workbook_file.hpp"

namespace quoin::apps {
namespace {

constexpr std::size_t longest_path = 200;
/// A request waits for no longer search than this; what is not proven by then says so.
constexpr const char* served_nodes = "200000";
constexpr std::string_view api = "/api/";

const char* const no_page =
    "<!doctype html>\n<html lang=\"en\"><meta charset=\"utf-8\"><title>quoin</title>\n"
    "<h1>This build of quoin has no page</h1>\n"
    "<p>It was built without one (QUOIN_PAGE=OFF, or no npm at build time). The questions are\n"
    "answered all the same: <a href=\"/api/openapi.json\">/api/openapi.json</a> describes them.\n";

void set_content(HttpResponse& response, std::string_view body, std::string_view type) {
    response.body = body;
    response.type = type;
}

/// What is told in a language says in which.
void set_told(HttpResponse& response, std::string_view body, std::string_view type) {
    response.headers.emplace("Cache-Control", "no-store");
    response.headers.emplace("Content-Language", code_of(response.language));
    set_content(response, body, type);
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

void reply(HttpResponse& response, const std::string& text, std::string_view type = json_type) {
    response.status = 200;
    set_told(response, text, type);
}

/// An inquiry goes in as text, so that every number stays as it was written.
void write(const CaseInquiry& one, JsonWriter& json) {
    json.object([&] {
        json.text("id", one.id);
        json.text("buyer", one.buyer);
        json.key("inquiry");
        json.literal(one.json);
    });
}

void write(const CaseBook& book, Language language, JsonWriter& json) {
    const PriceBook& prices = book.desks[language].book;
    json.object([&] {
        json.text("id", book.id);
        json.text("community", prices.community.name);
        json.text("builder", prices.community.builder);
        json.text("version", prices.version);
        json.text("effective", prices.effective.text());
        json.text("expires", prices.expires.text());
        json.list("inquiries", [&] {
            for (const CaseInquiry& one : book.inquiries) write(one, json);
        });
        json.list("areas", [&] {
            for (const Named& area : prices.areas) json.text(area.id);
        });
        json.list("pictures", [&] {
            for (const CasePicture& one : book.pictures) {
                json.object([&] {
                    json.text("file", one.picture.file);
                    json.text("address", one.address);
                });
            }
        });
        json.key("first");
        json.literal(book.first[language].value_or("null"));
    });
}

void write(const QuestionOption& option, JsonWriter& json) {
    json.object([&] {
        json.text("name", option.name);
        json.text("summary", option.summary);
        json.truth("required", option.is_needed());
        json.truth("repeated", option.is_repeated());
        json.truth("flag", option.kind == QuestionOption::Kind::flag);
    });
}

void write(const Question& question, JsonWriter& json) {
    json.object([&] {
        json.text("name", question.name);
        json.text("summary", question.summary);
        json.text("type", media_type_of(question.forms.front()));
        json.list("options", [&] {
            for (const QuestionOption& option : question.options) {
                if (option.by == QuestionOption::By::anybody) write(option, json);
            }
        });
    });
}

std::string json_of(const Cases& cases, Language language) {
    JsonWriter json;
    json.object([&] {
        json.list("price_books", [&] {
            for (const CaseBook& book : cases.books()) write(book, language, json);
        });
        json.list("questions", [&] {
            for (const Question& question : questions()) write(question, json);
        });
    });
    return json.take() + "\n";
}

EachLanguage<std::string> json_of(const Cases& cases) {
    EachLanguage<std::string> told;
    for (const auto& language : codes<Language>) {
        told[language.meaning] = json_of(cases, language.meaning);
    }
    return told;
}

void reply_asset(const Asset& asset, const HttpRequest& request, HttpResponse& response) {
    const std::string tag = "\"" + std::string(asset.tag) + "\"";
    response.headers.emplace("ETag", tag);
    response.headers.emplace("Cache-Control",
                             asset.forever ? "public, max-age=31536000, immutable" : "no-cache");
    response.headers.emplace("Vary", "Accept-Encoding");
    if (request.header("If-None-Match") == tag) {
        response.status = 304;
        return;
    }
    const bool gzip = !asset.gzip.empty() && request.takes_gzip;
    if (gzip) response.headers.emplace("Content-Encoding", "gzip");
    const std::string_view bytes = gzip ? asset.gzip : asset.bytes;
    response.status = 200;
    set_content(response, bytes, asset.type);
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

/// Looks now and then whether a client waits, and how long the work has taken.
class Patience {
  public:
    explicit Patience(const std::function<bool()>& waiting) : waiting_(waiting) {}

    bool lasts() {
        const auto now = Clock::now();
        if (over_ || now - looked_ < glance) return !over_;
        looked_ = now;
        over_ = now - began_ > served_limit || !waiting_();
        return !over_;
    }

  private:
    using Clock = std::chrono::steady_clock;
    static constexpr std::chrono::milliseconds glance{50};

    const std::function<bool()>& waiting_;
    Clock::time_point began_ = Clock::now();
    Clock::time_point looked_;
    bool over_ = false;
};

std::vector<std::string> question_names() {
    std::vector<std::string> names;
    for (const Question& question : questions()) names.emplace_back(question.name);
    return names;
}

std::string bytes_of(const Told& told) {
    const auto* book = std::get_if<Workbook>(&told);
    return book != nullptr ? xlsx_bytes(*book) : std::get<std::string>(told);
}

/// The question a path asks, or nullptr.
const Question* question_of(const std::string& path) {
    return path.rfind(api, 0) == 0 ? find_question(path.substr(api.size())) : nullptr;
}

bool is_fixed(const std::string& path) {
    for (const char* fixed : {"/", "/api/cases", "/api/openapi.json", "/api/terms"}) {
        if (path == fixed) return true;
    }
    for (const Asset& asset : page_assets()) {
        if (asset.path == path) return true;
    }
    return false;
}

void refuse_path(const std::string& path, HttpResponse& response) {
    const std::string name = path.rfind(api, 0) == 0 ? path.substr(api.size()) : "";
    const bool word =
        !name.empty() && name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string::npos;
    if (!word) return refuse(response, 404, problems::http_path_unknown());
    const std::vector<std::string> names = question_names();
    refuse(response, 404, problems::http_question_unknown(name, nearest(name, names), names));
}

void refuse_method(const std::string& path, const char* allowed, HttpResponse& response) {
    response.headers.emplace("Allow", allowed);
    refuse(response, 405, problems::http_method(path, allowed));
}

} // namespace

Requests::Requests(Cases cases, std::string openapi)
    : cases_(std::move(cases)), cases_json_(json_of(cases_)), openapi_(std::move(openapi)) {}

void Requests::answer(HttpResponse& response, const std::function<void()>& work) const {
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

bool Requests::reply_at_once(const HttpRequest& request, const Access& access,
                             HttpResponse& response) const {
    bool replied = true;
    answer(response, [&] { replied = route(request, access, response); });
    return replied;
}

bool Requests::route(const HttpRequest& request, const Access& access,
                     HttpResponse& response) const {
    if (auto no = denied(request, access)) {
        refuse(response, no->status, std::move(no->problem));
        return true;
    }
    const bool reads = request.method == "GET" || request.method == "HEAD";
    if (request.path.size() > longest_path) {
        refuse(response, 404, problems::http_path_unknown());
    } else if (question_of(request.path) != nullptr) {
        if (request.method == "POST") return false;
        refuse_method(request.path, "POST", response);
    } else if (!is_fixed(request.path) && cases_.picture_at(request.path) == nullptr) {
        refuse_path(request.path, response);
    } else if (!reads) {
        refuse_method(request.path, "GET", response);
    } else {
        get(request, response);
    }
    return true;
}

void Requests::get(const HttpRequest& request, HttpResponse& response) const {
    if (request.path == "/api/cases") return reply(response, cases_json_[response.language]);
    if (request.path == "/api/openapi.json") return reply(response, openapi_);
    if (request.path == "/api/terms") {
        return reply(response, glossary_json(catalogue_in(response.language)));
    }
    if (const CasePicture* one = cases_.picture_at(request.path)) {
        return reply_picture(*one, request, response);
    }
    for (const Asset& asset : page_assets()) {
        if (asset.path == request.path) return reply_asset(asset, request, response);
    }
    response.status = 200;
    response.headers.emplace("Cache-Control", "no-cache");
    set_content(response, no_page, html_type);
}

void Requests::ask(const HttpRequest& request, HttpResponse& response,
                   const std::function<bool()>& waiting) const {
    Patience patience(waiting);
    answer(response, [&] {
        const Question& question = *question_of(request.path);
        Given given = request.given;
        check_given(question, given);
        if (question.name == "fit") given.emplace("nodes", served_nodes);
        const Desk* desk = nullptr;
        const Inquiry inquiry = cases_.read(request.body, response.language, desk);
        const Watch watch = [&] { return patience.lasts(); };
        const Form form = question.forms.front();
        const Told told = question.told({*desk,
                                         inquiry,
                                         given,
                                         &watch,
                                         {},
                                         [&](const auto&) { return watch(); },
                                         response.language},
                                        form);
        reply(response, bytes_of(told), media_type_of(form));
    });
}

void Requests::explain(HttpResponse& response) {
    const int status = response.status;
    refuse(response, status,
           status == 413 ? problems::http_too_large(largest_body) : problems::http_incomplete());
}

Headers safety_headers() {
    return {
        {"Content-Security-Policy",
         "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src "
         "'self'; "
         "connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; "
         "frame-ancestors 'none'"},
        {"X-Content-Type-Options", "nosniff"},
        {"X-Frame-Options", "DENY"},
        {"Referrer-Policy", "no-referrer"},
        {"Cross-Origin-Opener-Policy", "same-origin"},
        {"Cross-Origin-Resource-Policy", "same-origin"},
    };
}

} // namespace quoin::apps
