// Looking for headers by their names.
#include "http.hpp"

#include <algorithm>

#include "accepted_language.hpp"

namespace quoin::apps {
namespace {

char lower(char c) { return static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c); }

} // namespace

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
