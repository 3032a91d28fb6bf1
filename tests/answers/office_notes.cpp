// Office notes are for the desk: no answer has one unless the desk asks for it, whatever its form.
#include <shown.hpp>

#include <quoin/answers/site.hpp>
#include <quoin/answers/tour.hpp>
#include <quoin/render/answers.hpp>

#include "asked.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// Of the example's lots and options, and of their levels and choices.
std::vector<std::string> notes_of(const PriceBook& book) {
    std::vector<std::string> notes;
    const auto add = [&](const auto& items) {
        for (const auto& item : items) {
            if (!item.office_note.empty()) notes.push_back(item.office_note);
        }
    };
    add(book.lots);
    add(book.options);
    for (const Option& option : book.options) {
        add(option.levels);
        add(option.choices);
    }
    return notes;
}

std::vector<std::string> notes_of(const TourAnswer& answer) {
    std::vector<std::string> notes;
    for (const TourArea& area : answer.areas) {
        for (const TourOption& item : area.options) {
            if (!item.office_note.empty()) notes.push_back(item.office_note);
            for (const TourForm& form : item.forms) {
                if (!form.office_note.empty()) notes.push_back(form.office_note);
            }
        }
    }
    return notes;
}

bool holds(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

std::string tell(const Question& question, Form form, bool at_the_desk) {
    const apps::Loaded& loaded = six_programs();
    Asked asked{loaded.desk, loaded.inquiry, given_for(question, loaded.inquiry.scenarios.front())};
    if (at_the_desk) asked.given.emplace("office-notes", "");
    asked.width = 10'000; // no line is broken within a note
    return question.text(std::move(asked), form);
}

} // namespace

TEST_CASE("The example has office notes on a lot, an option and a level") {
    const std::vector<std::string> notes = notes_of(six_programs().desk.book);
    CHECK(notes.size() == 3);
    for (const std::string& note : notes) CHECK(note.size() > 20);
}

TEST_CASE("No rendering of any question has an office note unless the desk asks for it") {
    const std::vector<std::string> notes = notes_of(six_programs().desk.book);
    std::size_t renderings = 0;
    for (const Question& question : questions()) {
        for (const Form form : question.forms) {
            if (form == Form::workbook) continue; // the recheck, whose text is told too
            const std::string text = tell(question, form, false);
            CAPTURE(question.name, form);
            CHECK_FALSE(text.empty());
            CHECK_FALSE(holds(text, "office_note"));
            for (const std::string& note : notes) CHECK_FALSE(holds(text, note));
            ++renderings;
        }
    }
    CHECK(renderings > 30);
}

TEST_CASE("For the desk the tour and the site tell them, marked as such") {
    const std::vector<std::string> notes = notes_of(six_programs().desk.book);
    const std::string tour_text = tell(*find_question("tour"), Form::text, true);
    const std::string site_text = tell(*find_question("site"), Form::text, true);
    const std::string both = tell(*find_question("tour"), Form::json, true) +
                             tell(*find_question("site"), Form::json, true);
    for (const std::string& note : notes) {
        CAPTURE(note);
        CHECK(holds(tour_text + site_text, "For the desk: " + note));
        CHECK(holds(both, note));
    }
}

TEST_CASE("An answer is the desk's or a buyer's, and nothing else in it differs") {
    const apps::Loaded& loaded = six_programs();
    TourAnswer desk = tour(loaded.sitting(), 0, Audience::desk);
    CHECK(notes_of(desk).size() == 2);
    CHECK(notes_of(tour(loaded.sitting(), 0)).empty());
    for (TourArea& area : desk.areas) {
        for (TourOption& item : area.options) {
            item.office_note.clear();
            for (TourForm& form : item.forms) form.office_note.clear();
        }
    }
    CHECK(json_text_of(desk) == json_text_of(tour(loaded.sitting(), 0)));
    SiteAnswer site_of_desk = site(loaded.sitting(), 0, Audience::desk);
    for (SiteLot& lot : site_of_desk.lots) lot.lot.office_note.clear();
    CHECK(json_text_of(site_of_desk) == json_text_of(site(loaded.sitting())));
}

TEST_CASE("Office notes are read back with their answer") {
    const std::string text = tell(*find_question("tour"), Form::json, true);
    Findings findings;
    const auto read = read_answer<TourAnswer>(json(text), findings);
    INFO(listing(findings));
    REQUIRE(read.has_value());
    CHECK(notes_of(*read).size() == 2);
}
