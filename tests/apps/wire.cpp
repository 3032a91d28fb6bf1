// What stands behind an address, and what an engine answers that makes no workbooks.
#include <shown.hpp>

#include <utility>

#include "apps/wire/engine.hpp"
#include "apps/wire/query.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

using Pairs = std::vector<std::pair<std::string, std::string>>;

Pairs options_in(std::string_view address) {
    const Given given = given_in(address);
    return {given.begin(), given.end()};
}

} // namespace

TEST_CASE("Options behind an address are read each as it was written") {
    CHECK(options_in("/api/quote").empty());
    CHECK(options_in("/api/quote?").empty());
    CHECK(options_in("/api/quote?&&").empty());
    CHECK(options_in("/api/fit?lots&cash=1") == Pairs{{"cash", "1"}, {"lots", ""}});
    CHECK(options_in("/api/adds?option=a&option=b") == Pairs{{"option", "a"}, {"option", "b"}});
    CHECK(options_in("/api/adds?option=can-lights=6") == Pairs{{"option", "can-lights=6"}});
    CHECK(options_in("/a?scenario=FHA%2C+3.5%25%20down") == Pairs{{"scenario", "FHA, 3.5% down"}});
    CHECK(options_in("/a?b=c?d") == Pairs{{"b", "c?d"}});
}

TEST_CASE("A percent sign without two digits stands for itself") {
    const std::pair<const char*, const char*> rows[] = {
        {"%41%4a%4A", "AJJ"}, {"%", "%"},           {"%4", "%4"},           {"%4g", "%4g"},
        {"%-1", "%-1"},       {"%+1", "%+1"},       {"% 1", "% 1"},         {"%%41", "%A"},
        {"%2525", "%25"},     {"%u0041", "%u0041"}, {"%C3%A9", "\xC3\xA9"},
    };
    for (const auto& [written, read] : rows) CHECK(decoded(written, Plus::plus) == read);
    CHECK(decoded("%00", Plus::plus) == std::string(1, '\0'));
    CHECK(decoded("1+1%2B1", Plus::plus) == "1+1+1");
    CHECK(decoded("1+1%2B1", Plus::space) == "1 1+1");
}

TEST_CASE("A path ends where its options begin") {
    CHECK(path_in("/api/quote") == "/api/quote");
    CHECK(path_in("/api/quote?a=/b") == "/api/quote");
    CHECK(path_in("/api/%71uote+?a") == "/api/quote+");
}

TEST_CASE("An engine that makes no workbooks knows no question that is answered with one") {
    Findings left_out;
    const Engine engine(Cases(QUOIN_SOURCE_DIR "/examples", QUOIN_SOURCE_DIR "/rates",
                              *Date::parse("2026-11-24"), left_out),
                        nullptr);
    HttpRequest request;
    request.method = "POST";
    request.path = "/api/workbook";
    HttpResponse response;
    CHECK(engine.route(request, response, false) == Routed::replied);
    CHECK(response.status == 404);
    CHECK(response.body.find("workbook,") == std::string::npos);
    request.path = "/api/recheck";
    CHECK(engine.route(request, response, false) == Routed::question);
    request = {};
    request.method = "GET";
    request.path = "/api/cases";
    response = {};
    CHECK(engine.route(request, response, false) == Routed::replied);
    CHECK(response.body.find("\"name\": \"recheck\"") != std::string::npos);
    CHECK(response.body.find("\"name\": \"workbook\"") == std::string::npos);
    CHECK(engine.route(request, response, true) == Routed::beside);
}
