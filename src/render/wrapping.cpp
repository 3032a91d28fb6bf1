// Breaking words into lines.
#include <quoin/render/table.hpp>

#include <algorithm>
#include <utility>

#include <quoin/text/plain.hpp>

namespace quoin {

std::size_t display_width(const std::string& text) { return letters_in(text); }

namespace {

/// With a mark that follows: "deck *" is never parted.
std::size_t word_end(const std::string& text, std::size_t from) {
    const std::size_t end = std::min(text.find(' ', from), text.size());
    if (end == from) return end;
    for (const std::string_view mark : {std::string_view(" *"), std::string_view(" \xC2\xB7")}) {
        const std::size_t after = end + mark.size();
        const bool alone = after == text.size() || (after < text.size() && text[after] == ' ');
        if (alone && text.compare(end, mark.size(), mark) == 0) return after;
    }
    return end;
}

/// So much of a word as fits; at a mark inside of it where there is one in its last half.
std::size_t break_of(const std::string& word, std::size_t width) {
    std::size_t letters = 0;
    std::size_t at = 0;
    std::size_t mark = 0;
    for (; at < word.size() && letters < width; ++letters) {
        const std::string_view letter = letter_at(word, at);
        at += letter.size();
        if (letters >= width / 2 && std::string_view("/-_:").find(letter) != std::string::npos) {
            mark = at;
        }
    }
    return mark > 0 ? mark : at;
}

/// Lines of words: how wide the first may be, and all others; whether a word may be broken.
struct LineBreaks {
    std::size_t first;
    std::size_t rest;
    bool breaks;

    std::vector<std::string> done = {};
    std::string line = {};

    [[nodiscard]] std::size_t room() const { return done.empty() ? first : rest; }
    void end_line() { done.push_back(std::exchange(line, {})); }
    void add(std::string word) {
        const bool fits = line.empty() || display_width(line) + 1 + display_width(word) <= room();
        if (!fits) end_line();
        while (breaks && line.empty() && room() > 0 && display_width(word) > room()) {
            const std::size_t at = break_of(word, room());
            line = word.substr(0, at);
            word.erase(0, at);
            end_line();
        }
        line += (line.empty() ? "" : " ") + word;
    }
    std::vector<std::string> of(const std::string& text) {
        for (std::size_t i = 0; i < text.size();) {
            const std::size_t end = word_end(text, i);
            add(text.substr(i, end - i));
            i = end + 1;
        }
        if (!line.empty() || done.empty()) end_line();
        return std::move(done);
    }
};

std::size_t shorter(std::size_t width, std::size_t by) { return width > by ? width - by : 0; }

} // namespace

std::vector<std::string> wrapped(const std::string& text, std::size_t width) {
    return LineBreaks{width, width, false}.of(text);
}

std::size_t lead_in(const std::string& text) {
    return std::min(text.find_first_not_of(' '), text.size());
}

std::vector<std::string> hung(const std::string& text, std::size_t width, bool breaks) {
    if (display_width(text) <= width) return {text};
    const std::string lead(lead_in(text), ' ');
    LineBreaks lines{shorter(width, lead.size()), shorter(width, lead.size() + 2), breaks};
    std::vector<std::string> list = lines.of(text.substr(lead.size()));
    for (std::size_t i = 0; i < list.size(); ++i) {
        list[i].insert(0, i == 0 ? lead : lead + "  ");
    }
    return list;
}

std::string lines_of(const Indented& said, std::size_t width) {
    const std::size_t spare = width < usual_width ? 0 : said.spare;
    const std::size_t room = shorter(width, spare + display_width(said.rest));
    std::string out;
    for (const std::string& line : LineBreaks{room, room, true}.of(said.words)) {
        out += (out.empty() ? said.first : said.rest) + line + "\n";
    }
    return out;
}

} // namespace quoin
