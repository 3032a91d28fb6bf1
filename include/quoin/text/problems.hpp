// Every message that quoin has for a person's mistakes: all wording in one place, one function
// each.
//
// Each takes the spot it speaks of and the values that matter, and returns the finished problem.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/findings.hpp>
#include <quoin/text/reader.hpp>

namespace quoin::problems {

/// Every id, in the order of the error page.
[[nodiscard]] const std::vector<std::string_view>& all_ids();

// Texts and files.
Problem file_missing(std::string file, std::string_view what, std::string near);
Problem file_unreadable(std::string file, std::string_view why);
Problem file_is_folder(std::string file);
Problem file_unwritable(std::string file, std::string_view why);
Problem file_not_ours(std::string file);
Problem no_temporary_room(std::string folder, std::string_view why);
Problem file_too_large(std::string file, std::size_t bytes, std::size_t most);
Problem not_json(Span place, std::string found, std::string expected);
Problem number_too_large(Span place, std::string literal);
Problem not_utf8(Span place);
Problem too_deep(Span place, int deepest);
Problem too_many_members(Span place, std::size_t most);
Problem too_many_values(Span place, std::size_t most);
Problem too_many_columns(Span place, std::size_t found, std::size_t most);
Problem too_many_rows(Span place, std::size_t most);
Problem too_many_problems(std::size_t most);
Problem member_repeated(Span place, std::string_view key);
Problem csv_cells(Span place, std::size_t found, std::size_t expected);
Problem csv_quote(Span place);
Problem csv_column_repeated(Span place, std::string_view name);

// Values.
Problem wrong_kind(const Spot& spot, std::string_view expected);
Problem member_missing(const Spot& spot, std::string_view key);
Problem member_unknown(const Spot& spot, std::string_view key, std::string near);
Problem format_unknown(const Spot& spot, std::string_view expected);
Problem not_money(const Spot& spot);
Problem not_a_decimal(const Spot& spot);
Problem not_a_rate(const Spot& spot);
Problem not_a_date(const Spot& spot);
Problem not_a_day(const Spot& spot);
Problem not_a_whole_number(const Spot& spot, int lowest, int highest);
Problem out_of_range(const Spot& spot, std::string_view expected);
Problem not_one_of(const Spot& spot, const std::vector<std::string>& names);
Problem not_an_id(const Spot& spot);
Problem text_empty(const Spot& spot);
Problem text_not_plain(const Spot& spot);
Problem text_too_long(const Spot& spot, std::size_t letters, std::size_t most);
Problem too_many(const Spot& spot, std::size_t found, std::size_t most);
Problem members_conflict(const Spot& spot, std::string_view expected);
Problem id_repeated(const Spot& spot, std::string_view what);
/// `what` is "plan", "option", ...; `near` may be empty.
Problem name_unknown(const Spot& spot, std::string_view what, std::string_view name,
                     std::string near);

// Band tables.
Problem not_a_band(const Spot& spot);
Problem bands_overlap(const Spot& spot, std::string_view where, std::size_t other_row);
Problem bands_gap(const Spot& spot, std::string_view where);
Problem dates_overlap(const Spot& spot, std::string_view rule);

// Price books.
Problem requires_cycle(const Spot& spot, std::string_view chain);
Problem levels_not_rising(const Spot& spot, std::string_view plan);
Problem package_in_package(const Spot& spot, std::string_view part);
Problem dates_reversed(const Spot& spot, std::string_view earlier, std::string_view later);

// Rate sheets.
Problem ladder_not_falling(const Spot& spot);
Problem adjustable_out_of_bounds(const Spot& spot, std::string_view rate, std::string_view life_cap,
                                 std::string_view margin);

// Inquiries against a price book.
Problem book_expired(const Spot& spot, std::string_view as_of, std::string_view last);
Problem book_not_yet(const Spot& spot, std::string_view as_of, std::string_view first);
Problem lot_not_free(const Spot& spot, std::string_view lot, std::string_view status);
Problem plan_not_on_lot(const Spot& spot, std::string_view plan, std::string_view lot,
                        std::string_view fitting);
Problem option_not_here(const Spot& spot, std::string_view option, std::string_view why);
Problem option_needs(const Spot& spot, std::string_view option, std::string_view needed);
Problem options_exclude(const Spot& spot, std::string_view option, std::string_view other);
Problem wishes_exclude(const Spot& spot, std::string_view wish, std::string_view other,
                       std::string_view rule);
Problem past_cutoff(const Spot& spot, std::string_view option, std::string_view cutoff,
                    std::string_view reached);
Problem selected_twice(const Spot& spot, std::string_view option);
Problem pick_incomplete(const Spot& spot, std::string_view option, std::string_view needs);
Problem quantity_not_allowed(const Spot& spot, std::string_view option, std::string_view allowed);
Problem incentive_not_here(const Spot& spot, std::string_view incentive, std::string_view why);
Problem scenario_repeated(const Spot& spot, std::string_view name);
Problem rates_missing(const Spot& spot, std::string_view what);

Problem not_a_fraction(const Spot& spot);
Problem no_single_rate(const Spot& spot, bool several);
Problem credit_without_use(const Spot& spot);
Problem credit_use_not_allowed(const Spot& spot, std::string_view use);

// Questions.
Problem no_model(std::string file);
Problem no_means();
Problem scenario_barred(std::string_view name);
Problem scenario_unknown(std::string_view name, std::string near,
                         const std::vector<std::string>& names);
Problem option_unknown(std::string_view name, std::string near);
Problem option_number(std::string_view option, std::string_view found, std::string_view expected);
Problem payment_input(std::string_view what, std::string_view found, std::string_view expected);

// The local server.
Problem no_price_book(std::string folder);
Problem cannot_listen(std::string_view address, std::string_view why);

} // namespace quoin::problems
