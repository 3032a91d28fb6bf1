// Loading: from file names to a desk and an inquiry, all problems at once.
#pragma once

#include <memory>
#include <string>

#include <quoin/answers/apr.hpp>
#include <quoin/answers/inquiry.hpp>
#include <quoin/answers/sitting.hpp>

namespace quoin::apps {

/// An inquiry with the desk it was read against, kept together since one refers to the other.
struct Loaded {
    Desk desk;
    Inquiry inquiry;

    [[nodiscard]] Sitting sitting() const { return {desk, inquiry}; }
};

/// Throws Refused with everything that is wrong in the inquiry, its price book or the lending data.
[[nodiscard]] std::unique_ptr<Loaded> load_inquiry(const std::string& file,
                                                   const std::string& rates);

/// Throws Refused likewise.
[[nodiscard]] PriceBook load_price_book(const std::string& file);

/// Throws Refused likewise.
[[nodiscard]] AprAnswer load_apr(const std::string& file);

/// One file of any kind, checked as far as it goes; an inquiry together with what it names.
struct Checked {
    std::string file;
    std::string kind; ///< "price book", "inquiry", ...
    Findings findings;
};
[[nodiscard]] Checked check_file(const std::string& file, const std::string& rates);

} // namespace quoin::apps
