// Who may ask: the checks on a request's headers, before anything of its body is read.
//
// A web page of any other origin can make a browser send requests to this machine. It can neither
// choose the Host header (so a name that was pointed here afterwards is found out), nor hide its
// Origin, nor send application/json or our own header without asking first, which is never granted.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/text/findings.hpp>

#include "../wire/http.hpp"

namespace quoin::apps {

/// Where the server listens, and what a request must carry.
struct Access {
    std::vector<std::string> hosts; ///< "127.0.0.1:8571", ...: what Host may be
    int any_address_port = 0;       ///< not 0: any numeric address with this port, too
    std::string code;               ///< empty: none is needed

    [[nodiscard]] bool host_allowed(const std::string& host) const;
};

/// Whether this is an address of loopback: "localhost", 127.*.*.* or ::1.
[[nodiscard]] bool is_loopback(const std::string& address);

/// The hosts by which a listening address may be called, and the code that is needed there.
[[nodiscard]] Access access_for(const std::string& address, int port, std::string code);

/// 128 bits from the system's generator, as 32 hexadecimal digits.
[[nodiscard]] std::string new_access_code();

struct Denied {
    int status = 0;
    Problem problem;
};

/// Why a request must not be answered, if so.
[[nodiscard]] std::optional<Denied> denied(const HttpRequest& request, const Access& access);

} // namespace quoin::apps
