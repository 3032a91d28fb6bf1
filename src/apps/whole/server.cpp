// Listening on one port or two, and stopping.
#include "server.hpp"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <thread>

#include <quoin/inquiry/typed.hpp>
#include <quoin/text/problems.hpp>

namespace quoin::apps {

Server::Server(const Requests& requests, const std::string& address, int port)
    : reception_(std::max(2U, std::thread::hardware_concurrency())) {
    const bool usual = address.empty();
    const std::string first = usual ? "127.0.0.1" : address;
    if (!is_loopback(first)) code_ = new_access_code();
    listen(requests, first, port);
    if (!usual) return;
    auto second = new_listener(requests, reception_);
    const int same = listeners_.front()->port();
    if (second->bind("::1", same, {})) listeners_.push_back(std::move(second));
}

Server::~Server() { stop(); }

void Server::listen(const Requests& requests, const std::string& address, int port) {
    auto listener = new_listener(requests, reception_);
    if (!listener->bind(address, port, code_)) {
        const int why = errno;
        refuse(why != 0 ? problems::cannot_listen(address, port, std::strerror(why))
                        : problems::no_such_address(address, port));
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
