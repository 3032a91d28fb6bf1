// Typed reading of values, with a problem for each that is not what it should be.
#include <quoin/text/reader.hpp>

#include <algorithm>
#include <set>

#include <quoin/text/language.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {

namespace {

bool is_number_or_text(const Value& value) {
    return value.kind == Value::Kind::number || value.kind == Value::Kind::text;
}

bool is_id(std::string_view text) {
    if (text.empty() || text.front() == '-' || text.back() == '-') return false;
    return std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

/// Records a problem in place of a value.
std::nullopt_t none(Problem problem, Findings& findings) {
    findings.add(std::move(problem));
    return std::nullopt;
}

} // namespace

std::optional<Money> as_money(const Spot& spot, Findings& findings) {
    if (is_number_or_text(*spot.value)) {
        if (const auto money = Money::parse(spot.value->literal)) return money;
    }
    return none(problems::not_money(spot), findings);
}

std::optional<Decimal> as_decimal(const Spot& spot, Findings& findings) {
    if (is_number_or_text(*spot.value)) {
        if (const auto decimal = Decimal::parse(spot.value->literal)) return decimal;
    }
    return none(problems::not_a_decimal(spot), findings);
}

std::optional<Date> as_date(const Spot& spot, Findings& findings) {
    if (spot.value->kind == Value::Kind::text) {
        if (const auto date = Date::parse(spot.value->literal)) return date;
    }
    return none(problems::not_a_date(spot), findings);
}

std::optional<std::string> as_text(const Spot& spot, Findings& findings) {
    const std::string& text = spot.value->literal;
    if (spot.value->kind == Value::Kind::object)
        return none(problems::not_a_text_or_languages(spot, language_codes()), findings);
    if (spot.value->kind != Value::Kind::text) return none(problems::not_a_text(spot), findings);
    if (!is_plain(text)) return none(problems::text_not_plain(spot), findings);
    if (text.size() > caps::text && letters_in(text) > caps::text)
        return none(problems::text_too_long(spot, letters_in(text), caps::text), findings);
    return text;
}

void report_not_one_of(const Spot& spot, const std::vector<std::string>& names,
                       Findings& findings) {
    const std::string_view given = spot.value != nullptr ? spot.value->literal : std::string_view{};
    findings.add(problems::not_one_of(spot, names, nearest(given, names)));
}

Reader::Reader(const Value& value, Path path, Findings& findings)
    : value_(&value), path_(path), findings_(&findings), found_before_(findings.problems().size()) {
    if (value.kind != Value::Kind::object) {
        findings.add(problems::not_an_object(here()));
    }
}

const Value* Reader::raw(std::string_view key) {
    constexpr std::size_t usual = 32;
    if (names_.empty()) names_.reserve(usual);
    names_.push_back(key);
    const Value* member = value_->find(key);
    if (member != nullptr) asked_.set(static_cast<std::size_t>(member - value_->items.data()));
    return member;
}

bool Reader::has(std::string_view key) { return raw(key) != nullptr; }

Spot Reader::spot(std::string_view key) {
    const Value* member = raw(key);
    return member != nullptr ? at(*member, key) : here();
}

void Reader::missing(std::string_view key) {
    if (value_->kind == Value::Kind::object) {
        findings_->add(problems::member_missing(here(), key));
    }
}

const Value* Reader::required(std::string_view key) {
    const Value* member = raw(key);
    if (member == nullptr) missing(key);
    return member;
}

bool Reader::format_is(std::string_view name) {
    const std::string given = text("format");
    if (given == name) return true;
    if (!given.empty()) {
        findings_->add(problems::format_unknown(spot("format"), name));
    }
    return false;
}

std::string Reader::text(std::string_view key) {
    const Value* member = required(key);
    if (member == nullptr) return {};
    auto text = as_text(at(*member, key), *findings_);
    if (text && text->find_first_not_of(" \t\r\n") == std::string::npos) {
        findings_->add(problems::text_empty(at(*member, key)));
    }
    return std::move(text).value_or(std::string{});
}

std::string Reader::text_or(std::string_view key, std::string fallback) {
    const Value* member = raw(key);
    if (member == nullptr) return fallback;
    return as_text(at(*member, key), *findings_).value_or(std::move(fallback));
}

void Reader::hold_to_name(std::string_view key, const std::string& name) {
    if (name.size() <= caps::name) return;
    const std::size_t letters = letters_in(name);
    if (letters > caps::name) {
        findings_->add(problems::text_too_long(spot(key), letters, caps::name));
    }
}

std::string Reader::name(std::string_view key) {
    std::string name = text(key);
    hold_to_name(key, name);
    return name;
}

std::string Reader::name_or(std::string_view key, std::string fallback) {
    std::string name = text_or(key, std::move(fallback));
    hold_to_name(key, name);
    return name;
}

std::string Reader::id(std::string_view key) {
    std::string text = name(key);
    if (!text.empty() && !is_id(text)) findings_->add(problems::not_an_id(spot(key)));
    return text;
}

Money Reader::money(std::string_view key) {
    const Value* member = required(key);
    if (member == nullptr) return {};
    return as_money(at(*member, key), *findings_).value_or(Money{});
}

std::optional<Money> Reader::maybe_money(std::string_view key) {
    const Value* member = raw(key);
    if (member == nullptr) return std::nullopt;
    return as_money(at(*member, key), *findings_);
}

Decimal Reader::decimal(std::string_view key) {
    const Value* member = required(key);
    if (member == nullptr) return {};
    return as_decimal(at(*member, key), *findings_).value_or(Decimal{});
}

std::optional<Decimal> Reader::maybe_decimal(std::string_view key) {
    const Value* member = raw(key);
    if (member == nullptr) return std::nullopt;
    return as_decimal(at(*member, key), *findings_);
}

Rate Reader::rate(std::string_view key) {
    const Value* member = required(key);
    if (member == nullptr) return {};
    const auto percent = as_decimal(at(*member, key), *findings_);
    if (!percent) return {};
    const auto rate = Rate::percent(*percent);
    if (!rate) findings_->add(problems::not_a_rate(at(*member, key)));
    return rate.value_or(Rate{});
}

Date Reader::date(std::string_view key) {
    const Value* member = required(key);
    if (member == nullptr) return {};
    return as_date(at(*member, key), *findings_).value_or(Date{});
}

std::optional<Date> Reader::maybe_date(std::string_view key) {
    const Value* member = raw(key);
    if (member == nullptr) return std::nullopt;
    return as_date(at(*member, key), *findings_);
}

int Reader::whole(std::string_view key, int lowest, int highest) {
    return required(key) == nullptr ? lowest : maybe_whole(key, lowest, highest).value_or(lowest);
}

std::optional<int> Reader::maybe_whole(std::string_view key, int lowest, int highest) {
    const Value* member = raw(key);
    if (member == nullptr) return std::nullopt;
    const auto number = is_number_or_text(*member) ? Decimal::parse(member->literal) : std::nullopt;
    if (!number || !number->is_whole() || *number < Decimal::whole(lowest) ||
        *number > Decimal::whole(highest)) {
        findings_->add(problems::not_a_whole_number(at(*member, key), lowest, highest));
        return std::nullopt;
    }
    return static_cast<int>(number->rounded(Rounding::down));
}

bool Reader::flag_or(std::string_view key, bool fallback) {
    const Value* member = raw(key);
    if (member == nullptr) return fallback;
    const bool named = member->kind == Value::Kind::boolean || member->kind == Value::Kind::text;
    if (named && (member->literal == "true" || member->literal == "false")) {
        return member->literal == "true";
    }
    findings_->add(problems::not_true_or_false(at(*member, key)));
    return fallback;
}

std::vector<std::string> Reader::texts(std::string_view key) {
    std::vector<std::string> list;
    items(key, [&](const Spot& item) {
        if (auto text = as_text(item, *findings_)) list.push_back(std::move(*text));
    });
    return list;
}

void Reader::items(std::string_view key, const std::function<void(const Spot&)>& use,
                   std::size_t most) {
    const Value* member = raw(key);
    if (member == nullptr) return;
    const Path list_path{&path_, key};
    if (member->kind != Value::Kind::list) {
        findings_->add(problems::not_a_list({member, list_path}));
        return;
    }
    if (member->items.size() > most) {
        findings_->add(problems::too_many({member, list_path}, member->items.size(), most));
        return;
    }
    int index = 0;
    for (const Value& item : member->items) use({&item, Path{&list_path, {}, index++}});
}

void Reader::each(std::string_view key, const std::function<void(Reader&)>& use, bool required,
                  std::size_t most) {
    if (required && raw(key) == nullptr) missing(key);
    const auto read = [&](const Spot& item) {
        Reader reader(*item.value, item.path, *findings_);
        if (item.value->kind != Value::Kind::object) return;
        use(reader);
        reader.finish();
    };
    items(key, read, most);
}

void Reader::object(std::string_view key, const std::function<void(Reader&)>& use, bool required) {
    const Value* member = raw(key);
    if (member == nullptr) {
        if (required) missing(key);
        return;
    }
    Reader reader(*member, Path{&path_, key}, *findings_);
    if (member->kind != Value::Kind::object) return;
    use(reader);
    reader.finish();
}

void Reader::members(std::string_view key,
                     const std::function<void(const Key&, const Spot&)>& use) {
    const Value* member = raw(key);
    if (member == nullptr) return;
    const Path object_path{&path_, key};
    if (member->kind != Value::Kind::object) {
        findings_->add(problems::not_an_object({member, object_path}));
        return;
    }
    for (std::size_t i = 0; i < member->items.size(); ++i) {
        if (member->keys[i].name == "comment") continue;
        use(member->keys[i], {&member->items[i], Path{&object_path, member->keys[i].name}});
    }
}

void Reader::finish() {
    for (std::size_t i = 0; i < value_->keys.size(); ++i) {
        const Key& key = value_->keys[i];
        if (asked_.test(i) || key.name == "comment") continue;
        if (findings_->full()) return;
        Value named; // the message points at the name, not at the value
        named.place = key.place;
        const std::set<std::string> known(names_.begin(), names_.end());
        findings_->add(problems::member_unknown({&named, Path{&path_, key.name}}, key.name,
                                                nearest(key.name, {known.begin(), known.end()})));
    }
}

} // namespace quoin
