// A listener: one address and port, answered through the requests.
#pragma once

#include <memory>
#include <string>

#include "server_reception.hpp"
#include "server_requests.hpp"

namespace quoin::apps {

class Listener : public Door {
  public:
    /// False with the reason in errno where that address and port cannot be had; port 0 takes any.
    virtual bool bind(const std::string& address, int port, const std::string& code) = 0;
    [[nodiscard]] virtual int port() const = 0;
    [[nodiscard]] virtual const std::string& host() const = 0;
};

/// Both must outlive it.
[[nodiscard]] std::unique_ptr<Listener> new_listener(const Requests& requests,
                                                     const Reception& reception);

} // namespace quoin::apps
