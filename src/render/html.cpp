// Writing HTML.
#include "html.hpp"

namespace quoin {

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

std::string element(std::string_view tag, std::string_view inner, std::string_view kind) {
    std::string out = "<" + std::string(tag);
    if (!kind.empty()) out += " class=\"" + std::string(kind) + "\"";
    return out + ">" + std::string(inner) + "</" + std::string(tag) + ">\n";
}

std::string text_element(std::string_view tag, std::string_view text, std::string_view kind) {
    return element(tag, escaped(text), kind);
}

std::string section(std::string_view heading, const std::string& inner, std::string_view kind) {
    if (inner.empty()) return {};
    return element("section", text_element("h2", heading) + inner, kind);
}

std::string figure_row(std::string_view label, const std::vector<std::string>& figures,
                       std::string_view kind) {
    std::string cells = "<th scope=\"row\">" + escaped(label) + "</th>";
    for (const std::string& figure : figures) cells += "<td>" + escaped(figure) + "</td>";
    return element("tr", cells, kind);
}

std::string text_list(const std::vector<std::string>& texts, std::string_view kind) {
    std::string items;
    for (const std::string& text : texts) items += text_element("li", text);
    return items.empty() ? items : element("ul", items, kind);
}

} // namespace quoin
