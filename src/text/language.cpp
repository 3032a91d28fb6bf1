// Choosing the texts of one language.
#include <quoin/text/language.hpp>

#include <algorithm>
#include <optional>
#include <utility>

#include <quoin/text/ids.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/spot.hpp>

namespace quoin {
namespace {

bool is_in_languages(std::span<const Key> keys) {
    return std::any_of(keys.begin(), keys.end(),
                       [](const Key& key) { return is_language(key.name); });
}

void add_unknown(const Key& key, const Path& path, Findings& findings) {
    const std::vector<std::string> known = language_codes();
    Value named; // the message points at the name, not at the value
    named.place = key.place;
    findings.add(
        problems::language_unknown({&named, path}, key.name, nearest(key.name, known), known));
}

void check(const Spot& texts, Findings& findings) {
    for (std::size_t i = 0; i < texts.value->items.size(); ++i) {
        const Key& key = texts.value->keys[i];
        if (key.name == "comment") continue;
        const Value& text = texts.value->items[i];
        const Spot spot{&text, Path{&texts.path, key.name}};
        if (!is_language(key.name)) {
            add_unknown(key, spot.path, findings);
        } else if (text.kind != Value::Kind::text) {
            findings.add(problems::not_a_text(spot));
        }
    }
}

/// The place of the text in the language, or of the first that is no comment.
std::size_t chosen(std::span<const Key> keys, Language language) {
    std::size_t at = keys.front().name == "comment" ? 1 : 0; // there: a language is a member
    for (std::size_t i = 0; i < keys.size(); ++i) {
        if (keys[i].name == code_of(language)) at = i;
    }
    return at;
}

void choose(Value& value, const Path& path, Language language, Findings& findings) {
    if (is_in_languages(value.keys)) {
        check({&value, path}, findings);
        value = Value(std::move(value.items[chosen(value.keys, language)]));
        return;
    }
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        if (value.items[i].items.empty()) continue; // a plain value, or an object of nothing
        const Path inside = value.kind == Value::Kind::object
                                ? Path{&path, value.keys[i].name}
                                : Path{&path, {}, static_cast<int>(i)};
        choose(value.items[i], inside, language, findings);
    }
}

/// How well a column serves as `name` in a language, 0 best; nothing where it is another's.
std::optional<int> rank_of(std::string_view column, std::string_view name, Language language) {
    if (column == name) return 1;
    if (column.size() <= name.size() || column.substr(0, name.size()) != name ||
        column[name.size()] != '.') {
        return std::nullopt;
    }
    const auto meant = meaning_in(codes<Language>, column.substr(name.size() + 1));
    if (!meant) return std::nullopt;
    return *meant == language ? 0 : 2;
}

void choose_cell(Value& row, std::string_view name, Language language) {
    Value kept = row;
    kept.keys.clear();
    kept.items.clear();
    std::optional<int> best;
    std::size_t at = 0;
    for (std::size_t i = 0; i < row.keys.size(); ++i) {
        const auto rank = rank_of(row.keys[i].name, name, language);
        if (!rank) {
            kept.keys.push_back(row.keys[i]);
            kept.items.push_back(row.items[i]);
        } else if (!best || *rank < *best) {
            best = rank;
            at = i;
        }
    }
    if (!best) return;
    kept.keys.push_back({std::string(name), row.keys[at].place});
    kept.items.push_back(row.items[at]);
    row = std::move(kept);
}

} // namespace

std::vector<std::string> language_codes() {
    std::vector<std::string> list;
    for (const auto& language : codes<Language>) list.emplace_back(language.code);
    return list;
}

std::optional<std::size_t> sound_text_in(Language language, std::span<const Key> keys,
                                         std::span<const Value> items) {
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const bool sound = is_language(keys[i].name) && items[i].kind == Value::Kind::text;
        if (!sound && keys[i].name != "comment") return std::nullopt;
    }
    return chosen(keys, language);
}

void choose_texts(Document& document, Language language, Findings& findings) {
    if (document.languages_left) choose(document.root, Path{}, language, findings);
    document.languages_left = false;
}

void choose_column(Document& list, std::string_view name, Language language) {
    for (Value& row : list.root.items) choose_cell(row, name, language);
}

} // namespace quoin
