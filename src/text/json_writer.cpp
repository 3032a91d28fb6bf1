// Writing JSON.
#include <quoin/text/json_writer.hpp>

#include <algorithm>
#include <array>
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

/// Bytes that JSON has as they are: nearly all that is ever written.
constexpr auto plain_bytes = [] {
    std::array<bool, 256> plain{};
    for (std::size_t c = 0x20; c < 0x7F; ++c) plain[c] = c != '"' && c != '\\';
    return plain;
}();

bool has_no_escape(std::string_view text) {
    bool plain = true;
    for (const char c : text) plain &= plain_bytes[static_cast<unsigned char>(c)];
    return plain;
}

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

constexpr std::size_t page_bytes = 32 * 1024;

} // namespace

void JsonWriter::close_page() {
    if (!page_) return;
    const auto used = static_cast<std::size_t>(at_ - page_.get());
    full_.push_back({std::move(page_), used});
}

void JsonWriter::turn_page(std::size_t bytes) {
    close_page();
    const std::size_t size = std::max(bytes, page_bytes);
    page_.reset(new char[size]); // not cleared: what is in it is written first
    at_ = page_.get();
    end_ = at_ + size;
}

inline void JsonWriter::room(std::size_t bytes) {
    if (static_cast<std::size_t>(end_ - at_) < bytes) turn_page(bytes);
}

inline void JsonWriter::put(char c) {
    room(1);
    *at_++ = c;
}

inline void JsonWriter::put(std::string_view text) {
    room(text.size());
    at_ = std::copy(text.begin(), text.end(), at_);
}

void JsonWriter::quoted(std::string_view text) {
    if (!has_no_escape(text)) {
        std::string escaped;
        append_any(text, escaped);
        put('"');
        put(escaped);
        put('"');
        return;
    }
    room(text.size() + 2);
    *at_++ = '"';
    at_ = std::copy(text.begin(), text.end(), at_);
    *at_++ = '"';
}

void JsonWriter::line() {
    const std::size_t indent = 2 * filled_.size();
    room(indent + 1);
    *at_++ = '\n';
    at_ = std::fill_n(at_, indent, ' ');
}

void JsonWriter::next_place() {
    if (std::exchange(after_key_, false) || filled_.empty()) return;
    if (std::exchange(filled_.back(), true)) put(',');
    line();
}

void JsonWriter::open(char bracket) {
    next_place();
    put(bracket);
    filled_.push_back(false);
}

void JsonWriter::close(char bracket) {
    ensure(!filled_.empty() && !after_key_, "JSON that closes more than it opened");
    const bool filled = filled_.back();
    filled_.pop_back();
    if (filled) line();
    put(bracket);
}

void JsonWriter::key(std::string_view name) {
    ensure(!filled_.empty() && !after_key_, "a member of no object");
    next_place();
    quoted(name);
    put(": ");
    after_key_ = true;
}

void JsonWriter::text(std::string_view value) {
    next_place();
    quoted(value);
}

void JsonWriter::number(std::int64_t value) {
    constexpr std::size_t longest = 20; // -9223372036854775808
    next_place();
    room(longest);
    at_ = std::to_chars(at_, at_ + longest, value).ptr;
}

void JsonWriter::truth(bool value) { literal(value ? "true" : "false"); }

void JsonWriter::null() { literal("null"); }

void JsonWriter::literal(std::string_view json) {
    next_place();
    put(json);
}

std::string JsonWriter::take() {
    ensure(filled_.empty() && !after_key_, "JSON that is not closed");
    close_page();
    std::size_t bytes = 0;
    for (const Page& page : full_) bytes += page.used;
    std::string text;
    text.reserve(bytes + 1); // and the end of the line, which most add
    for (const Page& page : full_) text.append(page.bytes.get(), page.used);
    *this = JsonWriter{};
    return text;
}

} // namespace quoin
