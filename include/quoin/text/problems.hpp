// Every problem there is: its id, its stable name, where it stands and what its sentences need.
//
//   findings.add(problems::lot_not_free(root.spot("lot"), lot.id, lot.status));
//
// A problem has no sentences before it is told: words/problem_words.hpp makes them of its
// arguments. Some have one name and differ in what was expected, such as those of a number that is
// out of range.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/findings.hpp>
#include <quoin/text/source.hpp>
#include <quoin/text/spot.hpp>

// One row a problem: id, name, where it stands and its arguments. In the order of the error page.
#define QUOIN_PROBLEMS(ROW)                                                                        \
    /* Texts and files. */                                                                         \
    ROW(file_missing, "file-missing", File(Meant what, Near near))                                 \
    ROW(file_unreadable, "file-unreadable", File(Text why))                                        \
    ROW(file_is_folder, "file-unreadable", File())                                                 \
    ROW(file_too_large, "file-too-large", File(MebiBytes found, MebiBytes most))                   \
    ROW(file_unwritable, "file-unwritable", File(Text why))                                        \
    ROW(file_not_ours, "file-not-ours", File())                                                    \
    ROW(no_temporary_room, "no-temporary-room", File(Text why))                                    \
    ROW(temporary_room_full, "no-temporary-room", File())                                          \
    ROW(not_json, "not-json", Stretch(Text found, Text expected))                                  \
    ROW(not_json_here, "not-json", Stretch(Text found))                                            \
    ROW(null_byte, "not-json", Stretch())                                                          \
    ROW(text_not_closed, "not-json", Stretch(Text expected))                                       \
    ROW(text_not_closed_here, "not-json", Stretch())                                               \
    ROW(number_too_large, "number-too-large", Stretch(Quoted literal))                             \
    ROW(not_utf8, "not-utf8", Stretch())                                                           \
    ROW(too_deep, "too-deep", Stretch(Number deepest))                                             \
    ROW(too_many, "too-many", Place(Count found, Count most))                                      \
    ROW(too_many_members, "too-many", Stretch(Count most))                                         \
    ROW(too_many_values, "too-many", Stretch(Count most))                                          \
    ROW(too_many_columns, "too-many", Stretch(Count found, Count most))                            \
    ROW(too_many_rows, "too-many", Stretch(Count most))                                            \
    ROW(too_many_problems, "too-many-problems", Nowhere(Count most))                               \
    ROW(member_repeated, "member-repeated", Stretch(Quoted key))                                   \
    ROW(csv_cells, "csv-cells", Stretch(Count found, Count expected))                              \
    ROW(csv_quote, "csv-quote", Stretch())                                                         \
    ROW(csv_column_repeated, "csv-column-repeated", Stretch(Quoted name))                          \
    ROW(wishes_exclude, "wishes-exclude", Place(Text wish, Text other, Why rule))                  \
    /* Values. */                                                                                  \
    ROW(not_a_text, "wrong-kind", Shown())                                                         \
    ROW(not_a_text_or_languages, "wrong-kind", Shown(Names languages))                             \
    ROW(not_an_object, "wrong-kind", Shown())                                                      \
    ROW(not_a_list, "wrong-kind", Shown())                                                         \
    ROW(not_a_number, "wrong-kind", Shown())                                                       \
    ROW(not_true_or_false, "wrong-kind", Shown())                                                  \
    ROW(member_missing, "member-missing", Place(Text key))                                         \
    ROW(member_unknown, "member-unknown", Place(Quoted key, Near near))                            \
    ROW(language_unknown, "member-unknown", Place(Quoted key, Near near, Names languages))         \
    ROW(format_unknown, "format-unknown", Shown(Text format))                                      \
    ROW(format_not_of_lending, "format-unknown", Shown())                                          \
    ROW(format_not_of_files, "format-unknown", Shown())                                            \
    ROW(not_money, "not-money", Shown())                                                           \
    ROW(not_a_decimal, "not-a-decimal", Shown())                                                   \
    ROW(not_a_rate, "not-a-rate", Shown())                                                         \
    ROW(not_a_date, "not-a-date", Shown())                                                         \
    ROW(not_a_day, "not-a-day", Shown())                                                           \
    ROW(not_a_whole_number, "not-a-whole-number", Shown(Number lowest, Number highest))            \
    ROW(amount_not_above_zero, "out-of-range", Shown())                                            \
    ROW(amount_below_zero, "out-of-range", Shown())                                                \
    ROW(figure_below_zero, "out-of-range", Shown())                                                \
    ROW(values_below_zero, "out-of-range", Shown())                                                \
    ROW(margin_below_zero, "out-of-range", Shown())                                                \
    ROW(points_below_zero, "out-of-range", Shown())                                                \
    ROW(percent_out_of_range, "out-of-range", Shown(Number lowest, Number highest))                \
    ROW(share_out_of_range, "out-of-range", Shown())                                               \
    ROW(fraction_out_of_range, "out-of-range", Shown())                                            \
    ROW(weight_out_of_range, "out-of-range", Shown())                                              \
    ROW(list_empty, "out-of-range", Shown())                                                       \
    ROW(dimension_unknown, "out-of-range", Shown())                                                \
    ROW(not_one_value_a_band, "out-of-range", Shown(Count bands))                                  \
    ROW(not_amounts_by_persons, "out-of-range", Shown())                                           \
    ROW(guides_not_rising, "out-of-range", Shown())                                                \
    ROW(not_one_of, "not-one-of", Shown(Names names, Near near))                                   \
    ROW(not_an_id, "not-an-id", Shown())                                                           \
    ROW(text_empty, "text-empty", Place())                                                         \
    ROW(text_not_plain, "text-not-plain", Shown())                                                 \
    ROW(text_too_long, "text-too-long", Place(Count letters, Count most))                          \
    ROW(option_price_unclear, "members-conflict", Place())                                         \
    ROW(quantity_out_of_steps, "members-conflict", Place())                                        \
    ROW(incentive_without_use, "members-conflict", Place())                                        \
    ROW(incentive_amount_unclear, "members-conflict", Place())                                     \
    ROW(down_payment_unclear, "members-conflict", Place())                                         \
    ROW(margin_of_fixed_rate, "members-conflict", Place())                                         \
    ROW(after_without_until, "members-conflict", Place())                                          \
    ROW(automated_limits_unclear, "members-conflict", Place())                                     \
    ROW(tax_shares_not_whole, "members-conflict", Place())                                         \
    ROW(tiers_not_rising, "members-conflict", Place())                                             \
    ROW(cost_amount_unclear, "members-conflict", Place())                                          \
    ROW(simultaneous_without_policy, "members-conflict", Place())                                  \
    ROW(id_repeated, "id-repeated", Shown(Thing what))                                             \
    ROW(name_unknown, "name-unknown", Place(Thing what, Quoted name, Near near))                   \
    /* Band tables. */                                                                             \
    ROW(not_a_band, "not-a-band", Shown())                                                         \
    ROW(bands_overlap, "bands-overlap", Place(Text where, Count other_row))                        \
    ROW(bands_gap, "bands-gap", Place(Text where))                                                 \
    ROW(dates_overlap, "dates-overlap", Place(Text rule))                                          \
    /* Price books. */                                                                             \
    ROW(requires_cycle, "requires-cycle", Place(Text chain))                                       \
    ROW(levels_not_rising, "levels-not-rising", Place(Text plan))                                  \
    ROW(package_in_package, "package-in-package", Place(Text part))                                \
    ROW(elevation_takes_all, "out-of-range", Shown())                                              \
    ROW(premium_takes_all, "out-of-range", Shown())                                                \
    ROW(credits_take_all, "out-of-range", Shown())                                                 \
    ROW(dates_reversed, "dates-reversed", Shown(Text earlier, Text later))                         \
    /* Drawings and pictures. */                                                                   \
    ROW(drawing_alone, "drawing-alone", Place())                                                   \
    ROW(outline_unsound, "outline-unsound", Place())                                               \
    ROW(outlines_overlap, "outlines-overlap", Place(Quoted other))                                 \
    ROW(not_in_wall, "not-in-wall", Place())                                                       \
    ROW(stairs_unmatched, "stairs-unmatched", Place(Text floor))                                   \
    ROW(drawn_otherwise, "drawn-otherwise", Place(Text measure, Figure drawn, Figure said))        \
    ROW(change_not_priced, "change-not-priced", Place(Text measure))                               \
    ROW(lot_not_drawn, "lot-not-drawn", Place(Lot lot))                                            \
    ROW(fits_as_drawn, "fit-drawn-otherwise", Place(Plan plan, Lot lot))                           \
    ROW(too_small_as_drawn, "fit-drawn-otherwise", Place(Plan plan, Lot lot))                      \
    ROW(file_elsewhere, "file-elsewhere", Shown())                                                 \
    ROW(not_a_picture, "not-a-picture", Place())                                                   \
    ROW(picture_too_large, "picture-too-large", Place(Count found_kb, Count most_kb))              \
    ROW(picture_active, "picture-active", Place(Quoted part))                                      \
    ROW(not_a_color, "not-a-color", Shown())                                                       \
    ROW(color_too_light, "color-too-light", Shown())                                               \
    /* Rate sheets. */                                                                             \
    ROW(ladder_not_falling, "ladder-not-falling", Place())                                         \
    ROW(adjustable_out_of_bounds, "adjustable-out-of-bounds",                                      \
        Place(Figure rate, Figure life_cap, Figure margin))                                        \
    /* Inquiries against a price book. */                                                          \
    ROW(book_expired, "book-expired", Place(Day as_of, Day last))                                  \
    ROW(book_not_yet, "book-not-yet", Place(Day as_of, Day first))                                 \
    ROW(lot_not_free, "lot-not-free", Place(Lot lot, Status status))                               \
    ROW(plan_not_on_lot, "plan-not-on-lot", Place(Plan plan, Lot lot, Names fitting))              \
    ROW(option_not_here, "option-not-here", Place(Option option, Why why))                         \
    ROW(option_needs, "option-needs", Place(Option option, Names any))                             \
    ROW(options_exclude, "options-exclude", Place(Option option, Text other))                      \
    ROW(past_cutoff, "past-cutoff", Place(Option option, Text cutoff, Text reached))               \
    ROW(selected_twice, "selected-twice", Place(Option option))                                    \
    ROW(pick_without_level, "pick-incomplete", Place(Option option))                               \
    ROW(pick_without_choice, "pick-incomplete", Place(Option option))                              \
    ROW(pick_without_spend, "pick-incomplete", Place(Option option))                               \
    ROW(pick_without_details, "pick-incomplete", Place(Option option))                             \
    ROW(quantity_not_allowed, "quantity-not-allowed", Shown(Option option, Usable allowed))        \
    ROW(incentive_not_here, "incentive-not-here", Place(Incentive incentive, Why why))             \
    ROW(scenario_repeated, "scenario-repeated", Place(Quoted name))                                \
    ROW(rates_missing, "rates-missing", Place(Day as_of))                                          \
    ROW(not_a_fraction, "not-a-fraction", Shown())                                                 \
    ROW(no_rate, "no-single-rate", Place())                                                        \
    ROW(several_rates, "no-single-rate", Place())                                                  \
    ROW(credit_without_use, "credit-without-use", Place())                                         \
    ROW(credit_use_not_allowed, "credit-use-not-allowed", Place())                                 \
    /* Questions. */                                                                               \
    ROW(no_model, "no-model", File())                                                              \
    ROW(no_scenarios, "scenario-unknown", Nowhere())                                               \
    ROW(scenario_unknown, "scenario-unknown", Nowhere(Quoted name, Near near, Names names))        \
    ROW(scenario_barred, "scenario-barred", Nowhere(Quoted name))                                  \
    ROW(no_means, "no-means", Nowhere())                                                           \
    ROW(option_unknown, "option-unknown", Nowhere(Quoted name, Near near))                         \
    ROW(no_home_parts, "file-unwritable", File())                                                  \
    ROW(area_unknown, "area-unknown", Nowhere(Quoted name, Near near, Names names))                \
    ROW(option_number, "option-number", Nowhere(Quoted option, Quoted found, Usable expected))     \
    ROW(payment_input, "payment-input", Nowhere(Text what, Quoted found, Usable expected))         \
    /* The local server, and what it says of a request that is no question at all: none of these   \
       repeats what the request's body held. */                                                    \
    ROW(no_price_book, "no-price-book", File())                                                    \
    ROW(cannot_listen, "cannot-listen", Nowhere(Text address, Number port, Text why))              \
    ROW(no_such_address, "cannot-listen", Nowhere(Text address, Number port))                      \
    ROW(http_host, "http-host", Nowhere(Text expected))                                            \
    ROW(http_origin, "http-origin", Nowhere(Text expected))                                        \
    ROW(http_code_needed, "http-code-needed", Nowhere())                                           \
    ROW(http_code_wrong, "http-code-wrong", Nowhere())                                             \
    ROW(http_path_unknown, "http-path-unknown", Nowhere())                                         \
    ROW(http_method, "http-method", Nowhere(Text path, Text allowed))                              \
    ROW(http_content_type, "http-content-type", Nowhere())                                         \
    ROW(http_content_coding, "http-content-coding", Nowhere())                                     \
    ROW(http_body_length, "http-body-length", Nowhere())                                           \
    ROW(http_too_large, "http-too-large", Nowhere(Count limit))                                    \
    ROW(http_incomplete, "http-incomplete", Nowhere())                                             \
    ROW(http_question_unknown, "http-question-unknown",                                            \
        Nowhere(Quoted name, Near near, Names questions))                                          \
    ROW(http_option_unknown, "http-option-unknown",                                                \
        Nowhere(Text question, Quoted name, Near near, Names options))                             \
    ROW(http_option_of_none, "http-option-unknown", Nowhere(Text question, Quoted name))           \
    ROW(http_option_missing, "http-option-missing", Nowhere(Text name, Text summary))              \
    ROW(http_option_repeated, "http-option-repeated", Nowhere(Text name))                          \
    ROW(http_options_exclude, "http-options-exclude", Nowhere(Text one, Text other))               \
    ROW(http_figures_too_large, "http-figures-too-large", Nowhere())                               \
    ROW(http_took_too_long, "http-took-too-long", Nowhere(Number seconds))                         \
    ROW(http_fault, "http-fault", Nowhere())

