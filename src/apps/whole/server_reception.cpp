// Accepting, reading, handing over, writing, and closing in time.
#include "server_reception.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <system_error>

#include <netinet/in.h>
#include <netinet/tcp.h>
#include <sys/epoll.h>
#include <sys/eventfd.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <unistd.h>

#include "server_framing.hpp"

namespace quoin::apps {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

constexpr seconds request_limit{10};  ///< from first to last byte
constexpr seconds response_limit{30}; ///< likewise
constexpr seconds stopping_limit{2};  ///< for what is under way when the server stops
constexpr seconds working_limit{1};   ///< of them for the work itself
constexpr milliseconds discard_limit{500};
constexpr milliseconds glance{50}; ///< how exactly limits of time are kept
constexpr std::size_t most_discarded = 8U * 1024 * 1024;
constexpr std::size_t piece = 64U * 1024;

constexpr std::size_t most_held = 16U * 1024 * 1024; ///< by all connections together
constexpr std::size_t little_held = 16U * 1024;      ///< with which nobody has to give way
constexpr std::size_t other_threads = 2;             ///< for what takes no time: the page, refusals

/// As many sockets as the system lets us have, but not more than help anybody.
std::size_t socket_limit() {
    constexpr rlim_t most = 4096;
    constexpr std::size_t for_other_files = 64;
    rlimit limit{};
    if (getrlimit(RLIMIT_NOFILE, &limit) != 0) return for_other_files;
    const rlim_t wanted = std::min(limit.rlim_max, most);
    if (limit.rlim_cur < wanted) {
        limit.rlim_cur = wanted;
        setrlimit(RLIMIT_NOFILE, &limit);
        getrlimit(RLIMIT_NOFILE, &limit);
    }
    const auto have = static_cast<std::size_t>(std::min(limit.rlim_cur, most));
    return have > 2 * for_other_files ? have - for_other_files : for_other_files;
}

int opened(int file) {
    if (file < 0) throw std::system_error(errno, std::generic_category());
    return file;
}

bool is_question(std::string_view request) { return request.substr(0, 5) == "POST "; }

} // namespace

struct Reception::Client {
    enum class State { reading, working, writing, discarding };

    int socket;
    Door* door;
    Clock::time_point since; ///< it waits for its next request, or sends it
    Clock::time_point until; ///< it is waited for
    State state = State::reading;
    std::string in = {};    ///< sent and not yet answered
    std::size_t looked = 0; ///< of it, for the end of a head
    std::size_t size = 0;   ///< of it, being answered
    bool judged = false;    ///< its head was
    bool ended = false;     ///< it sends no more
    std::string out = {};   ///< to be sent
    std::size_t sent = 0;   ///< of it, or discarded
    bool last = false;      ///< is this response
    bool refused = false;   ///< and a refusal
    unsigned watched = 0;   ///< for these events

    [[nodiscard]] std::size_t held() const { return in.capacity() + out.capacity(); }
    [[nodiscard]] bool is_idle() const { return state == State::reading && in.empty(); }
};

bool is_there(int socket) {
    char next = 0; // of a request that follows
    const ssize_t got = recv(socket, &next, 1, MSG_PEEK | MSG_DONTWAIT);
    return got > 0 || (got < 0 && (errno == EAGAIN || errno == EINTR));
}

ssize_t send_now(int socket, std::string_view bytes) {
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t sent =
            send(socket, bytes.data() + done, bytes.size() - done, MSG_NOSIGNAL | MSG_DONTWAIT);
        if (sent < 0 && errno == EINTR) continue;
        if (sent < 0 && errno != EAGAIN) return -1;
        if (sent <= 0) break;
        done += static_cast<std::size_t>(sent);
    }
    return static_cast<ssize_t>(done);
}

Reception::Reception(std::size_t workers)
    : questions_(workers), others_(other_threads), most_clients_(socket_limit()),
      epoll_(opened(epoll_create1(EPOLL_CLOEXEC))),
      awakening_(opened(eventfd(0, EFD_NONBLOCK | EFD_CLOEXEC))), buffer_(piece) {
    epoll_event event{EPOLLIN, {}};
    event.data.fd = awakening_;
    epoll_ctl(epoll_, EPOLL_CTL_ADD, awakening_, &event);
}

Reception::~Reception() {
    stop();
    ::close(awakening_);
    ::close(epoll_);
}

void Reception::start() {
    for (const Door* door : doors_) {
        epoll_event event{EPOLLIN, {}};
        event.data.fd = door->listening();
        epoll_ctl(epoll_, EPOLL_CTL_ADD, door->listening(), &event);
    }
    thread_ = std::thread([this] { run(); });
}

