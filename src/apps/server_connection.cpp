// Reading and writing a connection against the clock.
#include "server_connection.hpp"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <string_view>

#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

namespace quoin::apps {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

constexpr seconds request_limit{10};     ///< from first to last byte
constexpr seconds response_limit{30};    ///< likewise
constexpr milliseconds fair_moment{200}; ///< for a first byte while others wait for a thread
constexpr seconds stopping_limit{2};     ///< for what is under way when the server stops
constexpr milliseconds glance{100};      ///< how often a wait looks whether the server stops
constexpr milliseconds discard_limit{500};
constexpr std::size_t most_discarded = 8U * 1024 * 1024;

/// Waits a glance at most.
bool ready(socket_t socket, short events, milliseconds longest) {
    pollfd asked{socket, events, 0};
    return poll(&asked, 1, static_cast<int>(std::min(longest, glance).count())) > 0;
}

milliseconds until(Connection::Clock::time_point end) {
    const auto left = std::chrono::ceil<milliseconds>(end - Connection::Clock::now());
    return std::max(left, milliseconds(0));
}

} // namespace

Connection::Connection(socket_t socket, const std::atomic<bool>& stopping)
    : socket_(socket), stopping_(&stopping) {}

Connection::~Connection() {
    shutdown(socket_, SHUT_WR);
    if (refused_) discard_rest();
    close(socket_);
}

/// Closing a socket with bytes unread resets it, and the client may never see why it was refused.
void Connection::discard_rest() {
    const auto end = Clock::now() + discard_limit;
    std::size_t discarded = 0;
    while (discarded < most_discarded && until(end).count() > 0 && !*stopping_) {
        if (!ready(socket_, POLLIN, until(end))) continue;
        const ssize_t got = recv(socket_, buffer_.data(), buffer_.size(), MSG_DONTWAIT);
        if (got <= 0) return;
        discarded += static_cast<std::size_t>(got);
    }
}

bool Connection::wait(short events, Clock::time_point end) const {
    bool stopping = false;
    while (true) {
        if (*stopping_ && !stopping) {
            stopping = true;
            end = std::min(end, Clock::now() + stopping_limit);
        }
        const milliseconds left = until(end);
        if (ready(socket_, events, left)) return true;
        if (left.count() == 0) return false;
    }
}

bool Connection::next_request(Crowd& crowd, bool& making_room) {
    const auto began = Clock::now();
    const auto end = began + seconds(idle_seconds);
    const auto owed = began + fair_moment;
    bool there = begin_ < end_ || ready(socket_, POLLIN, milliseconds(0));
    while (!there && !*stopping_ && until(end).count() > 0) {
        making_room = Clock::now() >= owed && crowd.wants_room();
        if (making_room) break;
        there = ready(socket_, POLLIN, until(end));
    }
    read_until_ = Clock::now() + request_limit;
    responding_ = false;
    return there;
}

bool Connection::is_awaited() const {
    if (*stopping_) return false;
    if (!ready(socket_, POLLIN, milliseconds(0))) return true;
    char next = 0; // of a request that follows, or the end
    const ssize_t got = recv(socket_, &next, 1, MSG_PEEK | MSG_DONTWAIT);
    return got > 0 || (got < 0 && (errno == EAGAIN || errno == EINTR));
}

bool Connection::is_readable() const { return begin_ < end_ || wait(POLLIN, read_until_); }

bool Connection::is_writable() const { return wait(POLLOUT, Clock::now() + response_limit); }

ssize_t Connection::read(char* to, std::size_t size) {
    if (begin_ == end_) {
        if (!wait(POLLIN, read_until_)) return -1;
        const ssize_t got = recv(socket_, buffer_.data(), buffer_.size(), MSG_DONTWAIT);
        if (got <= 0) return got;
        begin_ = 0;
        end_ = static_cast<std::size_t>(got);
    }
    const std::size_t count = std::min(size, end_ - begin_);
    std::memcpy(to, buffer_.data() + begin_, count);
    begin_ += count;
    return static_cast<ssize_t>(count);
}

ssize_t Connection::write(const char* from, std::size_t size) {
    const std::string_view start(from, size);
    if (!responding_ && start.rfind("HTTP/1.1 1", 0) != 0) { // the status line comes first
        responding_ = true;
        refused_ = start.rfind("HTTP/1.1 4", 0) == 0 || start.rfind("HTTP/1.1 5", 0) == 0;
        write_until_ = Clock::now() + response_limit;
    }
    std::size_t done = 0;
    while (done < size) {
        if (!wait(POLLOUT, write_until_)) return -1;
        const ssize_t sent = send(socket_, from + done, size - done, MSG_NOSIGNAL | MSG_DONTWAIT);
        if (sent < 0 && errno != EAGAIN && errno != EINTR) return -1;
        if (sent > 0) done += static_cast<std::size_t>(sent);
    }
    return static_cast<ssize_t>(size);
}

// Nothing is kept of who asks.
void Connection::get_remote_ip_and_port(std::string& ip, int& port) const {
    ip.clear();
    port = 0;
}

void Connection::get_local_ip_and_port(std::string& ip, int& port) const {
    ip.clear();
    port = 0;
}

} // namespace quoin::apps
