// Reading what stands behind a rule, and its days.
#include <quoin/lending/dated.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {
bool Dated::meets(const Dated& other) const {
    const bool ends_first = until && other.effective && *until <= *other.effective;
    const bool begins_after = effective && other.until && *other.until <= *effective;
    return !ends_first && !begins_after;
}

void read_dated(Reader& item, Dated& rule) {
    rule.status = item.word<Status>("status");
    rule.source = item.text("source");
    rule.effective = item.maybe_date("effective");
    rule.until = item.maybe_date("until");
    if (rule.effective && rule.until && *rule.until <= *rule.effective) {
        item.report(problems::dates_reversed(item.spot("until"), "effective", "until"));
    }
    if (item.has("after") && !item.has("until")) {
        item.report(problems::after_without_until(item.spot("after")));
    }
    rule.after = item.word_or("after", After::unknown);
}

} // namespace quoin