namespace quoin {

enum class ProblemId : std::uint8_t {
#define QUOIN_PROBLEM_ID(id, name, signature) id,
    QUOIN_PROBLEMS(QUOIN_PROBLEM_ID)
#undef QUOIN_PROBLEM_ID
};
#define QUOIN_PROBLEM_COUNT(id, name, signature) +1 // NOLINT(bugprone-macro-parentheses)
inline constexpr std::size_t problem_count = QUOIN_PROBLEMS(QUOIN_PROBLEM_COUNT);
#undef QUOIN_PROBLEM_COUNT

/// The stable name of a problem, such as "not-money".
[[nodiscard]] std::string_view name_of(ProblemId id);

namespace problems {

// Arguments: what the one who finds a problem hands over, and what the problem keeps of it.
struct Text { ///< of the house, or an id: at most a line of it
    using Given = std::string_view;
    static std::string kept(std::string_view text);
};
struct Quoted { ///< a person's own: short and printable
    using Given = std::string_view;
    static std::string kept(std::string_view text);
};
struct Thing {
    using Given = Noun;
    static Noun kept(Noun noun) { return noun; }
};
struct Near {
    using Given = std::string_view;
    static NearName kept(std::string_view name) { return {Quoted::kept(name)}; }
};
struct Names {
    using Given = const std::vector<std::string>&;
    static std::vector<std::string> kept(const std::vector<std::string>& names);
};
/// A thing of a price book: called by its id, or by other words.
struct Named {
    std::string_view id;
    std::string_view told;
    Named(std::string_view own_id, std::string_view words) : id(own_id), told(words) {}
    Named(const std::string& own_id) : Named(own_id, own_id) {} // NOLINT: an id is a name
    Named(const char* own_id) : Named(own_id, own_id) {}        // NOLINT
};
template <Subject what>
struct Item {
    using Given = const Named&;
    static About kept(const Named& item) {
        return {what, Text::kept(item.id), Text::kept(item.told)};
    }
};
using Option = Item<Subject::option>;
using Plan = Item<Subject::plan>;
using Lot = Item<Subject::lot>;
using Incentive = Item<Subject::incentive>;
struct Meant {
    using Given = FileMeant;
    static FileMeant kept(FileMeant what) { return what; }
};
struct Status {
    using Given = LotStatus;
    static LotStatus kept(LotStatus status) { return status; }
};
struct Why {
    using Given = const WhyNot&;
    static WhyNot kept(WhyNot why);
};
struct Usable {
    using Given = const Wanted&;
    static Wanted kept(Wanted wanted);
};
struct Number {
    using Given = std::int64_t;
    static std::int64_t kept(std::int64_t number) { return number; }
};
struct Count {
    using Given = std::size_t;
    static std::int64_t kept(std::size_t count) { return static_cast<std::int64_t>(count); }
};
struct MebiBytes {
    using Given = std::uintmax_t; ///< bytes
    static std::int64_t kept(std::uintmax_t bytes) {
        return static_cast<std::int64_t>(bytes / (1024 * 1024));
    }
};
struct Figure {
    using Given = Decimal;
    static Decimal kept(Decimal figure) { return figure; }
};
struct Day {
    using Given = Date;
    static Date kept(Date day) { return day; }
};

// Where a problem stands.
using Arguments = std::initializer_list<Argument>;
struct Stretch { ///< of a text
    using Given = Span;
    static Problem made(ProblemId id, Span place, Arguments arguments);
};
struct Place { ///< a value
    using Given = const Spot&;
    static Problem made(ProblemId id, const Spot& spot, Arguments arguments);
};
struct Shown { ///< a value that is told: it comes before the other arguments
    using Given = const Spot&;
    static Problem made(ProblemId id, const Spot& spot, Arguments arguments);
};
struct File {
    using Given = std::string_view; ///< its name
    static Problem made(ProblemId id, std::string_view file, Arguments arguments);
};
struct Nowhere;

/// Makes problems with one id, of a place and its arguments.
template <ProblemId own_id, class Signature>
struct Kind;

template <ProblemId own_id, class Where, class... Parts>
struct Kind<own_id, Where(Parts...)> {
    static constexpr ProblemId id = own_id;
    Problem operator()(typename Where::Given where, typename Parts::Given... parts) const {
        return Where::made(id, where, {Parts::kept(parts)...});
    }
};

template <ProblemId own_id, class... Parts>
struct Kind<own_id, Nowhere(Parts...)> {
    static constexpr ProblemId id = own_id;
    Problem operator()(typename Parts::Given... parts) const {
        return Stretch::made(id, {}, {Parts::kept(parts)...});
    }
};

#define QUOIN_PROBLEM_KIND(id, name, signature)                                                    \
    inline constexpr Kind<ProblemId::id, signature> id{};
QUOIN_PROBLEMS(QUOIN_PROBLEM_KIND)
#undef QUOIN_PROBLEM_KIND

} // namespace problems

} // namespace quoin
