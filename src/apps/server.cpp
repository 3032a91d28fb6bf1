// Listening, threads and stopping.
#include "server.hpp"

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <cstring>
#include <thread>

#include <fmt/format.h>

#include <quoin/text/problems.hpp>

#include "asking.hpp"
#include "server_connection.hpp"
#include "server_crowd.hpp"

namespace quoin::apps {
namespace {

/// A connection has a thread while it is open; the most a page and its neighbours keep open.
constexpr std::size_t threads = 96;

/// Connections that wait to be taken. The library asks for 5, and a page opens six at once.
constexpr int backlog = 256;

/// The connection that this thread answers: the library does not hand it to the handlers.
thread_local const Connection* answering = nullptr;

/// The library's pool, telling the crowd who waits.
class Pool final : public httplib::TaskQueue {
  public:
    Pool(std::size_t size, Crowd& crowd) : pool_(size), crowd_(&crowd) {}

    void enqueue(std::function<void()> connection) override {
        crowd_->came();
        pool_.enqueue([this, connection = std::move(connection)] {
            crowd_->served();
            connection();
        });
    }
    void shutdown() override { pool_.shutdown(); }

  private:
    httplib::ThreadPool pool_;
    Crowd* crowd_;
};

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

class Listener final : public httplib::Server {
  public:
    explicit Listener(const Requests& requests) {
        set_socket_options(only_ours);
        set_tcp_nodelay(true);
        set_keep_alive_max_count(1'000'000); // said to the client; Connection decides
        set_keep_alive_timeout(Connection::idle_seconds);
        set_payload_max_length(largest_body);
        set_default_headers(safety_headers());
        new_task_queue = [this] { return new Pool(threads, crowd_); };
        set_pre_routing_handler([this, &requests](const auto& request, auto& response) {
            return requests.reply_at_once(request, access_, response) ? HandlerResponse::Handled
                                                                      : HandlerResponse::Unhandled;
        });
        Post("/api/[a-z]+",
             [&requests](const httplib::Request& request, httplib::Response& response) {
                 requests.ask(request, response, [] { return answering->is_awaited(); });
             });
        set_error_handler([](const httplib::Request&, httplib::Response& response) {
            Requests::explain(response);
        });
    }

    /// False with the reason in errno where that address and port cannot be had.
    bool bind(const std::string& address, int port, const std::string& code) {
        errno = 0;
        if (port == 0) {
            port = std::max(bind_to_any_port(address), 0);
        } else if (!bind_to_port(address, port)) {
            port = 0;
        }
        if (port != 0) ::listen(svr_sock_, backlog);
        port_ = port;
        access_ = access_for(address, port, code);
        return port != 0;
    }

    [[nodiscard]] int port() const { return port_; }
    [[nodiscard]] const std::string& host() const { return access_.hosts.front(); }

    void start() {
        thread_ = std::thread([this] { listen_after_bind(); });
        while (!is_running()) std::this_thread::yield();
    }

    void end() {
        stopping_ = true;
        stop();
        if (thread_.joinable()) thread_.join();
    }

  private:
    bool process_and_close_socket(socket_t socket) override {
        bool making_room = false;
        {
            Connection connection(socket, stopping_);
            answering = &connection;
            bool closed = false;
            while (!closed && connection.next_request(crowd_, making_room)) {
                making_room = crowd_.wants_room();
                const bool last = stopping_ || making_room;
                if (!process_request(connection, last, closed, plain)) break;
                if (last || connection.refused()) break;
            }
        }
        if (making_room) crowd_.left();
        return true;
    }

    Access access_;
    int port_ = 0;
    std::atomic<bool> stopping_ = false;
    Crowd crowd_;
    std::thread thread_;
};

Server::Server(const Requests& requests, const std::string& address, int port) {
    const bool usual = address.empty();
    const std::string first = usual ? "127.0.0.1" : address;
    if (!is_loopback(first)) code_ = new_access_code();
    listen(requests, first, port);
    if (!usual) return;
    auto second = std::make_unique<Listener>(requests);
    const int same = listeners_.front()->port();
    if (second->bind("::1", same, {})) listeners_.push_back(std::move(second));
}

Server::~Server() { stop(); }

void Server::listen(const Requests& requests, const std::string& address, int port) {
    auto listener = std::make_unique<Listener>(requests);
    if (!listener->bind(address, port, code_)) {
        const char* why = errno != 0 ? std::strerror(errno) : "no such address";
        refuse(problems::cannot_listen(fmt::format("{} port {}", address, port), why));
    }
    url_ = "http://" + listener->host() + "/";
    listeners_.push_back(std::move(listener));
}

void Server::start() {
    for (const auto& listener : listeners_) listener->start();
}

void Server::stop() {
    for (const auto& listener : listeners_) listener->end();
    listeners_.clear();
}

} // namespace quoin::apps
