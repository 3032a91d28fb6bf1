// Listening through cpp-httplib: the one file that knows it. It reads a request that is all there
// from bytes, and writes its response to bytes; what is in them is the requests' own.
#include "listener.hpp"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <functional>

#include <fcntl.h>
#include <httplib.h>
#include <unistd.h>

#include "../wire/query.hpp"
#include "gzip.hpp"

namespace quoin::apps {
namespace {

/// Whether the client takes gzip; noted here, since the library would compress by itself.
constexpr const char* takes_gzip = "Quoin-Takes-Gzip";

/// A request that is all there, as the stream that the library reads, and the response it writes.
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

bool RequestStream::refused() const {
    return response_.rfind("HTTP/1.1 4", 0) == 0 || response_.rfind("HTTP/1.1 5", 0) == 0;
}

ssize_t RequestStream::read(char* to, std::size_t size) {
    const std::size_t count = std::min(size, rest_.size());
    std::memcpy(to, rest_.data(), count);
    rest_.remove_prefix(count);
    return static_cast<ssize_t>(count);
}

ssize_t RequestStream::write(const char* from, std::size_t size) {
    const std::string_view text(from, size);
    if (response_.empty() && text.rfind("HTTP/1.1 1", 0) == 0) {
        told_to_go_on_ = true;
    } else {
        response_ += text;
    }
    return static_cast<ssize_t>(size);
}

void RequestStream::get_remote_ip_and_port(std::string& ip, int& port) const {
    ip.clear();
    port = 0;
}

void RequestStream::get_local_ip_and_port(std::string& ip, int& port) const {
    ip.clear();
    port = 0;
}

/// Connections that wait to be let in. The library asks for 5, and a page opens six at once.
constexpr int backlog = 1024;

/// The request that this thread answers: the library does not hand its stream to the handlers.
thread_local const RequestStream* answering = nullptr;

/// Where this thread only asks whether a request is wanted: the answer. Else null.
thread_local bool* judging = nullptr;

/// The library shares a port with every other process that asks to; we want to know it is ours.
void only_ours(socket_t socket) {
    const int yes = 1;
    setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes);
}

/// The library neither compresses nor sends in parts.
void plain(httplib::Request& request) {
    const bool gzip = request.get_header_value("Accept-Encoding").find("gzip") != std::string::npos;
    request.headers.erase("Accept-Encoding");
    request.headers.erase(takes_gzip);
    if (gzip) request.set_header(takes_gzip, "1");
    request.headers.erase("Range");
    request.ranges.clear();
}

/// A request as it is known before its body is read.
HttpRequest head_of(const httplib::Request& request) {
    return {request.method,
            request.path,
            {},
            {request.headers.begin(), request.headers.end()},
            {},
            request.has_header(takes_gzip)};
}

void hand_on(HttpResponse made, const HttpRequest& request, httplib::Response& response) {
    compress(made, request);
    response.status = made.status;
    for (const auto& header : made.headers) response.headers.erase(header.first); // as by default
    for (const auto& [name, value] : made.headers) response.set_header(name, value);
    if (made.type.empty()) return;
    response.headers.erase("Content-Type");
    response.set_header("Content-Type", made.type);
    response.body = std::move(made.body);
}

class LibraryListener final : public httplib::Server, public Listener {
  public:
    LibraryListener(const Requests& requests, const Reception& reception)
        : requests_(&requests), reception_(&reception) {
        set_socket_options(only_ours);
        set_keep_alive_max_count(1'000'000); // said to the client; the reception decides
        set_keep_alive_timeout(Reception::idle_seconds);
        set_payload_max_length(largest_body);
        const Headers& always = safety_headers();
        set_default_headers({always.begin(), always.end()});
        set_pre_routing_handler([this](const auto& request, auto& response) {
            const HttpRequest head = head_of(request);
            HttpResponse made{head.language()};
            const bool replied = requests_->reply_at_once(head, access_, made);
            if (replied) hand_on(std::move(made), head, response);
            if (judging != nullptr) *judging = !replied;
            return replied || judging != nullptr ? HandlerResponse::Handled
                                                 : HandlerResponse::Unhandled;
        });
        Post("/api/[a-z-]+", [this](const httplib::Request& request, httplib::Response& response) {
            HttpRequest asked = head_of(request);
            asked.given = given_in(request.target);
            asked.body = request.body;
            HttpResponse made{asked.language()};
            requests_->ask(asked, made, [] { return answering->is_awaited(); });
            hand_on(std::move(made), asked, response);
        });
        set_error_handler([](const httplib::Request& request, httplib::Response& response) {
            if (!response.body.empty()) return;
            const HttpRequest head = head_of(request);
            HttpResponse made{head.language()};
            made.status = response.status;
            Requests::explain(made);
            hand_on(std::move(made), head, response);
        });
    }
    ~LibraryListener() override {
        if (svr_sock_ != INVALID_SOCKET) ::close(svr_sock_);
    }
    LibraryListener(const LibraryListener&) = delete;
    LibraryListener& operator=(const LibraryListener&) = delete;

    bool bind(const std::string& address, int port, const std::string& code) override {
        errno = 0;
        if (port == 0) {
            port = std::max(bind_to_any_port(address), 0);
        } else if (!bind_to_port(address, port)) {
            port = 0;
        }
        if (port != 0) {
            ::listen(svr_sock_, backlog);
            fcntl(svr_sock_, F_SETFL, fcntl(svr_sock_, F_GETFL) | O_NONBLOCK);
        }
        port_ = port;
        access_ = access_for(address, port, code);
        return port != 0;
    }

    [[nodiscard]] int port() const override { return port_; }
    [[nodiscard]] const std::string& host() const override { return access_.hosts.front(); }

    [[nodiscard]] int listening() const override { return svr_sock_; }

    Reply reply(std::string_view request, int socket) override {
        RequestStream stream(
            request, [this, socket] { return !reception_->is_giving_up() && is_there(socket); });
        const bool last = reception_->stopping();
        bool closed = false;
        const bool answered = process(stream, last, closed);
        const bool refused = stream.refused();
        return {stream.take_response(), !answered || last || closed, refused};
    }

    Judged judge(std::string_view head) override {
        bool is_wanted = false;
        judging = &is_wanted;
        RequestStream stream(head, [] { return true; });
        bool closed = false;
        process(stream, false, closed);
        judging = nullptr;
        if (!is_wanted) return Judged::refused;
        return stream.told_to_go_on() ? Judged::wanted_and_told : Judged::wanted;
    }

  private:
    /// False where no response was made.
    bool process(RequestStream& stream, bool last, bool& closed) {
        answering = &stream;
        bool answered = false;
        try {
            answered = process_request(stream, last, closed, plain);
        } catch (...) { // what the library itself throws: nobody else's request falls with it
            requests_->count_fault();
        }
        answering = nullptr;
        return answered;
    }

    const Requests* requests_;
    const Reception* reception_;
    Access access_;
    int port_ = 0;
};

} // namespace

std::unique_ptr<Listener> new_listener(const Requests& requests, const Reception& reception) {
    return std::make_unique<LibraryListener>(requests, reception);
}

} // namespace quoin::apps
