// Media types of what is sent, and where pictures are.
#pragma once

#include <string_view>

#include <quoin/questions/questions.hpp>

#include "../picture_header.hpp"

namespace quoin::apps {

inline constexpr std::string_view json_type = "application/json";
inline constexpr std::string_view pictures_path = "/api/pictures/";
inline constexpr std::string_view html_type = "text/html; charset=utf-8";

[[nodiscard]] constexpr std::string_view media_type_of(Form form) {
    switch (form) {
    case Form::json:
        return json_type;
    case Form::text:
    case Form::brief:
        return "text/plain; charset=utf-8";
    case Form::csv:
        return "text/csv; charset=utf-8";
    case Form::html:
        return html_type;
    case Form::workbook:
        return "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    }
    return {};
}

/// Fixed by what the bytes are, never by a file's name.
[[nodiscard]] constexpr std::string_view media_type_of(PictureKind kind) {
    switch (kind) {
    case PictureKind::png:
        return "image/png";
    case PictureKind::jpeg:
        return "image/jpeg";
    case PictureKind::webp:
        return "image/webp";
    case PictureKind::svg:
        return "image/svg+xml";
    }
    return {};
}

/// "png", as in "image/png" and at the end of an address; "svg" of the other kind.
[[nodiscard]] constexpr std::string_view ending_of(PictureKind kind) {
    constexpr std::string_view image = "image/";
    return kind == PictureKind::svg ? "svg" : media_type_of(kind).substr(image.size());
}

} // namespace quoin::apps
