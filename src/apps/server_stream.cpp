// Reading from bytes and writing to bytes.
#include "server_stream.hpp"

#include <algorithm>
#include <cstring>

namespace quoin::apps {

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

} // namespace quoin::apps
