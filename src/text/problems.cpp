// The wording of every message about a person's input.
#include <quoin/text/problems.hpp>

#include <fmt/format.h>

#include "utf8.hpp"
#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>

namespace quoin {

namespace {

constexpr std::size_t widest_excerpt = 96;

/// Puts line, column and excerpt of a place into a problem; a very long line is cut around it.
void locate(Problem& problem, const Span& place) {
    if (place.source == nullptr) return;
    const auto position = place.source->position(place.begin);
    problem.file = place.source->name();
    problem.line = position.line;
    problem.column = position.column;
    const std::string_view line = place.source->line(position.line);
    const auto column = static_cast<std::size_t>(position.column - 1);
    const std::size_t from = line.size() > widest_excerpt && column > widest_excerpt / 2
                                 ? column - widest_excerpt / 2
                                 : 0;
    problem.excerpt_from = static_cast<int>(from);
    problem.excerpt = made_printable(line.substr(std::min(from, line.size()), widest_excerpt));
    const std::size_t room = from + problem.excerpt.size();
    const std::size_t width = place.end > place.begin ? place.end - place.begin : 1;
    problem.width = static_cast<int>(std::min(width, room > column ? room - column : 1));
}

Problem at(Span place, std::string_view id, std::string found, std::string expected,
           std::string advice) {
    Problem problem;
    problem.id = id;
    locate(problem, place);
    problem.found = cut(found, caps::line);
    problem.expected = cut(expected, caps::line);
    problem.advice = cut(advice, caps::line);
    return problem;
}

Problem at(const Spot& spot, std::string_view id, std::string found, std::string expected,
           std::string advice) {
    const Span place = spot.value != nullptr ? spot.value->place : Span{};
    Problem problem = at(place, id, std::move(found), std::move(expected), std::move(advice));
    problem.path = cut(spot.path.pointer(), caps::line);
    return problem;
}

Problem of_file(std::string file, std::string_view id, std::string found, std::string expected,
                std::string advice) {
    Problem problem = at(Span{}, id, std::move(found), std::move(expected), std::move(advice));
    problem.file = std::move(file);
    return problem;
}

/// A person's own text as a message repeats it: a line of it at most, and no control characters.
std::string repeated(std::string_view text) { return made_visible(cut(text, caps::quoted)); }

/// A value as it stands, short enough to print.
std::string shown(const Value& value) {
    switch (value.kind) {
    case Value::Kind::list:
        return "a list";
    case Value::Kind::object:
        return "an object";
    case Value::Kind::null:
        return "null";
    default:
        break;
    }
    const bool quoted = value.kind == Value::Kind::text;
    const std::string text = repeated(value.literal);
    return quoted ? fmt::format("\"{}\"", text) : text;
}

std::string shown(const Spot& spot) {
    return spot.value != nullptr ? shown(*spot.value) : std::string("nothing");
}

std::string with_article(std::string_view noun) {
    const bool vowel = std::string_view("aeiou").find(noun.front()) != std::string_view::npos;
    return fmt::format("{} {}", vowel ? "an" : "a", noun);
}

std::string did_you_mean(const std::string& near, std::string_view otherwise) {
    return near.empty() ? std::string(otherwise)
                        : fmt::format("did you mean \"{}\"?", repeated(near));
}

std::string joined(const std::vector<std::string>& names) {
    constexpr std::size_t most_named = 12;
    std::string text;
    for (std::size_t i = 0; i < names.size() && i < most_named; ++i) {
        text += fmt::format("{}\"{}\"", i == 0 ? "" : ", ", repeated(names[i]));
    }
    return names.size() > most_named ? text + ", ..." : text;
}

} // namespace

namespace problems {

const std::vector<std::string_view>& all_ids() {
    static const std::vector<std::string_view> ids = {
        "file-missing",
        "file-unreadable",
        "file-too-large",
        "file-unwritable",
        "file-not-ours",
        "no-temporary-room",
        "not-json",
        "number-too-large",
        "not-utf8",
        "too-deep",
        "too-many",
        "too-many-problems",
        "member-repeated",
        "csv-cells",
        "csv-quote",
        "csv-column-repeated",
        "wishes-exclude",
        "wrong-kind",
        "member-missing",
        "member-unknown",
        "format-unknown",
        "not-money",
        "not-a-decimal",
        "not-a-rate",
        "not-a-date",
        "not-a-day",
        "not-a-whole-number",
        "out-of-range",
        "not-one-of",
        "not-an-id",
        "text-empty",
        "text-not-plain",
        "text-too-long",
        "members-conflict",
        "id-repeated",
        "name-unknown",
        "not-a-band",
        "bands-overlap",
        "bands-gap",
        "dates-overlap",
        "requires-cycle",
        "levels-not-rising",
        "package-in-package",
        "dates-reversed",
        "ladder-not-falling",
        "adjustable-out-of-bounds",
        "book-expired",
        "book-not-yet",
        "lot-not-free",
        "plan-not-on-lot",
        "option-not-here",
        "option-needs",
        "options-exclude",
        "past-cutoff",
        "selected-twice",
        "pick-incomplete",
        "quantity-not-allowed",
        "incentive-not-here",
        "scenario-repeated",
        "rates-missing",
        "not-a-fraction",
        "no-single-rate",
        "credit-without-use",
        "credit-use-not-allowed",
        "no-model",
        "scenario-unknown",
        "scenario-barred",
        "no-means",
        "option-unknown",
        "option-number",
        "payment-input",
        "no-price-book",
        "cannot-listen",
    };
    return ids;
}

Problem file_missing(std::string file, std::string_view what, std::string near) {
    return of_file(std::move(file), "file-missing", "no such file",
                   fmt::format("{} that can be read", what),
                   did_you_mean(near, "check the name and the folder"));
}

Problem file_unreadable(std::string file, std::string_view why) {
    return of_file(std::move(file), "file-unreadable", std::string(why), "a file that can be read",
                   "check the file's permissions");
}

Problem file_is_folder(std::string file) {
    return of_file(std::move(file), "file-unreadable", "a folder", "a file that can be read",
                   "name a file in it");
}

Problem file_unwritable(std::string file, std::string_view why) {
    return of_file(std::move(file), "file-unwritable", fmt::format("no way to write it: {}", why),
                   "the name of a file in a folder that you may write to",
                   "check the folder and its permissions");
}

Problem file_not_ours(std::string file) {
    return of_file(std::move(file), "file-not-ours", "a file that quoin did not write",
                   "a new name, or a file that quoin wrote before",
                   "name another file, or add --force to replace this one");
}

Problem no_temporary_room(std::string folder, std::string_view why) {
    return of_file(std::move(folder), "no-temporary-room",
                   fmt::format("no way to write a temporary file there: {}", why),
                   "a folder for temporary files, with room in it",
                   "make room, or name another folder in TMPDIR");
}

Problem file_too_large(std::string file, std::size_t bytes, std::size_t most) {
    constexpr std::size_t mebi = 1024 * 1024;
    return of_file(std::move(file), "file-too-large", fmt::format("{} MiB", bytes / mebi),
                   fmt::format("at most {} MiB", most / mebi),
                   "check that this is the file you meant");
}

Problem not_json(Span place, std::string found, std::string expected) {
    return at(place, "not-json", made_visible(cut(found, caps::line)),
              expected.empty() ? "valid JSON" : std::move(expected),
              "look for a missing comma, quote or bracket here or just before");
}

Problem number_too_large(Span place, std::string literal) {
    return at(place, "number-too-large", repeated(literal), "a number of everyday size",
              "write the number without an exponent");
}

Problem not_utf8(Span place) {
    return at(place, "not-utf8", "bytes that are no UTF-8", "text encoded as UTF-8",
              "save the file again as UTF-8");
}

Problem too_deep(Span place, int deepest) {
    return at(place, "too-deep", fmt::format("more than {} levels of nesting", deepest),
              fmt::format("at most {}", deepest), "check for brackets that are never closed");
}

Problem too_many_members(Span place, std::size_t most) {
    return at(place, "too-many", fmt::format("more than {} members in one object", most),
              fmt::format("at most {}", most), "check that this is the file you meant");
}

Problem too_many_values(Span place, std::size_t most) {
    return at(place, "too-many", fmt::format("more than {} values", most),
              fmt::format("at most {}", most), "check that this is the file you meant");
}

Problem too_many_columns(Span place, std::size_t found, std::size_t most) {
    return at(place, "too-many", fmt::format("{} columns", found), fmt::format("at most {}", most),
              "check that this is the list you meant");
}

Problem too_many_rows(Span place, std::size_t most) {
    return at(place, "too-many", fmt::format("more than {} rows", most),
              fmt::format("at most {}", most), "check that this is the list you meant");
}

Problem too_many_problems(std::size_t most) {
    return at(Span{}, "too-many-problems", fmt::format("more than the {} mistakes above", most),
              "fewer of them", "mend these first; the rest is told then");
}

Problem member_repeated(Span place, std::string_view key) {
    return at(place, "member-repeated",
              fmt::format("\"{}\" a second time in one object", repeated(key)), "each name once",
              "remove one of the two");
}

Problem csv_cells(Span place, std::size_t found, std::size_t expected) {
    return at(place, "csv-cells", fmt::format("{} cells", found),
              fmt::format("{}, one for each column of the first row", expected),
              "put a cell that holds a comma in quotes");
}

Problem csv_quote(Span place) {
    return at(place, "csv-quote", "a quote that is not closed or not alone in its cell",
              "a cell in quotes from its first to its last character",
              "double a quote that belongs to the text");
}

Problem csv_column_repeated(Span place, std::string_view name) {
    return at(place, "csv-column-repeated",
              fmt::format("the column \"{}\" a second time", repeated(name)), "each column once",
              "rename or remove one of the two");
}

Problem wrong_kind(const Spot& spot, std::string_view expected) {
    return at(spot, "wrong-kind", shown(spot), std::string(expected), "");
}

Problem member_missing(const Spot& spot, std::string_view key) {
    return at(spot, "member-missing", fmt::format("no \"{}\" here", key),
              fmt::format("an object with \"{}\"", key), fmt::format("add \"{}\"", key));
}

Problem member_unknown(const Spot& spot, std::string_view key, std::string near) {
    return at(spot, "member-unknown", fmt::format("the unknown name \"{}\"", repeated(key)),
              "a name that this object has",
              did_you_mean(near, "remove it, or move a remark into \"comment\""));
}

Problem format_unknown(const Spot& spot, std::string_view expected) {
    return at(spot, "format-unknown", shown(spot), fmt::format("\"format\": {}", expected),
              "name the format in the file's first member");
}

Problem not_money(const Spot& spot) {
    return at(spot, "not-money", shown(spot),
              "dollars with at most two decimals, such as \"12500.00\"", "");
}

Problem not_a_decimal(const Spot& spot) {
    return at(spot, "not-a-decimal", shown(spot),
              "a number with at most nine decimals, such as \"6.125\"", "");
}

Problem not_a_rate(const Spot& spot) {
    return at(spot, "not-a-rate", shown(spot),
              "a yearly rate of 0 to 100 percent with at most six decimals", "");
}

Problem not_a_date(const Spot& spot) {
    return at(spot, "not-a-date", shown(spot), "a day that exists, such as \"2026-11-24\"", "");
}

Problem not_a_day(const Spot& spot) {
    return at(spot, "not-a-day", shown(spot), "a day that every year has, such as \"07-31\"", "");
}

Problem not_a_whole_number(const Spot& spot, int lowest, int highest) {
    return at(spot, "not-a-whole-number", shown(spot),
              fmt::format("a whole number from {} to {}", lowest, highest), "");
}

Problem out_of_range(const Spot& spot, std::string_view expected) {
    return at(spot, "out-of-range", shown(spot), std::string(expected), "");
}

Problem not_one_of(const Spot& spot, const std::vector<std::string>& names) {
    const std::string given = spot.value != nullptr ? spot.value->literal : std::string{};
    return at(spot, "not-one-of", shown(spot), "one of " + joined(names),
              did_you_mean(nearest(given, names), ""));
}

Problem not_an_id(const Spot& spot) {
    return at(spot, "not-an-id", shown(spot), "lower-case letters, digits and hyphens between them",
              "");
}

Problem text_empty(const Spot& spot) {
    return at(spot, "text-empty", "an empty text", "some words", "");
}

Problem text_not_plain(const Spot& spot) {
    return at(spot, "text-not-plain", shown(spot),
              "one line of text without control characters or marks of writing direction",
              "type it again instead of pasting it");
}

Problem text_too_long(const Spot& spot, std::size_t letters, std::size_t most) {
    return at(spot, "text-too-long", fmt::format("a text of {} letters", letters),
              fmt::format("at most {}", most), "shorten it");
}

Problem too_many(const Spot& spot, std::size_t found, std::size_t most) {
    return at(spot, "too-many", fmt::format("a list of {}", found),
              fmt::format("at most {} in it", most), "take out what is not needed");
}

Problem members_conflict(const Spot& spot, std::string_view expected) {
    return at(spot, "members-conflict", "members that are missing or do not go together",
              std::string(expected), "");
}

Problem id_repeated(const Spot& spot, std::string_view what) {
    return at(spot, "id-repeated", fmt::format("{} for a second {}", shown(spot), what),
              fmt::format("each {} once", what), "give one of them another id");
}

Problem name_unknown(const Spot& spot, std::string_view what, std::string_view name,
                     std::string near) {
    return at(spot, "name-unknown", fmt::format("no {} \"{}\"", what, repeated(name)),
              fmt::format("the id of {} that is there", with_article(what)),
              did_you_mean(near, ""));
}

Problem not_a_band(const Spot& spot) {
    return at(spot, "not-a-band", shown(spot),
              "a band such as \"<= 90\", \"> 90, <= 95\", \"= 360\" or \"any\"", "");
}

Problem bands_overlap(const Spot& spot, std::string_view where, std::size_t other_row) {
    return at(spot, "bands-overlap", fmt::format("two rows for {}", where),
              "one row for every case", fmt::format("it is in row {} as well", other_row + 1));
}

Problem bands_gap(const Spot& spot, std::string_view where) {
    return at(spot, "bands-gap", fmt::format("no row for {}", where), "a row for every case",
              "add the row, or take the case out of \"covers\"");
}

Problem dates_overlap(const Spot& spot, std::string_view rule) {
    return at(spot, "dates-overlap", fmt::format("two tables of {} on one day", rule),
              "one table a day", "end the earlier one with \"until\"");
}

Problem requires_cycle(const Spot& spot, std::string_view chain) {
    return at(spot, "requires-cycle", fmt::format("options that need each other: {}", chain),
              "requirements that end somewhere", "take one of the requirements out");
}

Problem levels_not_rising(const Spot& spot, std::string_view plan) {
    return at(spot, "levels-not-rising",
              fmt::format("a level cheaper than the one before it, on {}", plan),
              "levels in rising order of price", "reorder the levels");
}

Problem package_in_package(const Spot& spot, std::string_view part) {
    return at(spot, "package-in-package", fmt::format("the package \"{}\" as a part", part),
              "parts that are no packages", "list that package's own parts");
}

Problem dates_reversed(const Spot& spot, std::string_view earlier, std::string_view later) {
    return at(spot, "dates-reversed", shown(spot),
              fmt::format("\"{}\" on or before \"{}\"", earlier, later), "");
}

Problem ladder_not_falling(const Spot& spot) {
    return at(spot, "ladder-not-falling", "a rung out of order",
              "rates that rise while their points fall", "sort the rungs by rate");
}

Problem adjustable_out_of_bounds(const Spot& spot, std::string_view rate, std::string_view life_cap,
                                 std::string_view margin) {
    return at(spot, "adjustable-out-of-bounds",
              fmt::format("a margin of {} and a rate that may never pass {} + {}", margin, rate,
                          life_cap),
              "a margin that the rate and its life cap leave room for, and an initial term shorter "
              "than the loan",
              "check \"margin\", the rungs, and the program's \"caps\"");
}

Problem book_expired(const Spot& spot, std::string_view as_of, std::string_view last) {
    return at(spot, "book-expired",
              fmt::format("a price book that ended on {}, asked as of {}", last, as_of),
              "a price book in force", "get the current price book, or set \"as_of\" back");
}

Problem book_not_yet(const Spot& spot, std::string_view as_of, std::string_view first) {
    return at(spot, "book-not-yet",
              fmt::format("a price book that begins on {}, asked as of {}", first, as_of),
              "a price book in force", "use the price book of that day");
}

Problem lot_not_free(const Spot& spot, std::string_view lot, std::string_view status) {
    return at(spot, "lot-not-free", fmt::format("lot {}, which is {}", lot, status),
              "a lot that is free", "pick another lot; 'quoin list lots' shows them");
}

Problem plan_not_on_lot(const Spot& spot, std::string_view plan, std::string_view lot,
                        std::string_view fitting) {
    return at(spot, "plan-not-on-lot", fmt::format("plan {} on lot {}", plan, lot),
              fmt::format("a plan that fits the lot: {}", fitting), "change the plan or the lot");
}

Problem option_not_here(const Spot& spot, std::string_view option, std::string_view why) {
    return at(spot, "option-not-here", fmt::format("{}: {}", option, why),
              "an option of this plan, elevation and lot",
              "take it out; 'quoin adds' says what can be had here");
}

Problem option_needs(const Spot& spot, std::string_view option, std::string_view needed) {
    return at(spot, "option-needs", fmt::format("{} without {}", option, needed),
              fmt::format("{} among the selections", needed),
              fmt::format("add {}, or take {} out", needed, option));
}

Problem options_exclude(const Spot& spot, std::string_view option, std::string_view other) {
    return at(spot, "options-exclude", fmt::format("{} together with {}", option, other),
              "one of the two", "take one of them out");
}

Problem wishes_exclude(const Spot& spot, std::string_view wish, std::string_view other,
                       std::string_view rule) {
    return at(spot, "wishes-exclude", fmt::format("{} and {} as must-haves", wish, other),
              fmt::format("must-haves that can stand together ({}: {})", wish, rule),
              "leave \"must\" out of one of the two");
}

Problem past_cutoff(const Spot& spot, std::string_view option, std::string_view cutoff,
                    std::string_view reached) {
    return at(spot, "past-cutoff",
              fmt::format("{} after its cutoff: the build has reached \"{}\"", option, reached),
              fmt::format("a choice made before \"{}\"", cutoff),
              "take it out, or ask the builder for a change order");
}

Problem selected_twice(const Spot& spot, std::string_view option) {
    return at(spot, "selected-twice", fmt::format("{} a second time", option), "each option once",
              "remove one, or use \"quantity\"");
}

Problem pick_incomplete(const Spot& spot, std::string_view option, std::string_view needs) {
    return at(spot, "pick-incomplete", fmt::format("{} as it stands", option), std::string(needs),
              "");
}

Problem quantity_not_allowed(const Spot& spot, std::string_view option, std::string_view allowed) {
    return at(spot, "quantity-not-allowed", fmt::format("{} of {}", shown(spot), option),
              std::string(allowed), "");
}

Problem incentive_not_here(const Spot& spot, std::string_view incentive, std::string_view why) {
    return at(spot, "incentive-not-here", fmt::format("{}: {}", incentive, why),
              "an incentive whose conditions hold", "take it out");
}

Problem scenario_repeated(const Spot& spot, std::string_view name) {
    return at(spot, "scenario-repeated", fmt::format("a second scenario \"{}\"", repeated(name)),
              "each scenario under its own name", "rename one of the two");
}

Problem rates_missing(const Spot& spot, std::string_view what) {
    return at(spot, "rates-missing", fmt::format("no {}", what), "lending data for this inquiry",
              "point to data that has it with --rates DIR, or change \"as_of\"");
}

Problem not_a_fraction(const Spot& spot) {
    return at(spot, "not-a-fraction", shown(spot),
              "a whole number, or two with a stroke between them, such as \"19/30\"", "");
}

Problem no_single_rate(const Spot& spot, bool several) {
    return at(spot, "no-single-rate",
              several ? "more than one rate that makes advances and payments equal"
                      : "no rate from 0 to 10,000 percent that makes advances and payments equal",
              "payments that come after what they pay back, and come to more",
              several ? "split the transaction where its balance changes sign" : "");
}

Problem credit_without_use(const Spot& spot) {
    return at(spot, "credit-without-use", "a credit that may pay nothing",
              "at least one entry in \"uses\"",
              "name what it may pay: \"closing costs\", \"prepaids\", \"points\", ...");
}

Problem credit_use_not_allowed(const Spot& spot, std::string_view use) {
    return at(spot, "credit-use-not-allowed", fmt::format("a credit towards the {}", use),
              "a use that its giver may pay",
              "only a program may help with the down payment; put the credit to costs or points");
}

Problem no_model(std::string file) {
    return of_file(std::move(file), "no-model", "no furnished model in the price book",
                   "a price book with \"model\"", "");
}

Problem no_means() {
    return at(Span{}, "no-means", "neither \"income\" nor \"cash\" in the inquiry",
              "what a price is to be held against",
              "add \"income\": {\"monthly\": \"8000\"}, \"debts\" and \"cash\"");
}

Problem scenario_barred(std::string_view name) {
    return at(Span{}, "scenario-barred",
              fmt::format("scenario \"{}\", which cannot be had", repeated(name)),
              "a scenario with figures to write", "'quoin recheck' without --workbook says why");
}

Problem scenario_unknown(std::string_view name, std::string near,
                         const std::vector<std::string>& names) {
    if (names.empty()) {
        return at(Span{}, "scenario-unknown", "no scenario in the inquiry",
                  "at least one way to pay for the home", "add one to \"scenarios\"");
    }
    return at(Span{}, "scenario-unknown", fmt::format("no scenario \"{}\"", repeated(name)),
              "one of " + joined(names), did_you_mean(near, ""));
}

Problem option_unknown(std::string_view name, std::string near) {
    return at(Span{}, "option-unknown", fmt::format("no option \"{}\"", repeated(name)),
              "the id of an option, such as those of 'quoin list options'", did_you_mean(near, ""));
}

Problem option_number(std::string_view option, std::string_view found, std::string_view expected) {
    return at(Span{}, "option-number",
              fmt::format("\"{}\" for {}", repeated(found), repeated(option)),
              std::string(expected), "");
}

Problem payment_input(std::string_view what, std::string_view found, std::string_view expected) {
    return at(Span{}, "payment-input", fmt::format("{} {}", what, repeated(found)),
              std::string(expected), "");
}

Problem no_price_book(std::string folder) {
    return of_file(std::move(folder), "no-price-book", "no sound price book in this folder",
                   "a pricebook.json in it or up to two folders below",
                   "'quoin check FILE' says what is wrong with one");
}

Problem cannot_listen(std::string_view address, std::string_view why) {
    return at(Span{}, "cannot-listen", fmt::format("{}: {}", address, why),
              "an address of this machine and a free port to listen on",
              "--port 0 takes any free port, --port N another one");
}

} // namespace problems

} // namespace quoin
