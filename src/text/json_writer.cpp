// Writing JSON.
#include <quoin/text/json_writer.hpp>

#include <algorithm>
#include <charconv>
#include <utility>

#include "utf8.hpp"
#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD

/// The letter after the backslash, or 0 where there is no short form.
char short_escape(char c) {
    switch (c) {
    case '"':
    case '\\':
        return c;
    case '\b':
        return 'b';
    case '\f':
        return 'f';
    case '\n':
        return 'n';
    case '\r':
        return 'r';
    case '\t':
        return 't';
    default:
        return 0;
    }
}

/// Letters that JSON has as they are: nearly all that is ever written.
bool is_plain_letter(char c) { return c >= 0x20 && c < 0x7F && c != '"' && c != '\\'; }

bool is_escaped(char c) { return static_cast<unsigned char>(c) < 0x20 || c == '"' || c == '\\'; }

void append_escaped(char c, std::string& out) {
    constexpr std::string_view digits = "0123456789abcdef";
    out += '\\';
    if (const char letter = short_escape(c)) {
        out += letter;
        return;
    }
    const auto byte = static_cast<unsigned char>(c);
    out += "u00";
    out += digits[byte >> 4];
    out += digits[byte & 0x0F];
}

/// Precondition: UTF-8.
void append_good(std::string_view text, std::string& out) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!is_escaped(text[i])) continue;
        out += text.substr(kept, i - kept);
        append_escaped(text[i], out);
        kept = i + 1;
    }
    out += text.substr(kept);
}

/// Of any bytes.
void append_any(std::string_view text, std::string& out) {
    for (;;) {
        const std::size_t good = first_bad_byte(text);
        append_good(text.substr(0, good), out);
        if (good == text.size()) return;
        out += replacement;
        text.remove_prefix(good + bad_bytes(text.substr(good)));
    }
}

} // namespace

void append_quoted(std::string_view text, std::string& out) {
    out += '"';
    if (std::all_of(text.begin(), text.end(), is_plain_letter)) {
        out += text;
    } else {
        append_any(text, out);
    }
    out += '"';
}

void JsonWriter::line() {
    out_ += '\n';
    out_.append(2 * filled_.size(), ' ');
}

void JsonWriter::next_place() {
    if (std::exchange(after_key_, false) || filled_.empty()) return;
    if (filled_.back()) out_ += ',';
    filled_.back() = true;
    line();
}

void JsonWriter::open(char bracket) {
    next_place();
    out_ += bracket;
    filled_.push_back(false);
}

void JsonWriter::close(char bracket) {
    ensure(!filled_.empty() && !after_key_, "JSON that closes more than it opened");
    const bool filled = filled_.back();
    filled_.pop_back();
    if (filled) line();
    out_ += bracket;
}

void JsonWriter::key(std::string_view name) {
    ensure(!filled_.empty() && !after_key_, "a member of no object");
    next_place();
    append_quoted(name, out_);
    out_ += ": ";
    after_key_ = true;
}

void JsonWriter::text(std::string_view value) {
    next_place();
    append_quoted(value, out_);
}

void JsonWriter::number(std::int64_t value) {
    next_place();
    char digits[24];
    const auto [end, error] = std::to_chars(digits, digits + sizeof digits, value);
    out_.append(digits, end);
}

void JsonWriter::truth(bool value) { literal(value ? "true" : "false"); }

void JsonWriter::null() { literal("null"); }

void JsonWriter::literal(std::string_view json) {
    next_place();
    out_ += json;
}

std::string JsonWriter::take() {
    ensure(filled_.empty() && !after_key_, "JSON that is not closed");
    return std::exchange(out_, {});
}

} // namespace quoin
