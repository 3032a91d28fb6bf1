// Replying to requests over the network.
#include "server_requests.hpp"

#include <quoin/text/problems.hpp>

#include "../wire/replies.hpp"
#include "home_reply.hpp"
#include "page_assets.hpp"
#include "workbook_file.hpp"

namespace quoin::apps {
namespace {

constexpr std::string_view openapi_path = "/api/openapi.json";

const char* const no_page =
    "<!doctype html>\n<html lang=\"en\"><meta charset=\"utf-8\"><title>quoin</title>\n"
    "<h1>This build of quoin has no page</h1>\n"
    "<p>It was built without one (QUOIN_PAGE=OFF, or no npm at build time). The questions are\n"
    "answered all the same: <a href=\"/api/openapi.json\">/api/openapi.json</a> describes them.\n";

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

/// Whether it is the server's own: the page, a file of it, or the description.
bool is_beside(const std::string& path) {
    if (path == "/" || path == openapi_path) return true;
    for (const Asset& asset : page_assets()) {
        if (asset.path == path) return true;
    }
    return false;
}

} // namespace

Requests::Requests(Cases cases, std::string openapi)
    : engine_(std::move(cases), xlsx_bytes), openapi_(std::move(openapi)) {}

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
    if (request.path == take_home_path) {
        if (request.method == "POST") return false;
        response.headers.emplace("Allow", "POST");
        refuse(response, 405, problems::http_method(request.path, "POST"));
        return true;
    }
    const Routed routed = engine_.route(request, response, is_beside(request.path));
    if (routed == Routed::beside) get(request, response);
    return routed != Routed::question;
}

void Requests::get(const HttpRequest& request, HttpResponse& response) const {
    if (request.path == openapi_path) return reply(response, openapi_);
    for (const Asset& asset : page_assets()) {
        if (asset.path == request.path) return reply_asset(asset, request, response);
    }
    response.status = 200;
    response.headers.emplace("Cache-Control", "no-cache");
    set_content(response, no_page, html_type);
}

void Requests::ask(const HttpRequest& request, HttpResponse& response,
                   const std::function<bool()>& waiting) const {
    if (request.path == take_home_path) {
        return answer(response, [&] { reply_home_file(request, cases(), response); });
    }
    Patience patience(waiting);
    engine_.ask(request, response, [&] { return patience.lasts(); });
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
