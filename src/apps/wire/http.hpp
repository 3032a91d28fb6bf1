// A request and its response, as everything but the listener knows them.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include <quoin/questions/questions.hpp>
#include <quoin/text/language.hpp>

namespace quoin::apps {

/// A header's value without the white space around it, or the end of its line.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// Names of headers are the same in any case.
struct HeaderLess {
    using is_transparent = void;
    bool operator()(std::string_view one, std::string_view other) const;
};
using Headers = std::multimap<std::string, std::string, HeaderLess>;

struct HttpRequest {
    std::string method;
    std::string path;
    Given given; ///< the options behind it
    Headers headers;
    std::string body;
    bool takes_gzip = false;

    [[nodiscard]] bool has(std::string_view header) const { return headers.contains(header); }
    [[nodiscard]] std::size_t count(std::string_view header) const { return headers.count(header); }
    /// The first of that name; empty where there is none.
    [[nodiscard]] std::string_view header(std::string_view name) const;
    /// The one that a reply is best given in, by Accept-Language.
    [[nodiscard]] Language language() const;
};

struct HttpResponse {
    Language language = Language::english; ///< that it is to be told in
    int status = -1;                       ///< none yet
    Headers headers = {};
    std::string body = {};
    std::string type = {}; ///< of the body; empty where there is none
};

} // namespace quoin::apps
