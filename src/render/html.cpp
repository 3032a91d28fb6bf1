// Writing HTML.
#include "html.hpp"

#include <quoin/text/plain.hpp>

namespace quoin {
namespace {

/// Letters of scripts that run from the right to the left (Unicode Standard Annex 9, types R and
/// AL), by their blocks.
bool runs_left(std::string_view letter) {
    const char32_t code = code_point(letter);
    return (code >= 0x590 && code <= 0x8FF) || (code >= 0xFB1D && code <= 0xFDFF) ||
           (code >= 0xFE70 && code <= 0xFEFE) || (code >= 0x10800 && code <= 0x10FFF) ||
           (code >= 0x1E800 && code <= 0x1EFFF);
}

/// The end of a stretch of such letters, with the blanks between them.
std::size_t stretch_end(std::string_view text, std::size_t begin) {
    std::size_t end = begin;
    for (std::size_t i = begin; i < text.size();) {
        const std::string_view letter = letter_at(text, i);
        if (letter != " " && !runs_left(letter)) break;
        i += letter.size();
        if (letter != " ") end = i;
    }
    return end;
}

std::string isolated(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const std::string_view letter = letter_at(text, i);
        const std::size_t end = runs_left(letter) ? stretch_end(text, i) : i;
        if (end > i) {
            out += "<bdi>" + std::string(text.substr(i, end - i)) + "</bdi>";
            i = end;
        } else {
            out += letter;
            i += letter.size();
        }
    }
    return out;
}

} // namespace

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += c;
        }
    }
    return out;
}

std::string in_element(std::string_view text) { return isolated(escaped(text)); }

std::string element(std::string_view tag, std::string_view inner, std::string_view kind) {
    std::string out = "<" + std::string(tag);
    if (!kind.empty()) out += " class=\"" + std::string(kind) + "\"";
    return out + ">" + std::string(inner) + "</" + std::string(tag) + ">\n";
}

std::string text_element(std::string_view tag, std::string_view text, std::string_view kind) {
    return element(tag, in_element(text), kind);
}

std::string section(std::string_view heading, const std::string& inner, std::string_view kind) {
    if (inner.empty()) return {};
    return element("section", text_element("h2", heading) + inner, kind);
}

std::string figure_row(std::string_view label, const std::vector<std::string>& figures,
                       std::string_view kind) {
    std::string cells = "<th scope=\"row\">" + in_element(label) + "</th>";
    for (const std::string& figure : figures) cells += "<td>" + in_element(figure) + "</td>";
    return element("tr", cells, kind);
}

std::string described(std::string_view name, std::string_view value) {
    return element("div", text_element("dt", name) + text_element("dd", value));
}

std::string text_list(const std::vector<std::string>& texts, std::string_view kind) {
    std::string items;
    for (const std::string& text : texts) items += text_element("li", text);
    return items.empty() ? items : element("ul", items, kind);
}

} // namespace quoin
