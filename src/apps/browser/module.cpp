// The engine as a module for a browser: files are handed to it, then it answers what the local
// server answers. quoin.mjs makes functions of JavaScript of what is exported here.
//
// Nothing ends long work from within: who waits no longer ends the worker that the module runs in.
#include <optional>

#include <quoin/exact/broken.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/text/problems.hpp>

#include "../wire/engine.hpp"
#include "../wire/query.hpp"
#include "../wire/replies.hpp"
#include "held_files.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

constexpr const char* cases_folder = "examples";
constexpr const char* rates_folder_held = "rates";

std::optional<Engine> engine;
HttpResponse response; // to what was asked last

void make_engine(std::string_view today) {
    const auto day = Date::parse(today);
    ensure(day.has_value(), "a day is told as 2026-11-28");
    Findings left_out;
    engine.emplace(Cases(cases_folder, rates_folder_held, *day, left_out), nullptr);
    reply(response, json_text_of(left_out, catalogue_in(response.language)));
}

HttpResponse begun(std::string_view language) {
    HttpRequest request;
    request.headers.emplace("Accept-Language", language);
    return {request.language()};
}

} // namespace

extern "C" {

void hold(const char* path, const char* bytes, std::size_t size) {
    hold_file(path, std::string(bytes, size));
}

/// The price books under "examples/" with the lending data under "rates/". Its response tells what
/// was left out, or why there is nothing to answer about.
void open_cases(const char* today, const char* language) {
    response = begun(language);
    try {
        make_engine(today);
    } catch (const Refused& refused) {
        refuse(response, 422, refused.findings());
    } catch (...) {
        refuse(response, 500, problems::http_fault());
    }
}

void reply_to(const char* method, const char* address, const char* language, const char* body,
              std::size_t size) {
    response = begun(language);
    if (!engine) return refuse(response, 404, problems::http_path_unknown());
    const HttpRequest request{
        method, path_in(address), given_in(address), {}, std::string(body, size)};
    Routed routed = Routed::replied;
    engine->answer(response, [&] { routed = engine->route(request, response, false); });
    if (routed == Routed::question) engine->ask(request, response, [] { return true; });
}

int reply_status() { return response.status; }
const char* reply_type() { return response.type.data(); }
std::size_t reply_type_size() { return response.type.size(); }
const char* reply_bytes() { return response.body.data(); }
std::size_t reply_size() { return response.body.size(); }

} // extern "C"
