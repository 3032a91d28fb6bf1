// JSON text to values with places: the library reads the grammar, this keeps literal and position.
#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <span>

#include <nlohmann/json.hpp>

#include <quoin/text/json_writer.hpp>
#include <quoin/text/language.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/value.hpp>

namespace quoin {
namespace {

/// Feeds the parser a byte at a time and remembers how far it has read. It passes over the blanks
/// that a line is indented by, which no text holds: a line end stands outside of every text.
class CountingIterator {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    CountingIterator(const char* at, const char* end, const char** furthest)
        : at_(at), end_(end), furthest_(furthest) {}
    reference operator*() const { return *at_; }
    CountingIterator& operator++() {
        if (*at_++ == '\n') at_ = std::find_if(at_, end_, [](char c) { return c != ' '; });
        *furthest_ = at_;
        return *this;
    }
    CountingIterator operator++(int) {
        CountingIterator before = *this;
        ++*this;
        return before;
    }
    friend bool operator==(const CountingIterator& a, const CountingIterator& b) {
        return a.at_ == b.at_;
    }

  private:
    const char* at_;
    const char* end_;
    const char** furthest_;
};

/// Builds the tree from the parser's events. A token begins after the last one, past blanks, commas
/// and colons; its end is found from the text itself, since the parser may have read one byte more.
class TreeBuilder : public nlohmann::json_sax<nlohmann::json> {
  public:
    TreeBuilder(const Source& source, const char* const* furthest, Findings& findings,
                std::size_t most_values, std::optional<Language> texts_in)
        : source_(source), furthest_(furthest), findings_(findings), room_(most_values),
          most_values_(most_values), texts_in_(texts_in) {}

    bool null() override { return add_literal(Value::Kind::null); }
    bool boolean(bool) override { return add_literal(Value::Kind::boolean); }
    bool number_integer(number_integer_t) override { return add_literal(Value::Kind::number); }
    bool number_unsigned(number_unsigned_t) override { return add_literal(Value::Kind::number); }
    bool number_float(number_float_t, const string_t&) override {
        return add_literal(Value::Kind::number);
    }
    bool string(string_t& text) override { return add(Value::Kind::text, text_token(), text); }
    bool binary(binary_t&) override { return false; }
    bool key(string_t& name) override;
    bool start_object(std::size_t) override { return open(Value::Kind::object); }
    bool start_array(std::size_t) override { return open(Value::Kind::list); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool parse_error(std::size_t, const std::string&,
                     const nlohmann::json::exception& error) override;

    Value take() { return std::move(root_); }
    [[nodiscard]] bool languages_left() const { return languages_left_; }

  private:
    /// An object or list that is not closed yet.
    struct Open {
        Value::Kind kind;
        Span place;
        std::size_t first_item;                        ///< in items_
        std::size_t first_key;                         ///< in keys_
        std::set<std::string, std::less<>> names = {}; ///< of its keys, where there are many
        bool in_languages = false;                     ///< one of its members has a language's name
    };

    std::size_t token_begin();
    Span token();
    Span text_token();
    [[nodiscard]] std::size_t read() const {
        return static_cast<std::size_t>(*furthest_ - source_.text().data());
    }
    [[nodiscard]] Span stretch(std::size_t begin, std::size_t end) const {
        return {&source_, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end)};
    }
    [[nodiscard]] Span byte(std::size_t at) const { return stretch(at, at + 1); }
    bool add(Value::Kind kind, Span place, std::string_view literal);
    bool add_literal(Value::Kind kind);
    bool open(Value::Kind kind);
    bool close();
    bool keep_one_language(const Open& closing);
    bool has_room(Span place);
    bool is_known(std::string_view name);
    void put(Value value);

