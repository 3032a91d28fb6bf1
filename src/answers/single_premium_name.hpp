// What mortgage insurance that is paid up at closing is called.
#pragma once

#include <string>

#include <quoin/lending/program.hpp>

namespace quoin {

inline std::string single_premium_name(const LoanProgram& program) {
    return program.annual_name + ", single premium";
}

} // namespace quoin
