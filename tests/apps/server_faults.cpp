// The edge of one request: whatever is thrown behind it is told to its client and counted.
#include <shown.hpp>

#include <new>

#include <quoin/exact/broken.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/text/problems.hpp>

#include "apps/command_line.hpp"
#include "apps/whole/server_requests.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

Requests requests_on_examples() {
    Findings left_out;
    return {Cases(QUOIN_SOURCE_DIR "/examples", QUOIN_SOURCE_DIR "/rates",
                  *Date::parse("2026-11-24"), left_out),
            "{}"};
}

HttpResponse answered(const Requests& requests, const std::function<void()>& work) {
    HttpResponse response;
    requests.answer(response, work);
    return response;
}

} // namespace

TEST_CASE("A fault behind one request is a 500 with its id, and is counted") {
    const Requests requests = requests_on_examples();
    const std::vector<std::function<void()>> faults = {
        [] { throw Broken("Ann's income of 8400"); }, [] { throw std::runtime_error("8400"); },
        [] { throw std::bad_alloc(); }, [] { throw 8400; }};
    for (const auto& fault : faults) {
        const HttpResponse response = answered(requests, fault);
        CHECK(response.status == 500);
        CHECK(response.body.find("\"http-fault\"") != std::string::npos);
        CHECK(response.body.find("8400") == std::string::npos); // nothing of what was asked
    }
    CHECK(requests.faults() == static_cast<std::int64_t>(faults.size()));
}

TEST_CASE("A mistake in the input is no fault") {
    const Requests requests = requests_on_examples();
    const auto mistake = [] {
        Findings findings;
        findings.add(problems::no_means());
        throw Refused(std::move(findings));
    };
    CHECK(answered(requests, mistake).status == 422);
    CHECK(answered(requests, [] { throw Overflow("too large"); }).status == 422);
    CHECK(answered(requests, [] {}).status == -1); // left as the work left it
    CHECK(requests.faults() == 0);
}

TEST_CASE("What is worked on for nobody ends, is told and is no fault") {
    const Requests requests = requests_on_examples();
    HttpRequest request;
    request.path = "/api/afford";
    request.body = requests.cases().books().front().inquiries.front().json;
    HttpResponse response;
    requests.ask(request, response, [] { return false; });
    CHECK(response.status == 503);
    CHECK(response.body.find("\"http-took-too-long\"") != std::string::npos);
    requests.ask(request, response, [] { return true; });
    CHECK(response.status == 200);
    CHECK(requests.faults() == 0);
}

TEST_CASE("On the command line a fault of any kind ends with 3") {
    for (const std::function<Outcome()>& fault : std::vector<std::function<Outcome()>>{
             []() -> Outcome { throw Broken("a promise"); },
             []() -> Outcome { throw std::bad_alloc(); }, []() -> Outcome { throw 7; }}) {
        const Result result = result_of(fault, Typed{});
        CHECK(result.code == apps::fault);
        CHECK(result.output.empty());
        CHECK(result.errors.find("a fault of the program") != std::string::npos);
    }
}