void Reception::stop() {
    if (!stopping_) given_up_ = Clock::now() + working_limit;
    stopping_ = true;
    wake();
    if (thread_.joinable()) thread_.join();
}

void Reception::wake() const {
    const std::uint64_t once = 1;
    if (::write(awakening_, &once, sizeof once) < 0) return; // it is awake already
}

void Reception::run() {
    std::array<epoll_event, 64> events{};
    while (!(closing_ && clients_.empty())) {
        const int longest = clients_.empty() ? -1 : static_cast<int>(glance.count());
        const int count = epoll_wait(epoll_, events.data(), events.size(), longest);
        for (int i = 0; i < count; ++i) {
            const epoll_event& event = events[static_cast<std::size_t>(i)];
            happened(event.data.fd, event.events);
        }
        take_done();
        if (stopping_ && !closing_) begin_to_stop();
        keep_time();
        make_room();
    }
}

void Reception::happened(int socket, unsigned events) {
    if (socket == awakening_) {
        std::uint64_t count = 0;
        while (::read(awakening_, &count, sizeof count) > 0) continue;
        return;
    }
    for (Door* door : doors_) {
        if (door->listening() == socket) return closing_ ? void() : let_in(*door);
    }
    const auto found = clients_.find(socket);
    if (found == clients_.end()) return; // it was closed for an event before this one
    Client& client = *found->second;
    if ((events & (EPOLLIN | EPOLLHUP | EPOLLERR)) != 0 && client.state == Client::State::reading) {
        read(client);
    } else if (client.state == Client::State::writing) {
        write(client);
    } else if (client.state == Client::State::discarding) {
        discard(client);
    }
}

void Reception::let_in(Door& door) {
    for (int i = 0; i < 64; ++i) {
        const int socket =
            accept4(door.listening(), nullptr, nullptr, SOCK_NONBLOCK | SOCK_CLOEXEC);
        if (socket < 0) return;
        const int yes = 1;
        setsockopt(socket, IPPROTO_TCP, TCP_NODELAY, &yes, sizeof yes);
        if (clients_.size() >= most_clients_) {
            if (Client* waiting = longest_waiting()) close(*waiting);
        }
        const auto now = Clock::now();
        auto client =
            std::make_unique<Client>(Client{socket, &door, now, now + seconds(idle_seconds)});
        watch(*client, EPOLLIN);
        held_ += client->held();
        clients_.emplace(socket, std::move(client));
    }
}

/// Of those that send no whole request; the newest is never it, so that one comes through.
Reception::Client* Reception::longest_waiting() {
    Client* longest = nullptr;
    for (const auto& [socket, client] : clients_) {
        if (client->state != Client::State::reading) continue;
        if (longest == nullptr || client->since < longest->since) longest = client.get();
    }
    return longest;
}

void Reception::watch(Client& client, unsigned events) {
    epoll_event event{events, {}};
    event.data.fd = client.socket;
    const int change = events == 0           ? EPOLL_CTL_DEL
                       : client.watched == 0 ? EPOLL_CTL_ADD
                                             : EPOLL_CTL_MOD;
    if (events != client.watched) epoll_ctl(epoll_, change, client.socket, &event);
    client.watched = events;
}

void Reception::close(Client& client) {
    held_ -= client.held();
    ::close(client.socket);
    clients_.erase(client.socket);
}

void Reception::read(Client& client) {
    const std::size_t before = client.held();
    const bool first = client.in.empty();
    const ssize_t got = recv(client.socket, buffer_.data(), buffer_.size(), MSG_DONTWAIT);
    if (got < 0) {
        if (errno != EAGAIN && errno != EINTR) close(client);
        return;
    }
    client.ended = got == 0;
    client.in.append(buffer_.data(), static_cast<std::size_t>(got));
    held_ += client.held() - before;
    if (first) client.until = Clock::now() + request_limit;
    go_on(client);
}

/// Looks whether what was sent is a request, or can no longer become one.
void Reception::go_on(Client& client) {
    if (client.in.empty()) {
        if (client.ended) close(client);
        return;
    }
    const Framing framing = framing_of(client.in, client.looked);
    if (framing.state == Framing::State::whole) return hand_over(client, framing.size);
    if (client.ended) return hand_over(client, client.in.size());
    if (framing.state == Framing::State::in_head || client.judged) return;
    client.judged = true;
    const auto judged = client.door->judge(std::string_view(client.in).substr(0, framing.head));
    if (judged == Door::Judged::refused) return hand_over(client, framing.head);
    if (judged == Door::Judged::wanted_and_told) {
        static_cast<void>(send_now(client.socket, "HTTP/1.1 100 Continue\r\n\r\n"));
    }
}

