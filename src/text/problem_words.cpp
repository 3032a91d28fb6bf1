// The wording of every problem, in English: another language is another table like this one.
#include <quoin/text/problem_words.hpp>

#include <array>
#include <type_traits>

#include <fmt/args.h>
#include <fmt/format.h>

#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

/// Names in a row, "{}" each in quotes, or "{:p}" plain.
struct NamesInWords {
    const std::vector<std::string>* names;
};
/// "{}" a noun, or "{:a}" with its article.
struct NounInWords {
    std::string_view noun;
};

} // namespace
} // namespace quoin

template <>
struct fmt::formatter<quoin::NamesInWords> {
    bool plain = false;
    constexpr auto parse(fmt::format_parse_context& context) {
        const auto* at = context.begin();
        plain = at != context.end() && *at == 'p';
        return at + (plain ? 1 : 0);
    }
    auto format(const quoin::NamesInWords& words, fmt::format_context& context) const {
        constexpr std::size_t most_in_quotes = 12;
        const std::vector<std::string>& names = *words.names;
        const std::size_t most = plain ? names.size() : most_in_quotes;
        auto out = context.out();
        for (std::size_t i = 0; i < names.size() && i < most; ++i) {
            const char* between = i == 0 ? "" : ", ";
            out = plain ? fmt::format_to(out, "{}{}", between, names[i])
                        : fmt::format_to(out, "{}\"{}\"", between, names[i]);
        }
        return names.size() > most ? fmt::format_to(out, ", ...") : out;
    }
};

template <>
struct fmt::formatter<quoin::NounInWords> {
    bool with_article = false;
    constexpr auto parse(fmt::format_parse_context& context) {
        const auto* at = context.begin();
        with_article = at != context.end() && *at == 'a';
        return at + (with_article ? 1 : 0);
    }
    auto format(const quoin::NounInWords& words, fmt::format_context& context) const {
        const bool vowel = std::string_view("aeiou").find(words.noun.front()) != words.noun.npos;
        const char* article = !with_article ? "" : vowel ? "an " : "a ";
        return fmt::format_to(context.out(), "{}{}", article, words.noun);
    }
};

