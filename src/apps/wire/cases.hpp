// Cases: what a folder holds to start from: price books, each with its desk, and the inquiries
// beside them.
//
// Read once at the start and never changed, so that every thread may use them. What is not in here
// cannot be reached: a price book is found by its id alone, never by a path.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/inquiry/desk.hpp>
#include <quoin/inquiry/inquiry.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/language.hpp>

#include "../pictures.hpp"

namespace quoin::apps {

/// An inquiry as its file has it, but for `price_book`, which is the price book's id here.
struct CaseInquiry {
    std::string id; ///< path relative to the folder
    std::string buyer;
    std::string json; ///< every literal as it was written
};

/// A picture that a price book names, at an address that names its content.
struct CasePicture {
    std::string address; ///< "/api/pictures/0123456789abcdef.svg"
    Picture picture;
};

struct CaseBook {
    std::string id; ///< path relative to the folder
    EachLanguage<Desk> desks;
    std::vector<CasePicture> pictures;
    std::vector<CaseInquiry> inquiries;
    /// JSON of an inquiry to begin a new buyer with; it says what it assumes.
    EachLanguage<std::optional<std::string>> first;
};

class Cases {
  public:
    /// Looks for price books and inquiries, two folders deep. What is not sound is left out, of a
    /// price book a picture alone, and `left_out` says why. Throws Refused where there is no such
    /// folder, no sound lending data or no sound price book. A new buyer's inquiry is as of
    /// `today`.
    Cases(const std::filesystem::path& folder, const std::string& rates, Date today,
          Findings& left_out);

    /// Those with the most inquiries first, then by id.
    [[nodiscard]] const std::vector<CaseBook>& books() const { return books_; }
    [[nodiscard]] std::size_t inquiry_count() const;
    /// Where they were found, and the lending data, as they were asked for.
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    [[nodiscard]] const std::string& rates() const { return rates_; }

    /// The picture at an address, or nullptr.
    [[nodiscard]] const CasePicture* picture_at(std::string_view address) const;

    /// Reads an inquiry whose price_book is an id of this set. `desk` is then the one it was read
    /// against, with its texts in the language. Throws Refused.
    [[nodiscard]] Inquiry read(std::string body, Language language, const Desk*& desk) const;

  private:
    [[nodiscard]] const CaseBook* find(std::string_view id) const;

    std::filesystem::path folder_;
    std::string rates_;
    std::vector<CaseBook> books_;
};

} // namespace quoin::apps
