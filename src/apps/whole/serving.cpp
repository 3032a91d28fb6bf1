// Running the server until it is told to stop.
#include "serving.hpp"

#include <csignal>
#include <cstdio>

#include <fcntl.h>
#include <malloc.h>
#include <pthread.h>
#include <spawn.h>

#include <fmt/format.h>

#include <quoin/render/problems.hpp>

#include "../clock.hpp"
#include "../files.hpp"
#include "../wire/cases.hpp"
#include "openapi.hpp"
#include "page_assets.hpp"
#include "server.hpp"
#include "words/apps.hpp"

extern char** environ; // NOLINT(readability-redundant-declaration): POSIX leaves it to us

namespace quoin::apps {
namespace {

/// The signals that end the server. Blocked before any thread is made, so that only `wait` sees
/// them.
class EndSignals {
  public:
    EndSignals() {
        sigemptyset(&set_);
        for (const int signal : {SIGINT, SIGTERM}) sigaddset(&set_, signal);
        pthread_sigmask(SIG_BLOCK, &set_, nullptr);
    }
    /// Waits for one. A second one then ends the program at once.
    void wait() const {
        int which = 0;
        sigwait(&set_, &which);
        pthread_sigmask(SIG_UNBLOCK, &set_, nullptr);
    }

  private:
    sigset_t set_{};
};

Cases found_cases(const Typed& typed) {
    Findings left_out;
    const std::string said = typed.given.one("folder");
    const auto folder = said.empty() ? data_folder("examples") : std::filesystem::path(said);
    Cases cases(folder, typed.rates, today(), left_out);
    if (!left_out.none()) {
        const Catalogue& say = catalogue_in(typed.language);
        fmt::print(stderr, "{}quoin: {}\n", text_of(left_out, say), say.apps.serve.left_out());
    }
    return cases;
}

std::string inquiry_schema() {
    Findings findings; // without it the description says a little less
    const auto source =
        read_file(data_folder("schemas") / "inquiry.schema.json", FileMeant::schema, findings);
    return source != nullptr ? std::string(source->text()) : std::string();
}

/// Hands an address to the desktop's own opener. The address has no access code in it: other users
/// of this machine can see what programs are started with.
bool open_in_browser(const std::string& url) {
    sigset_t none;
    sigemptyset(&none);
    posix_spawnattr_t apart; // its own signals, and none of our Ctrl-C
    posix_spawnattr_init(&apart);
    posix_spawnattr_setsigmask(&apart, &none);
    posix_spawnattr_setflags(&apart, POSIX_SPAWN_SETSIGMASK | POSIX_SPAWN_SETPGROUP);
    posix_spawn_file_actions_t quiet;
    posix_spawn_file_actions_init(&quiet);
    posix_spawn_file_actions_addopen(&quiet, 1, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addopen(&quiet, 2, "/dev/null", O_WRONLY, 0);
    bool opened = false;
    for (std::string name : {"xdg-open", "x-www-browser"}) {
        std::string address = url;
        char* const arguments[] = {name.data(), address.data(), nullptr};
        pid_t child = 0;
        opened = posix_spawnp(&child, name.c_str(), &quiet, &apart, arguments, environ) == 0;
        if (opened) break;
    }
    posix_spawn_file_actions_destroy(&quiet);
    posix_spawnattr_destroy(&apart);
    return opened;
}

void greet(const Server& server, const Requests& requests, bool open, const ServeWords& say) {
    const Cases& cases = requests.cases();
    fmt::print("{}\n", say.serves(static_cast<int>(cases.books().size()),
                                  static_cast<int>(cases.inquiry_count())));
    const bool coded = !server.code().empty();
    fmt::print("  {}{}\n", server.url(), coded ? "#code=" + server.code() : "");
    if (coded) fmt::print("{}\n", say.address_is_open());
    if (page_assets().empty()) fmt::print("{}\n", say.no_page());
    if (open && !open_in_browser(server.url())) fmt::print("{}\n", say.no_browser());
    fmt::print("{}\n", say.how_to_end());
    std::fflush(stdout);
}

/// What an answer of half a megabyte needed stays for the next one: given back to the system and
/// asked for anew, it took as long as the answer.
void keep_memory() {
    constexpr int megabyte = 1 << 20;
    mallopt(M_MMAP_THRESHOLD, 4 * megabyte);
    mallopt(M_TRIM_THRESHOLD, 16 * megabyte);
}

} // namespace

void serve(const Typed& typed) {
    const EndSignals signals;
    keep_memory();
    const Requests requests(found_cases(typed), openapi_text(inquiry_schema()));
    Server server(requests, typed.given.one("listen"), std::stoi(typed.given.one("port")));
    server.start();
    const ServeWords& say = catalogue_in(typed.language).apps.serve;
    greet(server, requests, typed.given.has("open"), say);
    signals.wait();
    server.stop();
    fmt::print("{}\n", say.ended());
    if (requests.faults() > 0) fmt::print("{}\n", say.faults(std::to_string(requests.faults())));
}

} // namespace quoin::apps