namespace quoin {
namespace {

std::string found_in_words(const FoundValue& value) {
    switch (value.kind) {
    case FoundValue::Kind::nothing:
        return "nothing";
    case FoundValue::Kind::null:
        return "null";
    case FoundValue::Kind::list:
        return "a list";
    case FoundValue::Kind::object:
        return "an object";
    case FoundValue::Kind::text:
        return "\"" + value.literal + "\"";
    case FoundValue::Kind::literal:
        break;
    }
    return value.literal;
}

// An argument as a pattern takes it.
std::string_view in_pattern(const std::string& text) { return text; }
std::int64_t in_pattern(std::int64_t number) { return number; }
std::string in_pattern(const Decimal& figure) { return figure.text(); }
std::string in_pattern(const Date& day) { return day.text(); }
std::string in_pattern(const FoundValue& value) { return found_in_words(value); }
NounInWords in_pattern(const Noun& noun) { return {noun.name}; }
std::string_view in_pattern(const NearName& near) { return near.name; }
std::string_view in_pattern(const About& thing) { return thing.told; }
NamesInWords in_pattern(const std::vector<std::string>& names) { return {&names}; }

namespace p = problems;

template <class Part>
using InPattern = decltype(in_pattern(Part::kept(std::declval<typename Part::Given>())));

/// A sentence with places for arguments, which the compiler holds to the arguments' types.
template <class... Arguments>
struct Checked {
    std::string_view text;
    consteval Checked(const char* pattern) : text(pattern) { // NOLINT: written as plain text
        static_cast<void>(fmt::format_string<Arguments...>(pattern));
    }
};

template <class Kind>
struct PatternOf;
template <ProblemId id, class Where, class... Parts>
struct PatternOf<p::Kind<id, Where(Parts...)>> {
    using Type = Checked<InPattern<Parts>...>;
};
template <ProblemId id, class... Parts>
struct PatternOf<p::Kind<id, p::Shown(Parts...)>> {
    using Type = Checked<std::string, InPattern<Parts>...>;
};

struct Row {
    ProblemId id{};
    std::string_view
        name; ///< of the thing that the problem is about: what was found begins with it
    std::string_view found;
    std::string_view expected;
    std::string_view advice;
};

/// The words of a kind of problem. Its arguments are {0}, {1}, ..., the value that is shown before
/// all others.
template <auto kind>
using Pattern = typename PatternOf<std::remove_const_t<decltype(kind)>>::Type;
template <auto kind>
consteval Row row(Pattern<kind> found, Pattern<kind> expected, Pattern<kind> advice = "") {
    return {kind.id, "", found.text, expected.text, advice.text};
}
/// The same, of a thing that what was found begins with.
template <auto kind>
consteval Row row_about(Pattern<kind> name, Pattern<kind> found, Pattern<kind> expected,
                        Pattern<kind> advice = "") {
    return {kind.id, name.text, found.text, expected.text, advice.text};
}

constexpr const char* unclear = "members that are missing or do not go together";

constexpr Row rows[] = {
    row<p::file_missing>("no such file", "{0} that can be read", "check the name and the folder"),
    row<p::file_unreadable>("{0}", "a file that can be read", "check the file's permissions"),
    row<p::file_is_folder>("a folder", "a file that can be read", "name a file in it"),
    row<p::file_unwritable>("no way to write it: {0}",
                            "the name of a file in a folder that you may write to",
                            "check the folder and its permissions"),
    row<p::file_not_ours>("a file that quoin did not write",
                          "a new name, or a file that quoin wrote before",
                          "name another file, or add --force to replace this one"),
    row<p::no_temporary_room>("no way to write a temporary file there: {0}",
                              "a folder for temporary files, with room in it",
                              "make room, or name another folder in TMPDIR"),
    row<p::file_too_large>("{0} MiB", "at most {1} MiB", "check that this is the file you meant"),
    row<p::not_json>("{0}", "{1}",
                     "look for a missing comma, quote or bracket here or just before"),
    row<p::not_json_here>("{0}", "valid JSON",
                          "look for a missing comma, quote or bracket here or just before"),
    row<p::null_byte>("a null byte", "valid JSON",
                      "look for a missing comma, quote or bracket here or just before"),
    row<p::text_not_closed>("the end of the file inside a text", "{0}",
                            "look for a missing comma, quote or bracket here or just before"),
    row<p::text_not_closed_here>("the end of the file inside a text", "valid JSON",
                                 "look for a missing comma, quote or bracket here or just before"),
    row<p::number_too_large>("{0}", "a number of everyday size",
                             "write the number without an exponent"),
    row<p::not_utf8>("bytes that are no UTF-8", "text encoded as UTF-8",
                     "save the file again as UTF-8"),
    row<p::too_deep>("more than {0} levels of nesting", "at most {0}",
                     "check for brackets that are never closed"),
    row<p::too_many>("a list of {0}", "at most {1} in it", "take out what is not needed"),
    row<p::too_many_members>("more than {0} members in one object", "at most {0}",
                             "check that this is the file you meant"),
    row<p::too_many_values>("more than {0} values", "at most {0}",
                            "check that this is the file you meant"),
    row<p::too_many_columns>("{0} columns", "at most {1}", "check that this is the list you meant"),
    row<p::too_many_rows>("more than {0} rows", "at most {0}",
                          "check that this is the list you meant"),
    row<p::too_many_problems>("more than the {0} mistakes above", "fewer of them",
                              "mend these first; the rest is told then"),
    row<p::member_repeated>("\"{0}\" a second time in one object", "each name once",
                            "remove one of the two"),
    row<p::csv_cells>("{0} cells", "{1}, one for each column of the first row",
                      "put a cell that holds a comma in quotes"),
    row<p::csv_quote>("a quote that is not closed or not alone in its cell",
                      "a cell in quotes from its first to its last character",
                      "double a quote that belongs to the text"),
    row<p::csv_column_repeated>("the column \"{0}\" a second time", "each column once",
                                "rename or remove one of the two"),
    row<p::wishes_exclude>("{0} and {1} as must-haves",
                           "must-haves that can stand together ({0}: {2})",
                           "leave \"must\" out of one of the two"),

    row<p::not_a_text>("{0}", "text in quotes"),
    row<p::not_an_object>("{0}", "an object in {{ }}"),
    row<p::not_a_list>("{0}", "a list in [ ]"),
    row<p::not_a_number>("{0}", "a whole number"),
    row<p::not_true_or_false>("{0}", "true or false"),
    row<p::member_missing>("no \"{0}\" here", "an object with \"{0}\"", "add \"{0}\""),
    row<p::member_unknown>("the unknown name \"{0}\"", "a name that this object has",
                           "remove it, or move a remark into \"comment\""),
    row<p::format_unknown>("{0}", "\"format\": \"{1}\"",
                           "name the format in the file's first member"),
    row<p::format_not_of_lending>(
        "{0}", "\"format\": one of \"quoin/program/1\", \"quoin/rates/1\", \"quoin/place/1\"",
        "name the format in the file's first member"),
    row<p::format_not_of_files>("{0}",
                                "\"format\": \"quoin/pricebook/1\", \"quoin/inquiry/1\", "
                                "\"quoin/program/1\", \"quoin/rates/1\" or \"quoin/place/1\"",
                                "name the format in the file's first member"),
    row<p::not_money>("{0}", "dollars with at most two decimals, such as \"12500.00\""),
    row<p::not_a_decimal>("{0}", "a number with at most nine decimals, such as \"6.125\""),
    row<p::not_a_rate>("{0}", "a yearly rate of 0 to 100 percent with at most six decimals"),
    row<p::not_a_date>("{0}", "a day that exists, such as \"2026-11-24\""),
    row<p::not_a_day>("{0}", "a day that every year has, such as \"07-31\""),
    row<p::not_a_whole_number>("{0}", "a whole number from {1} to {2}"),
    row<p::amount_not_above_zero>("{0}", "an amount above zero"),
    row<p::amount_below_zero>("{0}", "an amount not below zero"),
    row<p::figure_below_zero>("{0}", "a figure not below zero"),
    row<p::values_below_zero>("{0}", "values not below zero"),
    row<p::margin_below_zero>("{0}", "a margin not below zero"),
    row<p::points_below_zero>("{0}", "points not below zero"),
    row<p::percent_out_of_range>("{0}", "a percent from {1} to {2}"),
    row<p::share_out_of_range>("{0}", "a percent above 0, not above 100"),
    row<p::fraction_out_of_range>("{0}", "a fraction from 0 to under 1"),
    row<p::weight_out_of_range>("{0}", "a number above 0, up to 1000000"),
    row<p::list_empty>("{0}", "at least one entry"),
    row<p::dimension_unknown>("{0}", "one of this table's dimensions"),
    row<p::not_one_value_a_band>("{0}", "{1} values, one for each band"),
    row<p::not_amounts_by_persons>("{0}", "a list of amounts, for one person, for two and so on"),
    row<p::guides_not_rising>(
        "{0}", "guides by rising \"loan_up_to\", the last without one for any larger loan"),
    row<p::not_one_of>("{0}", "one of {1}"),
    row<p::not_an_id>("{0}", "lower-case letters, digits and hyphens between them"),
    row<p::text_empty>("an empty text", "some words"),
    row<p::text_not_plain>(
        "{0}", "one line of text without control characters or marks of writing direction",
        "type it again instead of pasting it"),
    row<p::text_too_long>("a text of {0} letters", "at most {1}", "shorten it"),
    row<p::option_price_unclear>(
        unclear,
        "one of \"price\", \"levels\", \"choices\", \"allowance\", or \"parts\" with \"price\""),
    row<p::quantity_out_of_steps>(
        unclear, "0 < min <= usual <= max, with usual a whole number of steps over min"),
    row<p::incentive_without_use>(unclear, "at least one entry in \"uses\""),
    row<p::incentive_amount_unclear>(unclear, "either \"amount\", or \"percent\" with \"of\""),
    row<p::down_payment_unclear>(unclear, "one of \"percent\", \"amount\" and \"cash\""),
    row<p::margin_of_fixed_rate>(unclear,
                                 "a \"margin\" only where the program's rate is adjustable"),
    row<p::after_without_until>(unclear,
                                "\"after\" only beside \"until\": it says what follows the end"),
    row<p::automated_limits_unclear>(unclear, "either \"automated\" or \"back_automated\""),
    row<p::tax_shares_not_whole>(unclear, "shares in \"due\" that make 100 percent"),
    row<p::tiers_not_rising>(unclear, "tiers that rise by \"up_to\", the last one without it"),
    row<p::cost_amount_unclear>(unclear,
                                "one of \"amount\", \"percent_of_loan\", \"percent_of_price\", "
                                "\"per_thousand_of_loan\", \"per_thousand_of_price\", and "
                                "\"tiers\" with \"of\""),
    row<p::simultaneous_without_policy>(unclear,
                                        "\"simultaneous\" only with \"title_policy\": \"lender\""),
    row<p::id_repeated>("{0} for a second {1}", "each {1} once", "give one of them another id"),
    row<p::name_unknown>("no {0} \"{1}\"", "the id of {0:a} that is there"),

    row<p::not_a_band>("{0}", "a band such as \"<= 90\", \"> 90, <= 95\", \"= 360\" or \"any\""),
    row<p::bands_overlap>("two rows for {0}", "one row for every case", "it is in row {1} as well"),
    row<p::bands_gap>("no row for {0}", "a row for every case",
                      "add the row, or take the case out of \"covers\""),
    row<p::dates_overlap>("two tables of {0} on one day", "one table a day",
                          "end the earlier one with \"until\""),

    row<p::requires_cycle>("options that need each other: {0}", "requirements that end somewhere",
                           "take one of the requirements out"),
    row<p::levels_not_rising>("a level cheaper than the one before it, on {0}",
                              "levels in rising order of price", "reorder the levels"),
    row<p::package_in_package>("the package \"{0}\" as a part", "parts that are no packages",
                               "list that package's own parts"),
    row<p::elevation_takes_all>("{0}", "a price that leaves the plan one above zero"),
    row<p::premium_takes_all>("{0}", "a premium that leaves every home a price above zero"),
    row<p::credits_take_all>("{0}", "credits that together leave every home a price above zero"),
    row<p::dates_reversed>("{0}", "\"{1}\" on or before \"{2}\""),

    row<p::ladder_not_falling>("a rung out of order", "rates that rise while their points fall",
                               "sort the rungs by rate"),
    row<p::adjustable_out_of_bounds>(
        "a margin of {2} and a rate that may never pass {0} + {1}",
        "a margin that the rate and its life cap leave room for, and an initial term shorter than "
        "the loan",
        "check \"margin\", the rungs, and the program's \"caps\""),

    row<p::book_expired>("a price book that ended on {1}, asked as of {0}", "a price book in force",
                         "get the current price book, or set \"as_of\" back"),
    row<p::book_not_yet>("a price book that begins on {1}, asked as of {0}",
                         "a price book in force", "use the price book of that day"),
    row_about<p::lot_not_free>("lot {0}, ", "which is {1}", "a lot that is free",
                               "pick another lot; 'quoin list lots' shows them"),
    row_about<p::plan_not_on_lot>("plan {0} ", "on lot {1}", "a plan that fits the lot: {2}",
                                  "change the plan or the lot"),
    row_about<p::option_not_here>("{0}: ", "{1}", "an option of this plan, elevation and lot",
                                  "take it out; 'quoin adds' says what can be had here"),
    row_about<p::option_needs>("{0} ", "without {1}", "{1} among the selections",
                               "add {1}, or take {0} out"),
    row_about<p::options_exclude>("{0} ", "together with {1}", "one of the two",
                                  "take one of them out"),
    row_about<p::past_cutoff>("{0} ", "after its cutoff: the build has reached \"{2}\"",
                              "a choice made before \"{1}\"",
                              "take it out, or ask the builder for a change order"),
    row_about<p::selected_twice>("{0} ", "a second time", "each option once",
                                 "remove one, or use \"quantity\""),
    row_about<p::pick_without_level>("{0} ", "as it stands", "a \"level\" of it"),
    row_about<p::pick_without_choice>("{0} ", "as it stands", "a \"choice\" of it"),
    row_about<p::pick_without_spend>("{0} ", "as it stands", "the amount to \"spend\""),
    row_about<p::pick_without_details>("{0} ", "as it stands",
                                       "an object with its \"level\", \"choice\" or \"spend\""),
    row<p::quantity_not_allowed>("{0} of {1}", "{2}"),
    row_about<p::incentive_not_here>("{0}: ", "{1}", "an incentive whose conditions hold",
                                     "take it out"),
    row<p::scenario_repeated>("a second scenario \"{0}\"", "each scenario under its own name",
                              "rename one of the two"),
    row<p::rates_missing>("no rate sheet dated on or before {0}", "lending data for this inquiry",
                          "point to data that has it with --rates DIR, or change \"as_of\""),
    row<p::not_a_fraction>("{0}",
                           "a whole number, or two with a stroke between them, such as \"19/30\""),
    row<p::no_rate>("no rate from 0 to 10,000 percent that makes advances and payments equal",
                    "payments that come after what they pay back, and come to more"),
    row<p::several_rates>("more than one rate that makes advances and payments equal",
                          "payments that come after what they pay back, and come to more",
                          "split the transaction where its balance changes sign"),
    row<p::credit_without_use>(
        "a credit that may pay nothing", "at least one entry in \"uses\"",
        "name what it may pay: \"closing costs\", \"prepaids\", \"points\", ..."),
    row<p::credit_use_not_allowed>(
        "a credit towards the {0}", "a use that its giver may pay",
        "only a program may help with the down payment; put the credit to costs or points"),

    row<p::no_model>("no furnished model in the price book", "a price book with \"model\""),
    row<p::no_scenarios>("no scenario in the inquiry", "at least one way to pay for the home",
                         "add one to \"scenarios\""),
    row<p::scenario_unknown>("no scenario \"{0}\"", "one of {2}"),
    row<p::scenario_barred>("scenario \"{0}\", which cannot be had",
                            "a scenario with figures to write",
                            "'quoin recheck' without --workbook says why"),
    row<p::no_means>("neither \"income\" nor \"cash\" in the inquiry",
                     "what a price is to be held against",
                     "add \"income\": {{\"monthly\": \"8000\"}}, \"debts\" and \"cash\""),
    row<p::option_unknown>("no option \"{0}\"",
                           "the id of an option, such as those of 'quoin list options'"),
    row<p::option_number>("\"{1}\" for {0}", "{2}"),
    row<p::payment_input>("{0} {1}", "{2}"),

    row<p::no_price_book>("no sound price book in this folder",
                          "a pricebook.json in it or up to two folders below",
                          "'quoin check FILE' says what is wrong with one"),
    row<p::cannot_listen>("{0}: {1}", "an address of this machine and a free port to listen on",
                          "--port 0 takes any free port, --port N another one"),
    row<p::http_host>("another host than the one listened on", "{0}",
                      "open the address that quoin serve printed"),
    row<p::http_origin>("a request sent by another site's page", "{0}",
                        "open the page that quoin serve printed the address of"),
    row<p::http_code_needed>("no access code", "the header Quoin-Code",
                             "the code was printed where quoin serve was started"),
    row<p::http_code_wrong>("another access code", "the one printed at the start",
                            "a new code is made each time quoin serve starts"),
    row<p::http_path_unknown>("no such path", "/, /api/cases, /api/openapi.json or a question",
                              "GET /api/openapi.json describes what there is"),
    row<p::http_method>("another method", "{1} for {0}"),
    row<p::http_content_type>("another content type", "Content-Type: application/json"),
    row<p::http_content_coding>("a compressed body", "a body without Content-Encoding"),
    row<p::http_body_length>("no single, clear length of the body",
                             "one Content-Length, no chunks, and a body only with POST"),
    row<p::http_too_large>("a body above the limit",
                           "at most {0} bytes; an inquiry has a few thousand"),
    row<p::http_incomplete>("a request that is not whole or not HTTP",
                            "a whole request, sent within the time limit"),
    row<p::http_question_unknown>("no question \"{0}\"", "one of {2:p}",
                                  "GET /api/openapi.json describes them"),
    row<p::http_option_unknown>("{0} takes no option \"{1}\"", "one of {3:p}"),
    row<p::http_option_of_none>("{0} takes no option \"{1}\"", "no options"),
    row<p::http_option_missing>("no option \"{0}\"", "{0}=...: {1}"),
    row<p::http_option_repeated>("\"{0}\" more than once", "one value"),
    row<p::http_options_exclude>("\"{0}\" and \"{1}\"", "one of them"),
    row<p::http_figures_too_large>("figures too large to count",
                                   "amounts below 90 trillion dollars"),
    row<p::http_took_too_long>(
        "a question that takes too long",
        "one that is answered within {0} seconds, and before the server ends",
        "ask with fewer scenarios; on the command line nothing but Ctrl-C ends it"),
    row<p::http_fault>("a fault of the program, not of your input", "an answer",
                       "the same inquiry on the command line says more"),
};

/// Whatever the kind of problem: the advice where a name was perhaps meant.
constexpr Checked<std::string_view> did_you_mean = "did you mean \"{0}\"?";

constexpr bool one_row_a_problem() {
    std::size_t problems = 0;
#define QUOIN_PROBLEM_COUNT(id, name, signature) ++problems;
    QUOIN_PROBLEMS(QUOIN_PROBLEM_COUNT)
#undef QUOIN_PROBLEM_COUNT
    std::array<bool, std::size(rows)> seen{};
    for (const Row& each : rows) {
        const auto place = static_cast<std::size_t>(each.id);
        if (place >= seen.size() || seen[place]) return false;
        seen[place] = true;
    }
    return problems == seen.size();
}
static_assert(one_row_a_problem());

std::string filled(std::string_view pattern,
                   const fmt::dynamic_format_arg_store<fmt::format_context>& arguments) {
    return cut(fmt::vformat(pattern, arguments), caps::line);
}

} // namespace

ProblemWords words_of(const Problem& problem) {
    fmt::dynamic_format_arg_store<fmt::format_context> arguments;
    std::string near;
    for (const Argument& argument : problem.arguments) {
        std::visit([&](const auto& each) { arguments.push_back(in_pattern(each)); }, argument);
        if (const auto* name = std::get_if<NearName>(&argument)) near = name->name;
    }
    const Row* words = std::begin(rows);
    while (words->id != problem.id) ++words; // one_row_a_problem()
    const std::string of_it = filled(words->found, arguments);
    return {cut(filled(words->name, arguments) + of_it, caps::line), of_it,
            filled(words->expected, arguments),
            near.empty() ? filled(words->advice, arguments)
                         : cut(fmt::format(did_you_mean.text, near), caps::line)};
}

} // namespace quoin
