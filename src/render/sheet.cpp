// A sheet as HTML: two sides of paper, and how they look.
#include <quoin/answers/sheet.hpp>
#include <quoin/render/answers.hpp>

#include <quoin/render/written_mark.hpp>

#include "html.hpp"
#include "sheet_parts.hpp"
#include "sheet_style.hpp"
#include "words/sheet.hpp"

namespace quoin {
namespace {

/// The builder's color, and the foot of each page in the sheet's language: no name from outside
/// stands in a style.
std::string own_style(const SheetAnswer& answer, const Catalogue& say) {
    std::string style;
    if (!answer.color.empty()) style += ".sheet { --color: " + answer.color + "; }\n";
    return style + "@page { @bottom-left { content: \"" +
           say.sheet.foot(answer.quote.heading.as_of) +
           "\"; } @bottom-right { content: counter(page) \" " + std::string(say.sheet.of()) +
           " \" counter(pages); } }\n";
}

} // namespace

SheetHtml sheet_html(const SheetAnswer& answer, const Catalogue& say) {
    const Heading& h = answer.quote.heading;
    return {say.sheet.page(h.community, h.plan, h.lot), sheet_style + own_style(answer, say),
            element("div", sheet_of_home(answer, say), "paper-side") +
                element("div", sheet_of_loans(answer, say), "paper-side")};
}

std::string html_of(const SheetAnswer& answer, const Catalogue& say) {
    const SheetHtml sheet = sheet_html(answer, say);
    // Nothing may be fetched or run, wherever the file ends up.
    return "<!doctype html>\n<html lang=\"" + std::string(code_of(say.language)) +
           "\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
           "style-src 'unsafe-inline'\">\n" +
           std::string(sheet_mark) + "\n" + element("title", escaped(sheet.title)) + "<style>" +
           sheet.style + "</style>\n</head>\n" +
           element("body", "\n" + element("main", "\n" + sheet.sides, "sheet")) + "</html>\n";
}

} // namespace quoin
