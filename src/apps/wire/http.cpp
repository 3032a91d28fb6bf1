// Looking for headers by their names.
#include "http.hpp"

#include <algorithm>

#include "accepted_language.hpp"

namespace quoin::apps {
namespace {

char lower(char c) { return static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c); }

} // namespace

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = std::min(text.find_first_not_of(" \t"), text.size());
    const std::size_t end = text.find_last_not_of(" \t\r\n");
    return end == std::string_view::npos ? "" : text.substr(begin, end + 1 - begin);
}

bool HeaderLess::operator()(std::string_view one, std::string_view other) const {
    return std::lexicographical_compare(one.begin(), one.end(), other.begin(), other.end(),
                                        [](char a, char b) { return lower(a) < lower(b); });
}

std::string_view HttpRequest::header(std::string_view name) const {
    const auto found = headers.find(name);
    return found == headers.end() ? std::string_view() : found->second;
}

Language HttpRequest::language() const { return accepted_language(header("Accept-Language")); }

} // namespace quoin::apps
