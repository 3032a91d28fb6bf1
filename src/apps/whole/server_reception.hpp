// Reception: one thread that holds every connection while it waits, reads or is read.
//
// Somebody who sends a byte a second, or reads none of what is sent, must not keep others waiting:
// a worker gets a request once all of it is there, and gives back a response that is all made.
// Between the two, a connection is a few hundred bytes and what it has sent. Time, bytes and number
// of connections have limits; where all of them together hold too much, the one that holds most
// gives way, and where there are too many, the one that has waited longest.
#pragma once

#include <atomic>
#include <chrono>
#include <memory>
#include <mutex>
#include <string>
#include <string_view>
#include <thread>
#include <unordered_map>
#include <vector>

#include "server_workers.hpp"

namespace quoin::apps {

/// What stands behind a listening socket. Called by several threads at once; throws nothing.
class Door {
  public:
    struct Reply {
        std::string bytes;
        bool last = false;    ///< the connection is to be closed after it
        bool refused = false; ///< and what else the client sends is not to be read
    };
    enum class Judged { refused, wanted, wanted_and_told };

    virtual ~Door() = default;
    [[nodiscard]] virtual int listening() const = 0;
    /// The response to a request; `socket` is looked at only to see whether the client is there.
    [[nodiscard]] virtual Reply reply(std::string_view request, int socket) = 0;
    /// Whether a request whose head this is may go on to its body, and whether the client waits to
    /// be told so.
    [[nodiscard]] virtual Judged judge(std::string_view head) = 0;
};

class Reception {
  public:
    static constexpr int idle_seconds = 15; ///< between two requests

    /// As many questions are worked on at once as `workers`; all else has threads of its own.
    explicit Reception(std::size_t workers);
    ~Reception();
    Reception(const Reception&) = delete;
    Reception& operator=(const Reception&) = delete;

    /// `door` must outlive `stop`.
    void open(Door& door) { doors_.push_back(&door); }
    void start();
    /// Takes no more requests, lets those under way end, and returns when all is still.
    void stop();
    [[nodiscard]] bool stopping() const { return stopping_; }
    /// Whether it stops and what is still worked on has had its time: it is to end.
    [[nodiscard]] bool is_giving_up() const {
        return stopping_ && Clock::now() >= given_up_.load();
    }

  private:
    using Clock = std::chrono::steady_clock;
    struct Client;
    struct Done {
        Client* client;
        Door::Reply reply;
        std::size_t sent; ///< bytes of the reply
    };

    void run();
    void happened(int socket, unsigned events);
    void let_in(Door& door);
    void read(Client& client);
    void go_on(Client& client);
    void hand_over(Client& client, std::size_t size);
    void work(Client& client, std::size_t size);
    void take_done();
    void write(Client& client);
    void written(Client& client);
    void discard(Client& client);
    void keep_time();
    void make_room();
    void begin_to_stop();
    void watch(Client& client, unsigned events);
    void close(Client& client);
    void wake() const;
    [[nodiscard]] Client* longest_waiting();

    Workers questions_;
    Workers others_;
    std::vector<Door*> doors_;
    std::unordered_map<int, std::unique_ptr<Client>> clients_; ///< by socket
    std::size_t most_clients_;
    std::size_t held_ = 0; ///< bytes of all of them
    int epoll_;
    int awakening_;
    Clock::time_point looked_; ///< whether somebody's time is over
    bool closing_ = false;
    std::atomic<bool> stopping_ = false;
    std::atomic<Clock::time_point> given_up_; ///< when work is, where it is stopping
    std::mutex mutex_;                        ///< of done_
    std::vector<Done> done_;
    std::vector<char> buffer_;
    std::thread thread_;
};

/// Sends as much as the socket takes at once; -1 where it is gone.
[[nodiscard]] ssize_t send_now(int socket, std::string_view bytes);

/// Whether the other side has not closed it.
[[nodiscard]] bool is_there(int socket);

} // namespace quoin::apps
