// What the server says of a request that is no question at all: wrong host, path, method, size ...
//
// The same shape as the problems of an input; none of them repeats what the request's body held.
// Mistakes in an inquiry itself are told in the words of text/problems, as on the command line.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/findings.hpp>

namespace quoin::apps::http_problems {

Problem host(const std::string& expected);
Problem origin(const std::string& expected);
Problem code_needed();
Problem code_wrong();
Problem path_unknown();
Problem method(std::string_view path, std::string_view allowed);
Problem content_type();
Problem content_coding();
Problem body_length();
Problem too_large(std::size_t limit);
Problem incomplete();
Problem question_unknown(std::string_view name, const std::vector<std::string>& names);
Problem option_unknown(std::string_view name, std::string_view question,
                       const std::vector<std::string>& names);
Problem option_missing(std::string_view name, std::string_view summary);
Problem option_repeated(std::string_view name);
Problem options_exclude(std::string_view one, std::string_view other);
Problem figures_too_large();
Problem took_too_long(std::int64_t seconds);
Problem fault();

} // namespace quoin::apps::http_problems
