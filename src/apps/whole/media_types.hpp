// Media types of what is sent.
#pragma once

#include <string_view>

#include <quoin/questions/questions.hpp>

namespace quoin::apps {

inline constexpr std::string_view json_type = "application/json";
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

} // namespace quoin::apps
