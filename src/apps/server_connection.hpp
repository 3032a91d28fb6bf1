// One connection, with time limits for a whole request and a whole response.
//
// The library's own stream limits each read; somebody who sends one byte at a time could hold a
// thread for hours. Here the clock runs from a request's first byte to its last.
#pragma once

#include <array>
#include <atomic>
#include <chrono>

#include <httplib.h>

#include "server_crowd.hpp"

namespace quoin::apps {

class Connection final : public httplib::Stream {
  public:
    using Clock = std::chrono::steady_clock;
    static constexpr int idle_seconds = 15; ///< between two requests

    /// Takes the socket over. Once `stopping` is set, what is under way gets little more time.
    Connection(socket_t socket, const std::atomic<bool>& stopping);
    ~Connection() override;
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// Waits for the first byte of a next request. False: none came, or it is to make room for
    /// others, which `making_room` then says.
    [[nodiscard]] bool next_request(Crowd& crowd, bool& making_room);

    /// Whether the last response was a refusal; what is left of its request must not be read on.
    [[nodiscard]] bool refused() const { return refused_; }

    /// Whether the client still waits for a response: not closed, and the server not stopping. A
    /// look costs a system call.
    [[nodiscard]] bool is_awaited() const;

    [[nodiscard]] bool is_readable() const override;
    [[nodiscard]] bool is_writable() const override;
    ssize_t read(char* to, std::size_t size) override;
    ssize_t write(const char* from, std::size_t size) override;
    void get_remote_ip_and_port(std::string& ip, int& port) const override;
    void get_local_ip_and_port(std::string& ip, int& port) const override;
    [[nodiscard]] socket_t socket() const override { return socket_; }

  private:
    [[nodiscard]] bool wait(short events, Clock::time_point until) const;
    void discard_rest();

    socket_t socket_;
    const std::atomic<bool>* stopping_;
    Clock::time_point read_until_;
    Clock::time_point write_until_;
    bool refused_ = false;
    bool responding_ = false;
    std::array<char, 16 * 1024> buffer_{};
    std::size_t begin_ = 0; ///< of what was received and not yet read
    std::size_t end_ = 0;
};

} // namespace quoin::apps
