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

#include <httplib.h>

#include "cases.hpp"
#include "server_guard.hpp"

namespace quoin::apps {

class Requests {
  public:
    Requests(Cases cases, std::string openapi);

    /// Replies to all that needs no body, and refuses what must not go on to `ask`. Called with the
    /// headers alone, so that a body that is refused is never read.
    [[nodiscard]] bool reply_at_once(const httplib::Request& request, const Access& access,
                                     httplib::Response& response) const;

    /// Replies to POST /api/QUESTION. Long work is given up soon after `waiting` says that nobody
    /// waits for it, or after served_limit: then `fit` answers with what it has, another is
    /// refused.
    void ask(const httplib::Request& request, httplib::Response& response,
             const std::function<bool()>& waiting) const;

    /// Gives a body to a refusal that the HTTP library made itself: a body too large, a broken
    /// request.
    static void explain(httplib::Response& response);

    [[nodiscard]] const Cases& cases() const { return cases_; }

    /// The edge of one request: does its work, and whatever that throws becomes a refusal of this
    /// request alone. What is no mistake in its input is a fault, and counted.
    void answer(httplib::Response& response, const std::function<void()>& work) const;

    void count_fault() const { ++faults_; }
    [[nodiscard]] std::int64_t faults() const { return faults_; }

  private:
    [[nodiscard]] bool route(const httplib::Request& request, const Access& access,
                             httplib::Response& response) const;
    void get(const httplib::Request& request, httplib::Response& response) const;

    Cases cases_;
    std::string cases_json_;
    std::string openapi_;
    mutable std::atomic<std::int64_t> faults_ = 0;
};

/// What the work on one request may take: no longer than somebody at a desk waits.
inline constexpr std::chrono::seconds served_limit{20};

/// What a request may carry, in bytes: far above any inquiry.
inline constexpr std::size_t largest_body = 1024U * 1024;

/// Whether the client takes gzip; set by the listener, since the library would compress by itself.
inline constexpr const char* takes_gzip = "Quoin-Takes-Gzip";

/// Sent with every response.
[[nodiscard]] httplib::Headers safety_headers();

} // namespace quoin::apps
