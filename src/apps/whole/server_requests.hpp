// Requests and their replies: the page and its files, the cases, the questions.
//
// Unchanging once made, so that every thread may answer through it. Nothing of a request is kept or
// logged; of a fault of the program, only that there was one.
#pragma once

#include <atomic>
#include <chrono>
#include <cstdint>
#include <functional>
#include <string>

#include "cases.hpp"
#include "http.hpp"
#include "server_guard.hpp"

namespace quoin::apps {

class Requests {
  public:
    Requests(Cases cases, std::string openapi);

    /// Replies to all that needs no body, and refuses what must not go on to `ask`. Called with the
    /// headers alone, so that a body that is refused is never read.
    [[nodiscard]] bool reply_at_once(const HttpRequest& request, const Access& access,
                                     HttpResponse& response) const;

    /// Replies to POST /api/QUESTION. Long work is given up soon after `waiting` says that nobody
    /// waits for it, or after served_limit: then `fit` answers with what it has, another is
    /// refused.
    void ask(const HttpRequest& request, HttpResponse& response,
             const std::function<bool()>& waiting) const;

    /// Gives a body to a refusal that the HTTP library made itself: a body too large, a broken
    /// request.
    static void explain(HttpResponse& response);

    [[nodiscard]] const Cases& cases() const { return cases_; }

    /// The edge of one request: does its work, and whatever that throws becomes a refusal of this
    /// request alone. What is no mistake in its input is a fault, and counted.
    void answer(HttpResponse& response, const std::function<void()>& work) const;

    void count_fault() const { ++faults_; }
    [[nodiscard]] std::int64_t faults() const { return faults_; }

  private:
    [[nodiscard]] bool route(const HttpRequest& request, const Access& access,
                             HttpResponse& response) const;
    void get(const HttpRequest& request, HttpResponse& response) const;

    Cases cases_;
    EachLanguage<std::string> cases_json_;
    std::string openapi_;
    mutable std::atomic<std::int64_t> faults_ = 0;
};

/// What the work on one request may take: no longer than somebody at a desk waits.
inline constexpr std::chrono::seconds served_limit{20};

/// What a request may carry, in bytes: far above any inquiry.
inline constexpr std::size_t largest_body = 1024U * 1024;

/// Sent with every response.
[[nodiscard]] Headers safety_headers();

} // namespace quoin::apps
