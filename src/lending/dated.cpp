// Reading what stands behind a rule, and its days.
#include <quoin/lending/dated.hpp>

#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

const Words<Status> status_words = {{"published", Status::published},
                                    {"from memory", Status::from_memory},
                                    {"common practice", Status::common_practice},
                                    {"sample", Status::sample}};

const Words<After> after_words = {
    {"unknown", After::unknown}, {"continues", After::continues}, {"ends", After::ends}};

} // namespace

std::string_view name_of(Status status) { return name_in(status_words, status); }
std::string_view name_of(After after) { return name_in(after_words, after); }

bool Dated::meets(const Dated& other) const {
    const bool ends_first = until && other.effective && *until <= *other.effective;
    const bool begins_after = effective && other.until && *other.until <= *effective;
    return !ends_first && !begins_after;
}

void read_dated(Reader& item, Dated& rule) {
    rule.status = item.word("status", status_words);
    rule.source = item.text("source");
    rule.effective = item.maybe_date("effective");
    rule.until = item.maybe_date("until");
    if (rule.effective && rule.until && *rule.until <= *rule.effective) {
        item.findings().add(problems::dates_reversed(item.spot("until"), "effective", "until"));
    }
    if (item.has("after") && !item.has("until")) {
        item.findings().add(problems::after_without_until(item.spot("after")));
    }
    rule.after = item.word_or("after", after_words, After::unknown);
}

} // namespace quoin
