// The checks on a request's headers.
#include "server_guard.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

#include <arpa/inet.h>
#include <sys/random.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/text/problems.hpp>

namespace quoin::apps {
namespace {

std::string lower(std::string_view from) {
    std::string text(from);
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) {
        return static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    });
    return text;
}

bool is_v4(const std::string& text) {
    in_addr address{};
    return inet_pton(AF_INET, text.c_str(), &address) == 1;
}

bool is_v6(const std::string& text) {
    in6_addr address{};
    return inet_pton(AF_INET6, text.c_str(), &address) == 1;
}

/// "192.0.2.7:8571" or "[2001:db8::7]:8571": a name could have been pointed here by anybody, a
/// numeric address cannot.
bool is_numeric_host(const std::string& host, int port) {
    const std::string end = fmt::format(":{}", port);
    if (host.size() <= end.size() || host.substr(host.size() - end.size()) != end) return false;
    const std::string address = host.substr(0, host.size() - end.size());
    if (address.front() != '[') return is_v4(address);
    return address.back() == ']' && is_v6(address.substr(1, address.size() - 2));
}

/// Compares in a time that does not tell how much of the code was right.
bool same_code(std::string_view given, const std::string& code) {
    unsigned different = given.size() == code.size() ? 0U : 1U;
    for (std::size_t i = 0; i < code.size(); ++i) {
        const char c = i < given.size() ? given[i] : '\0';
        different |= c == code[i] ? 0U : 1U;
    }
    return different == 0;
}

bool is_api(const HttpRequest& request) { return request.path.rfind("/api/", 0) == 0; }

/// A page of this server sends its own origin; a page of another site, another one or "null".
bool from_elsewhere(const HttpRequest& request, const std::string& host) {
    const std::size_t origins = request.count("Origin");
    if (origins > 1) return true;
    if (origins == 1 && lower(request.header("Origin")) != "http://" + host) return true;
    const std::string_view site = request.header("Sec-Fetch-Site");
    return is_api(request) && !site.empty() && site != "same-origin" && site != "none";
}

/// One Content-Length, and a body only with POST: what is left unread in a connection would be
/// taken for the next request. Chunks are refused, since the library puts no limit on their sum.
bool length_unclear(const HttpRequest& request) {
    const std::string_view length = request.header("Content-Length");
    if (request.count("Content-Length") > 1) return true;
    if (request.has("Transfer-Encoding")) return true;
    if (!std::all_of(length.begin(), length.end(), [](char c) { return c >= '0' && c <= '9'; })) {
        return true;
    }
    return request.method == "POST" ? length.empty() : !length.empty() && length != "0";
}

std::optional<Denied> body_denied(const HttpRequest& request) {
    if (length_unclear(request)) return Denied{411, problems::http_body_length()};
    if (request.method != "POST") return std::nullopt;
    const std::string type = lower(request.header("Content-Type"));
    if (type != "application/json" && type.rfind("application/json;", 0) != 0) {
        return Denied{415, problems::http_content_type()};
    }
    if (request.has("Content-Encoding")) return Denied{415, problems::http_content_coding()};
    return std::nullopt;
}

} // namespace

bool Access::host_allowed(const std::string& host) const {
    if (std::find(hosts.begin(), hosts.end(), host) != hosts.end()) return true;
    return any_address_port != 0 && is_numeric_host(host, any_address_port);
}

bool is_loopback(const std::string& address) {
    return address == "localhost" || address == "::1" ||
           (is_v4(address) && address.rfind("127.", 0) == 0);
}

Access access_for(const std::string& address, int port, std::string code) {
    Access access;
    access.code = std::move(code);
    const std::string bracketed = is_v6(address) ? "[" + address + "]" : lower(address);
    std::vector<std::string> names = {bracketed};
    if (is_loopback(address)) names = {bracketed, "127.0.0.1", "localhost", "[::1]"};
    for (const std::string& name : names) {
        access.hosts.push_back(fmt::format("{}:{}", name, port));
        if (port == 80) access.hosts.push_back(name); // browsers leave the usual port out
    }
    if (address == "0.0.0.0" || address == "::") access.any_address_port = port;
    return access;
}

std::string new_access_code() {
    std::array<unsigned char, 16> bits{};
    if (getrandom(bits.data(), bits.size(), 0) != static_cast<ssize_t>(bits.size())) {
        throw std::runtime_error("the system gives no random numbers");
    }
    return fmt::format("{:02x}", fmt::join(bits, ""));
}

std::optional<Denied> denied(const HttpRequest& request, const Access& access) {
    const std::string host = lower(request.header("Host"));
    if (request.count("Host") != 1 || !access.host_allowed(host)) {
        return Denied{403, problems::http_host(access.hosts.front())};
    }
    if (from_elsewhere(request, host)) return Denied{403, problems::http_origin("http://" + host)};
    if (!access.code.empty() && is_api(request)) {
        if (!request.has("Quoin-Code")) return Denied{401, problems::http_code_needed()};
        if (!same_code(request.header("Quoin-Code"), access.code)) {
            return Denied{401, problems::http_code_wrong()};
        }
    }
    return body_denied(request);
}

} // namespace quoin::apps
