// Loading: from file names to a desk and an inquiry, all problems at once.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include <quoin/answers/apr.hpp>
#include <quoin/inquiry/inquiry.hpp>
#include <quoin/inquiry/sitting.hpp>
#include <quoin/text/language.hpp>
#include <quoin/text/value.hpp>

#include "interruption.hpp"

namespace quoin::apps {

/// An inquiry with the desk it was read against, kept together since one refers to the other.
struct Loaded {
    Desk desk;
    Inquiry inquiry;

    /// An interrupt ends long work on it.
    [[nodiscard]] Sitting sitting() const { return {desk, inquiry, &not_interrupted()}; }
};

enum class Drawn { no, yes }; ///< whether drawings are read, too

/// Throws Refused with everything that is wrong in the inquiry, its price book or the lending data.
/// Of the rate sheets only the inquiry's own is read whole. `language`: of the data's texts.
[[nodiscard]] std::unique_ptr<Loaded> load_inquiry(const std::string& file,
                                                   const std::string& rates,
                                                   Language language = Language::english,
                                                   Drawn drawn = Drawn::no);

enum class Sheets { all, own }; ///< which of the rate sheets are read

/// What an inquiry's document names, and the inquiry itself; stops where one of them is needed by
/// the next and is not sound.
[[nodiscard]] std::unique_ptr<Loaded> read_all(const Document& document, const std::string& rates,
                                               Sheets sheets, Language language, Drawn drawn,
                                               Findings& findings);

/// A JSON file; its problems are recorded and its root is then null. `what` names it in messages.
[[nodiscard]] Document read_json(const std::filesystem::path& path, FileMeant what,
                                 Findings& findings);
/// Likewise, with its texts in a language.
[[nodiscard]] Document read_data(const std::filesystem::path& path, FileMeant what,
                                 Language language, Findings& findings);
/// A price book, its texts chosen, with the list of lots it may point to in the same language.
[[nodiscard]] PriceBook read_book(const Document& document, Language language, Findings& findings);
/// The lending data of a folder, all of it; `rates` empty: the data that rates_folder finds.
[[nodiscard]] Lending load_lending(const std::string& rates, Findings& findings,
                                   Language language = Language::english);
/// The same without the rate sheets that are not the one asked for, and without their faults. What
/// does not say whether it is the one is read; where none is, all are.
[[nodiscard]] Lending load_lending(const std::string& rates, const SheetAsked& asked,
                                   Findings& findings, Language language = Language::english);

/// Throws Refused likewise.
[[nodiscard]] PriceBook load_price_book(const std::string& file,
                                        Language language = Language::english);

/// Throws Refused likewise.
[[nodiscard]] AprAnswer load_apr(const std::string& file);

} // namespace quoin::apps
