// What the program says around its answers: figures in place of an inquiry, files that are checked,
// a long search, and the inquiry that a new buyer begins with.
#pragma once

#include <quoin/inquiry/desk.hpp>
#include <quoin/lending/editions.hpp>

#include "words/phrase.hpp"
#include "words/take_home.hpp"

namespace quoin {

/// Of figures in place of an inquiry: what things are called, and what is assumed. A percent is a
/// number alone.
struct PlainWords {
    Phrase<> buyer;
    Phrase<> place;
    Phrase<> property_taxes;
    Phrase<> dues;
    Phrase<> closing_costs;
    Phrase<Text, Text> loan; ///< program, percent down
    Phrase<Text> loan_nothing_down;

    Phrase<Text> assumed_property_taxes; ///< percent of the price a year
    Phrase<> assumed_tax_days;
    Phrase<Text> assumed_insurance;     ///< percent of the price a year
    Phrase<Text> assumed_closing_costs; ///< percent of the loan
    Phrase<Text> assumed_factors;       ///< of mortgage insurance: whose
    Phrase<Text> assumed_sample_factors;
    Phrase<> assumed_cash;
    Phrase<Text> assumed_score;
};

/// Of files that are checked.
struct CheckingWords {
    NamesOf<FileKind> kind;
    Phrase<Text, Text> sound; ///< file, its kind
    /// Of which file, the list, the table's name, the last day, what follows.
    Phrase<Text, Text, Text, Date, Text> ending;
    Phrase<Text> named; ///< with its blank
    NamesOf<After> after;
};

/// Of a long search.
struct SearchWords {
    Phrase<Text, Text, Text, Text> progress; ///< how many, what for, lot, loan
    Phrase<Text, Text> best;                 ///< worth, the most that any choice could be worth
    Phrase<Text> none_yet;                   ///< likewise
    Phrase<Text> cheapest;                   ///< worth
    Phrase<> another_wish;
    Phrase<> closest;
    Phrase<> stopped;
};

/// Of the inquiry that a new buyer begins with.
struct FirstWords {
    Phrase<Date, Text> prices_ended;  ///< last day, what is assumed
    Phrase<Date, Text> prices_coming; ///< first day, likewise
    Phrase<int, int> assumed;         ///< credit score, days to the closing
};

/// Of what ends a command without an answer.
struct EndWords {
    Phrase<> stopped;
    Phrase<Text> too_large; ///< what
    Phrase<Text> fault;     ///< of the program's own: what it was
    Phrase<> no_memory;
    Phrase<> untold;
};

/// Of the local server.
struct ServeWords {
    Phrase<int, int> serves; ///< price books, inquiries
    Phrase<> address_is_open;
    Phrase<> no_page;
    Phrase<> no_browser;
    Phrase<> how_to_end;
    Phrase<> left_out;
    Phrase<> ended;
    Phrase<Text> faults; ///< how many
};

struct AppsWords {
    PlainWords plain;
    CheckingWords checking;
    SearchWords search;
    FirstWords first;
    ServeWords serve;
    EndWords end;
    TakeHomeWords take_home;
    Phrase<Text> written; ///< a file
};

} // namespace quoin
