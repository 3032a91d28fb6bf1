// The local server: listeners on one port that answer through one set of requests.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "listener.hpp"

namespace quoin::apps {

class Server {
  public:
    /// Listens on an address: 0 takes any free port. Where no address is given, on 127.0.0.1 and,
    /// where there is one, ::1. Throws Refused where it cannot.
    Server(const Requests& requests, const std::string& address, int port);
    ~Server();
    Server(const Server&) = delete;
    Server& operator=(const Server&) = delete;

    /// "http://127.0.0.1:8571/"
    [[nodiscard]] const std::string& url() const { return url_; }
    /// Empty where none is needed.
    [[nodiscard]] const std::string& code() const { return code_; }

    /// Starts to answer, in threads of its own.
    void start();
    /// Takes no more requests, lets those under way end, and returns when all is still.
    void stop();

  private:
    void listen(const Requests& requests, const std::string& address, int port);

    Reception reception_;
    std::vector<std::unique_ptr<Listener>> listeners_;
    std::string url_;
    std::string code_;
};

} // namespace quoin::apps
