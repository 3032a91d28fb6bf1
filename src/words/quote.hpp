// What the price of a home, line by line, is told with.
#pragma once

#include <quoin/pricebook/price_book.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct QuoteWords {
    Phrase<> title;
    Phrase<Text> base_price; ///< plan
    Phrase<Text> elevation;
    Phrase<Text> lot_premium;        ///< lot
    Phrase<Text, Text> named;        ///< option, its level or choice
    Phrase<Text, Text, Money> times; ///< quantity, unit with its blank, price of one
    Phrase<> no_cost;
    Phrase<> in_package;
    Phrase<> contract_price;
    Phrase<> requests;
    Phrase<Text, Text, Text> request; ///< area, what is asked for, its estimate
    Phrase<Money> estimated;
    Phrase<> open_choices;
    Phrase<Text, Text, Text> open_choice; ///< area, what is to choose, what it is else
    Phrase<> incentives;
    Phrase<Text, Text, Money> towards; ///< incentive, what it goes to, amount
    NamesOf<IncentiveUse> use;
    Phrase<Text> only_with; ///< lender
    Phrase<> deposits;
    Phrase<> earnest_money;
    Phrase<> option_share;
    Phrase<> paid_so_far;
    Phrase<> month;
    Phrase<> cash;
};

} // namespace quoin
