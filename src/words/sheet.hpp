// What the buyer takes home.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct SheetWords {
    Phrase<Text, Text, Text> page; ///< its title: community, plan, lot
    // The head.
    Phrase<Text, Text> home;               ///< plan, lot
    Phrase<Text, Text, Text> home_is;      ///< style, square feet, elevation
    Phrase<Text, Text> home_without_style; ///< square feet, elevation
    Phrase<Text> buyer;
    // What stands large, and beside it.
    Phrase<> month;
    Phrase<Money> month_on_land; ///< what it is at first
    Phrase<Money> month_bought_down;
    Phrase<> down_payment;
    Phrase<Money, Text> down; ///< amount, percent of the price
    Phrase<> to_close;
    Phrase<> to_come_back;
    Phrase<Text> not_available; ///< reasons
    /// As of, the rates' day, lender, what more has to be known of the rates.
    Phrase<Date, Date, Text, Text> estimate;
    Phrase<> sample;
    // The home.
    Phrase<> in_the_home;
    Phrase<> plan_and_lot;     ///< heads the base price, the elevation and the lot
    Phrase<Text, Text> choice; ///< name, what it is if nothing is chosen
    Phrase<> requests;
    Phrase<> incentives;
    Phrase<> drawings;
    Phrase<Text> lot; ///< under its drawing
    Phrase<> drawn;   ///< what decides beside the drawings
    // The loans.
    Phrase<> loans;
    Phrase<> calendar;
    Phrase<> dates;
    Phrase<> deposits;
    Phrase<> rates_good_through;
    Phrase<> lock_ends;
    Phrase<> price_book_good_through;
    Phrase<> closing;
    Phrase<> first_payment;
    Phrase<Date> table_day;
    // What has to be known, each once.
    Phrase<> notes;
    Phrase<Text, Text> catch_of; ///< program, its catch
    Phrase<> decides;
    Phrase<Text> license; ///< of the lender
    Phrase<> rates_hold;
    Phrase<> rates_out_of_date;
    Phrase<Text, Text> costs; ///< place, that it is a sample
    Phrase<> adjustable;
    Phrase<Text> extra; ///< of which loans
    Phrase<> work;      ///< that is marked
    // Who gave it.
    Phrase<> prepared_by;
    Phrase<> originator;
    Phrase<> license_number;
    Phrase<> telephone;
    Phrase<> gone_through; ///< the day, to be written by hand
    // The foot of each side of paper.
    Phrase<Date> foot;
    Phrase<> of; ///< between a page's number and how many there are
};

} // namespace quoin
