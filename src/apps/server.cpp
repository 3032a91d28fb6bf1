// Listening, answering through the library, and stopping.
#include "server.hpp"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <thread>

#include <fcntl.h>
#include <unistd.h>

#include <fmt/format.h>

#include <quoin/text/problems.hpp>

#include "server_stream.hpp"
#include <quoin/inquiry/asking.hpp>

namespace quoin::apps {
namespace {

/// Connections that wait to be let in. The library asks for 5, and a page opens six at once.
constexpr int backlog = 1024;

/// The request that this thread answers: the library does not hand its stream to the handlers.
thread_local const RequestStream* answering = nullptr;

/// Where this thread only asks whether a request is wanted: the answer. Else null.
thread_local bool* wanted = nullptr;

/// The library shares a port with every other process that asks to; we want to know it is ours.
void only_ours(socket_t socket) {
    const int yes = 1;
    setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes);
}

/// Answers are not compressed on the way to the same machine, nor sent in parts.
void plain(httplib::Request& request) {
    const bool gzip = request.get_header_value("Accept-Encoding").find("gzip") != std::string::npos;
    request.headers.erase("Accept-Encoding");
    request.headers.erase(takes_gzip);
    if (gzip) request.set_header(takes_gzip, "1");
    request.headers.erase("Range");
    request.ranges.clear();
}

} // namespace

class Listener final : public httplib::Server, public Door {
  public:
    Listener(const Requests& requests, const Reception& reception)
        : requests_(&requests), reception_(&reception) {
        set_socket_options(only_ours);
        set_keep_alive_max_count(1'000'000); // said to the client; the reception decides
        set_keep_alive_timeout(Reception::idle_seconds);
        set_payload_max_length(largest_body);
        set_default_headers(safety_headers());
        set_pre_routing_handler([this](const auto& request, auto& response) {
            const bool replied = requests_->reply_at_once(request, access_, response);
            if (wanted != nullptr) *wanted = !replied;
            return replied || wanted != nullptr ? HandlerResponse::Handled
                                                : HandlerResponse::Unhandled;
        });
        Post("/api/[a-z]+", [this](const httplib::Request& request, httplib::Response& response) {
            requests_->ask(request, response, [] { return answering->is_awaited(); });
        });
        set_error_handler([](const httplib::Request&, httplib::Response& response) {
            Requests::explain(response);
        });
    }
    ~Listener() override {
        if (svr_sock_ != INVALID_SOCKET) ::close(svr_sock_);
    }
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;

    /// False with the reason in errno where that address and port cannot be had.
    bool bind(const std::string& address, int port, const std::string& code) {
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

    [[nodiscard]] int port() const { return port_; }
    [[nodiscard]] const std::string& host() const { return access_.hosts.front(); }

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
        wanted = &is_wanted;
        RequestStream stream(head, [] { return true; });
        bool closed = false;
        process(stream, false, closed);
        wanted = nullptr;
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

Server::Server(const Requests& requests, const std::string& address, int port)
    : reception_(std::max(2U, std::thread::hardware_concurrency())) {
    const bool usual = address.empty();
    const std::string first = usual ? "127.0.0.1" : address;
    if (!is_loopback(first)) code_ = new_access_code();
    listen(requests, first, port);
    if (!usual) return;
    auto second = std::make_unique<Listener>(requests, reception_);
    const int same = listeners_.front()->port();
    if (second->bind("::1", same, {})) listeners_.push_back(std::move(second));
}

Server::~Server() { stop(); }

void Server::listen(const Requests& requests, const std::string& address, int port) {
    auto listener = std::make_unique<Listener>(requests, reception_);
    if (!listener->bind(address, port, code_)) {
        const char* why = errno != 0 ? std::strerror(errno) : "no such address";
        refuse(problems::cannot_listen(fmt::format("{} port {}", address, port), why));
    }
    url_ = "http://" + listener->host() + "/";
    listeners_.push_back(std::move(listener));
}

void Server::start() {
    for (const auto& listener : listeners_) reception_.open(*listener);
    reception_.start();
}

void Server::stop() {
    reception_.stop();
    listeners_.clear();
}

} // namespace quoin::apps
