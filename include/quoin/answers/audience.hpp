// Who looks at an answer: the desk sees the office notes, a buyer never does.
#pragma once

namespace quoin {

enum class Audience { buyer, desk };

} // namespace quoin
