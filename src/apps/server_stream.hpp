// A request that is all there, as the stream that the library reads, and the response it writes.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include <httplib.h>

namespace quoin::apps {

class RequestStream final : public httplib::Stream {
  public:
    RequestStream(std::string_view request, std::function<bool()> awaited)
        : rest_(request), awaited_(std::move(awaited)) {}

    /// Whether the client still waits for the response.
    [[nodiscard]] bool is_awaited() const { return awaited_(); }
    /// Whether the response is a refusal.
    [[nodiscard]] bool refused() const;
    /// Whether the client was told to go on with its body; such an interim response is left out.
    [[nodiscard]] bool told_to_go_on() const { return told_to_go_on_; }
    [[nodiscard]] std::string take_response() { return std::move(response_); }

    [[nodiscard]] bool is_readable() const override { return true; }
    [[nodiscard]] bool is_writable() const override { return true; }
    ssize_t read(char* to, std::size_t size) override;
    ssize_t write(const char* from, std::size_t size) override;
    // Nothing is kept of who asks.
    void get_remote_ip_and_port(std::string& ip, int& port) const override;
    void get_local_ip_and_port(std::string& ip, int& port) const override;
    [[nodiscard]] socket_t socket() const override { return INVALID_SOCKET; }

  private:
    std::string_view rest_;
    std::string response_;
    std::function<bool()> awaited_;
    bool told_to_go_on_ = false;
};

} // namespace quoin::apps
