// Requests over the network and their replies: who may ask, the page and its files, and for all
// else the engine. Unchanging once made, so that every thread may answer through it.
#pragma once

#include <cstdint>
#include <functional>
#include <string>

#include "../wire/engine.hpp"
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

    [[nodiscard]] const Cases& cases() const { return engine_.cases(); }

    /// The edge of one request, as the engine has it.
    void answer(HttpResponse& response, const std::function<void()>& work) const {
        engine_.answer(response, work);
    }

    void count_fault() const { engine_.count_fault(); }
    [[nodiscard]] std::int64_t faults() const { return engine_.faults(); }

  private:
    [[nodiscard]] bool route(const HttpRequest& request, const Access& access,
                             HttpResponse& response) const;
    void get(const HttpRequest& request, HttpResponse& response) const;

    Engine engine_;
    std::string openapi_;
};

/// What a request may carry, in bytes: far above any inquiry.
inline constexpr std::size_t largest_body = 1024U * 1024;

/// Sent with every response.
[[nodiscard]] Headers safety_headers();

} // namespace quoin::apps