void Reception::hand_over(Client& client, std::size_t size) {
    client.state = Client::State::working;
    client.size = size;
    watch(client, 0);
    Workers& workers = is_question(client.in) ? questions_ : others_;
    workers.add([this, &client, size] { work(client, size); });
}

/// By a worker: until it is done, nobody else touches the client.
void Reception::work(Client& client, std::size_t size) {
    Door::Reply reply =
        client.door->reply(std::string_view(client.in).substr(0, size), client.socket);
    const ssize_t sent = send_now(client.socket, reply.bytes);
    if (sent < 0) reply = {{}, true, false};
    {
        const std::lock_guard lock(mutex_);
        done_.push_back(
            {&client, std::move(reply), static_cast<std::size_t>(std::max<ssize_t>(sent, 0))});
    }
    wake();
}

void Reception::take_done() {
    std::vector<Done> done;
    {
        const std::lock_guard lock(mutex_);
        done.swap(done_);
    }
    for (Done& each : done) {
        Client& client = *each.client;
        held_ -= client.held();
        client.in.erase(0, client.size);
        if (client.in.empty()) client.in = std::string(); // gives its bytes back
        client.out =
            each.sent < each.reply.bytes.size() ? std::move(each.reply.bytes) : std::string();
        held_ += client.held();
        client.sent = client.out.empty() ? 0 : each.sent;
        client.last = each.reply.last;
        client.refused = each.reply.refused;
        client.state = Client::State::writing;
        client.until = Clock::now() + (closing_ ? stopping_limit : response_limit);
        write(client);
    }
}

void Reception::write(Client& client) {
    const ssize_t sent = send_now(client.socket, std::string_view(client.out).substr(client.sent));
    if (sent < 0) return close(client);
    client.sent += static_cast<std::size_t>(sent);
    if (client.sent < client.out.size()) return watch(client, EPOLLOUT);
    written(client);
}

void Reception::written(Client& client) {
    held_ -= client.out.capacity();
    client.out = std::string();
    held_ += client.out.capacity();
    if (client.refused && !closing_) {
        // Closing with bytes unread resets the connection, and the client may never see why.
        shutdown(client.socket, SHUT_WR);
        client.state = Client::State::discarding;
        client.until = Clock::now() + discard_limit;
        client.sent = 0;
        return watch(client, EPOLLIN);
    }
    if (client.refused || client.last || closing_ || (client.ended && client.in.empty())) {
        shutdown(client.socket, SHUT_WR);
        return close(client);
    }
    const auto now = Clock::now();
    client.state = Client::State::reading;
    client.since = now;
    client.until = now + (client.in.empty() ? seconds(idle_seconds) : request_limit);
    client.looked = 0;
    client.judged = false;
    watch(client, EPOLLIN);
    go_on(client);
}

void Reception::discard(Client& client) {
    const ssize_t got = recv(client.socket, buffer_.data(), buffer_.size(), MSG_DONTWAIT);
    if (got < 0 && (errno == EAGAIN || errno == EINTR)) return;
    if (got > 0) client.sent += static_cast<std::size_t>(got);
    if (got <= 0 || client.sent > most_discarded) close(client);
}

void Reception::keep_time() {
    const auto now = Clock::now();
    if (now - looked_ < glance) return;
    looked_ = now;
    std::vector<Client*> over;
    for (const auto& [socket, client] : clients_) {
        if (client->state != Client::State::working && client->until <= now) {
            over.push_back(client.get());
        }
    }
    for (Client* client : over) {
        if (client->state == Client::State::reading && !client->in.empty()) {
            hand_over(*client, client->in.size()); // it is told what it lacks
        } else {
            close(*client);
        }
    }
}

void Reception::make_room() {
    while (held_ > most_held) {
        Client* most = nullptr;
        for (const auto& [socket, client] : clients_) {
            if (client->state == Client::State::working) continue;
            if (most == nullptr || client->held() > most->held()) most = client.get();
        }
        if (most == nullptr || most->held() <= little_held) return;
        close(*most);
    }
}

void Reception::begin_to_stop() {
    closing_ = true;
    for (const Door* door : doors_) epoll_ctl(epoll_, EPOLL_CTL_DEL, door->listening(), nullptr);
    const auto end = Clock::now() + stopping_limit;
    std::vector<Client*> idle;
    for (const auto& [socket, client] : clients_) {
        client->until = std::min(client->until, end);
        if (client->is_idle() || client->state == Client::State::discarding) {
            idle.push_back(client.get());
        }
    }
    for (Client* client : idle) close(*client);
}

} // namespace quoin::apps
