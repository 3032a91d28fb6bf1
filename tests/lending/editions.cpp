// Which edition of a list to go by: before the first, within, between and after the last.
#include <shown.hpp>

#include <quoin/lending/editions.hpp>
#include <quoin/lending/ratio_limits.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

using State = Edition<BandTable>::State;

BandTable table(const char* effective, const char* until, After after = After::unknown) {
    BandTable made;
    if (*effective != '\0') made.effective = date(effective);
    if (*until != '\0') made.until = date(until);
    made.after = after;
    made.values = {Decimal::whole(1)};
    made.written = {"any"};
    return made;
}

Edition<BandTable> on(const std::vector<BandTable>& list, const char* day) {
    return edition_on(list, {date(day), date(day)});
}

/// The problems of a program's ratios of these dates.
Ids mistakes(const std::string& dates) {
    const Document document = json(
        R"({"ratios": [{"back": "40", "status": "sample", "source": "invented")" + dates + "}]}");
    Findings findings;
    Reader reader(document.root, Path{}, findings);
    static_cast<void>(read_ratio_limits(reader));
    return problem_ids(findings);
}

} // namespace

TEST_CASE("A list is in force, has ended, is still to come, or is none: each said for itself") {
    const std::vector<BandTable> list = {table("2026-01-01", "2027-01-01", After::continues),
                                         table("2025-01-01", "2026-01-01")};
    CHECK(on({}, "2026-06-01").state() == State::none);
    CHECK(on({}, "2026-06-01").is_known());
    CHECK(on({}, "2026-06-01").rule() == nullptr);

    const auto before = on(list, "2024-12-31");
    CHECK(before.state() == State::not_yet);
    CHECK(before.found() == &list[1]); // the first, wherever it stands
    CHECK(before.rule() == nullptr);
    CHECK_FALSE(before.is_known());
    CHECK(before.gap(RuleList::loan_limit) ==
          ListGap{RuleList::loan_limit, ListGap::Kind::not_yet, date("2025-01-01")});

    CHECK(on(list, "2025-01-01").rule() == &list[1]);
    CHECK(on(list, "2025-12-31").rule() == &list[1]);
    CHECK(on(list, "2026-01-01").rule() == &list[0]);
    CHECK(on(list, "2026-12-31").state() == State::in_force);
    CHECK_FALSE(on(list, "2026-12-31").continues());

    const auto after = on(list, "2027-01-01");
    CHECK(after.state() == State::ended);
    CHECK(after.rule() == &list[0]); // the last, though it stands first
    CHECK(after.continues());
    CHECK(after.is_known());
    CHECK(after.gap(RuleList::loan_limit) ==
          ListGap{RuleList::loan_limit, ListGap::Kind::ended, date("2027-01-01")});
}

TEST_CASE("What follows the end is what the last edition says") {
    const auto after = [](After what) {
        const std::vector<BandTable> list = {table("2026-01-01", "2027-01-01", what)};
        const auto edition = on(list, "2027-01-01");
        return std::tuple(edition.is_known(), edition.rule() != nullptr, edition.is_no_more());
    };
    CHECK(after(After::unknown) == std::tuple(false, false, false));
    CHECK(after(After::continues) == std::tuple(true, true, false));
    CHECK(after(After::ends) == std::tuple(true, false, true));
    // Between two editions it is what the earlier one says.
    const std::vector<BandTable> apart = {table("2025-01-01", "2025-06-01", After::continues),
                                          table("2026-01-01", "")};
    CHECK(on(apart, "2025-09-01").rule() == &apart[0]);
    CHECK(on(apart, "2026-01-01").rule() == &apart[1]);
    // Without a first or a last day it is for ever.
    const std::vector<BandTable> for_ever = {table("", "")};
    CHECK(on(for_ever, "1900-01-01").state() == State::in_force);
    CHECK(on(for_ever, "2200-01-01").state() == State::in_force);
}

TEST_CASE("A table that is dated by the closing looks at no other day") {
    std::vector<BandTable> list = {table("2026-01-01", "2027-01-01")};
    list[0].by_closing = true;
    CHECK(edition_on(list, {date("2025-06-01"), date("2026-06-01")}).rule() == &list[0]);
    CHECK_FALSE(edition_on(list, {date("2026-06-01"), date("2027-06-01")}).is_known());
}

TEST_CASE("What follows the end stands beside an end, in one of three words") {
    CHECK(mistakes("").empty());
    CHECK(mistakes(R"(, "until": "2027-01-01")").empty());
    for (const char* word : {"continues", "ends", "unknown"}) {
        CHECK(mistakes(R"(, "until": "2027-01-01", "after": ")" + std::string(word) + '"').empty());
    }
    CHECK(mistakes(R"(, "until": "2027-01-01", "after": "goes on")") == Ids{"not-one-of"});
    CHECK(mistakes(R"(, "after": "continues")") == Ids{"members-conflict"});
}

TEST_CASE("Adjustments of one name are the editions of one, those without a name each their own") {
    const auto named = [](const char* name, BandTable made) {
        made.name = name;
        return Adjustment{{"any"}, std::move(made)};
    };
    RateSheet sheet;
    sheet.adjustments = {named("Score", table("", "2026-06-01")),
                         named("Score", table("2026-06-01", "")), named("", table("", "")),
                         named("", table("", "")), named("Term", table("2026-09-01", ""))};
    const auto& all = sheet.adjustments;
    const auto found = [&](const char* day, ListGaps& gaps) {
        return adjustments_on(sheet, "any", {date(day), date(day)}, gaps);
    };
    ListGaps early;
    CHECK(found("2026-05-31", early) == std::vector{&all[0].table, &all[2].table, &all[3].table});
    CHECK(early.unknown == std::vector{ListGap{RuleList::points_adjustment, ListGap::Kind::not_yet,
                                               date("2026-09-01")}});
    ListGaps late;
    CHECK(found("2026-09-01", late) ==
          std::vector{&all[1].table, &all[2].table, &all[3].table, &all[4].table});
    CHECK(late.unknown.empty());
    sheet.adjustments[1].table.until = date("2026-10-01");
    sheet.adjustments[1].table.after = After::continues;
    CHECK(found("2026-10-01", late).size() == 4);
    CHECK(late.continued.size() == 1);
    ListGaps none;
    CHECK(adjustments_on(sheet, "other", {date("2026-10-01"), date("2026-10-01")}, none).empty());
    CHECK(none.unknown.empty());
}

TEST_CASE("Tables that end soon are those that no other takes over from") {
    LoanProgram program;
    auto& limits = program.rules[static_cast<std::size_t>(Rule::loan_limit)];
    limits = {table("2025-01-01", "2026-01-01"), table("2026-01-01", "2027-01-01")};
    program.rules[static_cast<std::size_t>(Rule::upfront_fee)] = {table("2026-01-01", "")};
    const auto ends = [&](const char* day, const char* by) {
        return endings_of(program, date(day), date(by));
    };
    CHECK(ends("2025-12-01", "2026-06-01").empty()); // the next is there
    CHECK(ends("2026-10-02", "2027-01-01").empty());
    const auto soon = ends("2026-10-03", "2027-01-02");
    REQUIRE(soon.size() == 1);
    CHECK(soon.front().list == RuleList::loan_limit);
    CHECK(soon.front().until == date("2027-01-01"));
    CHECK(ends("2028-01-01", "2028-03-31").size() == 1); // it has ended already
    CHECK(ends("2024-01-01", "2024-03-31").empty());
}
