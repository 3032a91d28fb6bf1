// Options of a request, held against those that its question takes.
#pragma once

#include <quoin/questions/questions.hpp>

namespace quoin::apps {

/// Throws Refused for an option that the question does not take from a request, that it takes once
/// and was given twice, that another excludes, and for one that it needs and was not given.
void check_given(const Question& question, const Given& given);

} // namespace quoin::apps
