// The engine as requests reach it, whoever carries them: the cases, the words explained, pictures,
// and every question.
//
// Unchanging once made, so that every thread may answer through it. Nothing of a request is kept or
// logged; of a fault of the program, only that there was one.
#pragma once

#include <atomic>
#include <chrono>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "cases.hpp"
#include "http.hpp"

namespace quoin::apps {

/// What the work on one request may take: no longer than somebody at a desk waits. Whoever carries
/// requests holds them to it, or lets them be ended in another way.
inline constexpr std::chrono::seconds served_limit{20};

/// Where a request goes on.
enum class Routed {
    replied,  ///< nowhere: its response is whole
    question, ///< to `ask`, with its body
    beside,   ///< to whoever has the path beside the engine
};

class Engine {
  public:
    /// Makes the bytes of a workbook; null: questions that are answered with one are none.
    using WorkbookBytes = std::string (*)(const Workbook&);

    Engine(Cases cases, WorkbookBytes workbook_bytes);

    /// Replies to all that needs no body, and refuses what cannot be asked. `beside`: whether the
    /// carrier has something of its own at this path, which is read.
    [[nodiscard]] Routed route(const HttpRequest& request, HttpResponse& response,
                               bool beside) const;

    /// Answers POST /api/QUESTION, which `route` let through. Long work ends with the watch: then
    /// `fit` answers with what it has, another is refused.
    void ask(const HttpRequest& request, HttpResponse& response, const Watch& watch) const;

    /// The edge of one request: does its work, and whatever that throws becomes a refusal of this
    /// request alone. What is no mistake in its input is a fault, and counted.
    void answer(HttpResponse& response, const std::function<void()>& work) const;

    [[nodiscard]] const Cases& cases() const { return cases_; }

    void count_fault() const { ++faults_; }
    [[nodiscard]] std::int64_t faults() const { return faults_; }

  private:
    [[nodiscard]] const Question* question_of(std::string_view path) const;
    [[nodiscard]] bool has(const std::string& path) const;
    void get(const HttpRequest& request, HttpResponse& response) const;
    void refuse_path(const std::string& path, HttpResponse& response) const;

    Cases cases_;
    WorkbookBytes workbook_bytes_;
    std::vector<const Question*> asked_; ///< those that are answered
    EachLanguage<std::string> cases_json_;
    mutable std::atomic<std::int64_t> faults_ = 0;
};

} // namespace quoin::apps