    const Source& source_;
    const char* const* furthest_;
    Findings& findings_;
    Value root_;
    std::vector<Open> open_;
    // Of all that is open; what closes takes its own from the ends, in one piece.
    std::vector<Value> items_;
    std::vector<Key> keys_;
    std::size_t offset_ = 0; ///< end of the last token
    std::size_t room_;       ///< values that may still come
    std::size_t most_values_;
    std::optional<Language> texts_in_; ///< of texts in several, the one that is kept
    bool languages_left_ = false;
};

std::size_t string_end(std::string_view text, std::size_t begin) {
    std::size_t i = begin + 1;
    while (i < text.size() && text[i] != '"') i += text[i] == '\\' ? 2U : 1U;
    return std::min(i + 1, text.size());
}

/// Whether a character stands between tokens and is none.
bool is_between(char c) {
    return c == ' ' || c == '\n' || c == ',' || c == ':' || c == '\t' || c == '\r';
}

bool is_bracket(char c) { return c == '{' || c == '}' || c == '[' || c == ']'; }

std::size_t TreeBuilder::token_begin() {
    const std::string_view text = source_.text();
    std::size_t begin = offset_ == 0 && text.substr(0, 3) == "\xEF\xBB\xBF" ? 3 : offset_;
    while (begin < text.size() && is_between(text[begin])) ++begin;
    return begin;
}

Span TreeBuilder::token() {
    const std::string_view text = source_.text();
    const std::size_t begin = token_begin();
    std::size_t end = begin + 1;
    if (begin < text.size() && text[begin] == '"') {
        end = string_end(text, begin);
    } else if (begin < text.size() && !is_bracket(text[begin])) {
        end = begin;
        while (end < text.size() && !is_between(text[end]) && !is_bracket(text[end]) &&
               text[end] != '"') {
            ++end;
        }
    }
    offset_ = end;
    return stretch(begin, end);
}

/// Of a text that was just read: the parser has read to its end, and no further.
Span TreeBuilder::text_token() {
    const std::size_t begin = token_begin();
    offset_ = read();
    return stretch(begin, offset_);
}

void TreeBuilder::put(Value value) {
    if (open_.empty()) {
        root_ = std::move(value);
    } else {
        items_.push_back(std::move(value));
    }
}

bool TreeBuilder::has_room(Span place) {
    if (room_ > 0) {
        --room_;
        return true;
    }
    findings_.add(problems::too_many_values(place, most_values_));
    return false;
}

bool TreeBuilder::add(Value::Kind kind, Span place, std::string_view literal) {
    if (!has_room(place)) return false;
    Value value;
    value.kind = kind;
    value.place = place;
    value.literal = literal;
    put(std::move(value));
    return true;
}

bool TreeBuilder::add_literal(Value::Kind kind) {
    const Span place = token();
    return add(kind, place, source_.text().substr(place.begin, place.end - place.begin));
}

/// Whether the open object has a member of this name; notes it.
bool TreeBuilder::is_known(std::string_view name) {
    constexpr std::size_t few = 16; // are looked through faster than they are sorted
    Open& object = open_.back();
    const auto first = keys_.begin() + static_cast<std::ptrdiff_t>(object.first_key);
    if (keys_.size() - object.first_key < few) {
        return std::any_of(first, keys_.end(), [&](const Key& key) { return key.name == name; });
    }
    if (object.names.empty()) {
        for (auto key = first; key != keys_.end(); ++key) object.names.insert(key->name);
    }
    return !object.names.emplace(name).second;
}

bool TreeBuilder::key(string_t& name) {
    const Span place = text_token();
    if (keys_.size() - open_.back().first_key == caps::members) {
        findings_.add(problems::too_many_members(place, caps::members));
        return false;
    }
    if (is_known(name)) {
        findings_.add(problems::member_repeated(place, name));
        return false;
    }
    keys_.push_back({name, place});
    if (name.size() == 2 && is_language(name)) open_.back().in_languages = true;
    return true;
}

bool TreeBuilder::open(Value::Kind kind) {
    const Span place = token();
    if (open_.size() == static_cast<std::size_t>(deepest_nesting)) {
        findings_.add(problems::too_deep(place, deepest_nesting));
        return false;
    }
    if (!has_room(place)) return false;
    open_.push_back({kind, place, items_.size(), keys_.size()});
    return true;
}

/// The end of a list, as a list of its own.
template <class Item>
std::vector<Item> taken_from(std::vector<Item>& all, std::size_t first) {
    const auto begin = all.begin() + static_cast<std::ptrdiff_t>(first);
    std::vector<Item> own(std::make_move_iterator(begin), std::make_move_iterator(all.end()));
    all.erase(begin, all.end());
    return own;
}

/// Keeps of a sound text in several languages only the one asked for, before an object is made.
/// What stands where a text should, within another such object, is left to be told.
bool TreeBuilder::keep_one_language(const Open& closing) {
    const bool within = open_.size() > 1 && open_[open_.size() - 2].in_languages;
    if (!texts_in_ || within) return false;
    const auto chosen = sound_text_in(*texts_in_, std::span(keys_).subspan(closing.first_key),
                                      std::span(items_).subspan(closing.first_item));
    if (!chosen) return false;
    const std::size_t at = closing.first_item;
    if (*chosen != 0) items_[at] = std::move(items_[at + *chosen]);
    items_.resize(at + 1);
    keys_.resize(closing.first_key);
    return true;
}

bool TreeBuilder::close() {
    const Open& closing = open_.back();
    if (closing.in_languages && keep_one_language(closing)) {
        token();
        open_.pop_back();
        if (open_.empty()) root_ = std::move(items_.front());
        return true;
    }
    languages_left_ = languages_left_ || closing.in_languages;
    Value value;
    value.kind = closing.kind;
    value.place = closing.place;
    value.place.end = token().end;
    value.items = taken_from(items_, closing.first_item);
    value.keys = taken_from(keys_, closing.first_key);
    open_.pop_back();
    put(std::move(value));
    return true;
}

/// The part of a text between two marks; empty where the first is missing.
std::string between(std::string_view text, std::string_view from, std::string_view to) {
    const std::size_t begin = text.find(from);
    if (begin == std::string_view::npos) return {};
    const std::string_view rest = text.substr(begin + from.size());
    return std::string(rest.substr(0, rest.find(to)));
}

bool TreeBuilder::parse_error(std::size_t, const std::string& last,
                              const nlohmann::json::exception& error) {
    const std::string_view text = source_.text();
    const std::size_t last_byte = std::min(read() == 0 ? 0 : read() - 1, text.size());
    const std::string_view what = error.what();
    constexpr int number_overflow = 406;
    if (error.id == number_overflow) {
        findings_.add(problems::number_too_large(token(), last));
    } else if (what.find("UTF-8") != std::string_view::npos) {
        findings_.add(problems::not_utf8(byte(last_byte)));
    } else {
        const std::string expected = between(what, "; expected ", "\n");
        std::string found = between(what, "unexpected ", ";");
        const bool mark = found == "','" || found == "':'"; // which token() passes over
        const Span place = mark ? byte(last_byte) : token();
        if (read() >= text.size() && what.find("missing closing") != std::string_view::npos) {
            findings_.add(expected.empty() ? problems::text_not_closed_here(place)
                                           : problems::text_not_closed(place, expected));
            return false;
        }
        if (found.empty()) found = between(what, " - ", ";");
        findings_.add(expected.empty() ? problems::not_json_here(place, found)
                                       : problems::not_json(place, found, expected));
    }
    return false;
}

} // namespace

const Value* Value::find(std::string_view key) const {
    for (std::size_t i = 0; i < keys.size(); ++i) {
        if (keys[i].name == key) return &items[i];
    }
    return nullptr;
}

Document parse_json(std::shared_ptr<const Source> source, Findings& findings,
                    std::size_t most_values, std::optional<Language> texts_in) {
    const std::string_view text = source->text();
    const char* furthest = text.data();
    TreeBuilder builder(*source, &furthest, findings, most_values, texts_in);
    const char* end = text.data() + text.size();
    const bool good = nlohmann::json::sax_parse(CountingIterator(text.data(), end, &furthest),
                                                CountingIterator(end, end, &furthest), &builder);
    const std::size_t null_byte = text.find('\0'); // the parser takes it for the text's end
    const bool whole = good && null_byte == std::string_view::npos;
    if (good && !whole) {
        findings.add(problems::null_byte({source.get(), static_cast<std::uint32_t>(null_byte),
                                          static_cast<std::uint32_t>(null_byte + 1)}));
    }
    Document document{std::move(source), {}};
    if (whole) {
        document.root = builder.take();
        document.languages_left = builder.languages_left();
    }
    return document;
}

void write_json(const Value& value, JsonWriter& json) {
    switch (value.kind) {
    case Value::Kind::object:
        return json.object([&] {
            for (std::size_t i = 0; i < value.items.size(); ++i) {
                json.key(value.keys[i].name);
                write_json(value.items[i], json);
            }
        });
    case Value::Kind::list:
        return json.list([&] {
            for (const Value& item : value.items) write_json(item, json);
        });
    case Value::Kind::text:
        return json.text(value.literal);
    case Value::Kind::null:
        return json.null();
    default:
        return json.literal(value.literal);
    }
}

std::string write_json(const Value& value) {
    JsonWriter json;
    write_json(value, json);
    return json.take();
}

} // namespace quoin
