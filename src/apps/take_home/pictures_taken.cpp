// Choosing pictures.
#include "pictures_taken.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "edited.hpp"

namespace quoin::apps {
namespace {

/// What of an inquiry's picks is of an option: the pick, or nullptr where it is not chosen.
const Value* pick_of(const Value& inquiry, const std::string& option) {
    const Value* picks = inquiry.find("selections");
    if (picks == nullptr) return nullptr;
    for (const Value& pick : picks->items) {
        const bool named = pick.kind == Value::Kind::text ? pick.literal == option
                                                          : text_in(pick, "option") == option;
        if (named) return &pick;
    }
    return nullptr;
}

/// Whatever in a book can have a picture, and whether it is chosen.
using EachLook = std::function<void(Value& shown, bool chosen)>;

void each_look(Value& book, const Value& inquiry, const EachLook& look) {
    const auto each = [](Value& owner, std::string_view list, const auto& use) {
        Value* items = member(owner, list);
        if (items == nullptr) return;
        for (Value& item : items->items) use(item);
    };
    each(book, "plans", [&](Value& plan) {
        const bool own = text_in(plan, "id") == text_in(inquiry, "plan");
        each(plan, "elevations", [&](Value& elevation) {
            look(elevation, own && text_in(elevation, "id") == text_in(inquiry, "elevation"));
        });
    });
    each(book, "options", [&](Value& option) {
        const Value* pick = pick_of(inquiry, text_in(option, "id"));
        look(option, pick != nullptr);
        for (const auto& [list, name] : {std::pair{"levels", "level"}, {"choices", "choice"}}) {
            each(option, list, [&, name = name](Value& form) {
                look(form, pick != nullptr && text_in(*pick, name) == text_in(form, "id"));
            });
        }
    });
}

/// The files named, each once: those of what is chosen first.
std::vector<std::string> in_order(Value& book, const Value& inquiry) {
    std::vector<std::string> files;
    for (const bool of_chosen : {true, false}) {
        each_look(book, inquiry, [&](Value& shown, bool chosen) {
            const std::string file = text_in(shown, "picture");
            const bool there = std::find(files.begin(), files.end(), file) != files.end();
            if (!file.empty() && chosen == of_chosen && !there) files.push_back(file);
        });
    }
    return files;
}

/// Names that only the other files of a desk have.
bool is_no_name_of_pictures(const std::string& file) {
    const auto ending = std::filesystem::path(file).extension();
    return ending == ".json" || ending == ".csv";
}

} // namespace

PicturesTaken take_pictures(Value& book, const Value& inquiry,
                            const std::shared_ptr<const Source>& source, std::size_t most_bytes) {
    Findings not_shown; // what is wrong with a picture keeps it from going, as it does from serving
    std::vector<Picture> all = read_pictures({source, book}, not_shown);
    PicturesTaken taken;
    std::set<std::string> kept;
    for (const std::string& file : in_order(book, inquiry)) {
        const auto picture = std::find_if(all.begin(), all.end(),
                                          [&](const Picture& one) { return one.file == file; });
        const std::size_t bytes = picture == all.end() ? 0 : picture->source->text().size();
        if (picture == all.end() || is_no_name_of_pictures(file) ||
            taken.bytes + bytes > most_bytes) {
            taken.left_out.push_back(file);
            continue;
        }
        taken.bytes += bytes;
        kept.insert(file);
        taken.pictures.push_back(std::move(*picture));
        all.erase(picture);
    }
    each_look(book, inquiry, [&](Value& shown, bool) {
        if (!kept.contains(text_in(shown, "picture"))) take_out(shown, "picture");
    });
    return taken;
}

} // namespace quoin::apps
