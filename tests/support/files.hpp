// The shipped example and the small community of the transcripts, loaded once a program.
#pragma once

#include <memory>
#include <string>

#include "apps/loading.hpp"

namespace quoin::test {

/// The example's inquiry with six programs.
inline const apps::Loaded& six_programs() {
    static const auto loaded =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/six-programs.json",
                           QUOIN_SOURCE_DIR "/rates");
    return *loaded;
}

/// A fresh copy of the transcripts' small inquiry, to change at will.
inline std::unique_ptr<apps::Loaded> small() {
    return apps::load_inquiry(QUOIN_SOURCE_DIR "/tests/golden/data/buyer.json",
                              QUOIN_SOURCE_DIR "/tests/golden/data/rates");
}

inline Document json(std::string text) {
    Findings findings;
    Document document =
        parse_json(std::make_shared<Source>("test.json", std::move(text)), findings);
    if (!findings.none()) throw Refused(std::move(findings));
    return document;
}

inline Money money(const char* text) { return Money::parse(text).value(); }
inline Decimal decimal(const char* text) { return Decimal::parse(text).value(); }
inline Rate rate(const char* percent) { return Rate::percent(decimal(percent)).value(); }
inline Date date(const char* text) { return Date::parse(text).value(); }

} // namespace quoin::test
