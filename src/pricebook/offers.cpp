// Reading incentives and deposits.
#include "book_reader.hpp"

namespace quoin {
namespace {

const Words<IncentiveBase> base_words = {{IncentiveBase::base_price, "base price"},
                                         {IncentiveBase::options, "options"},
                                         {IncentiveBase::contract_price, "contract price"}};

std::vector<IncentiveUse> read_uses(Reader& incentive) {
    auto uses = incentive.words<IncentiveUse>("uses");
    if (incentive.sound() && uses.empty()) {
        incentive.report(problems::incentive_without_use(incentive.here()));
    }
    return uses;
}

void read_amount(Reader& item, Incentive& incentive) {
    incentive.amount = item.maybe_money("amount");
    if (item.has("percent") == item.has("amount")) {
        item.report(problems::incentive_amount_unclear(item.here()));
    }
    if (!item.has("percent")) return;
    incentive.percent = item.percent("percent");
    incentive.of = item.word("of", base_words);
}

} // namespace

void read_offers(Reader& root, PriceBook& book) {
    root.each("incentives", [&](Reader& item) {
        Incentive incentive;
        incentive.id = item.id("id");
        incentive.name = item.name("name");
        read_amount(item, incentive);
        incentive.uses = read_uses(item);
        incentive.plans = index_list(item, "plans", book.plans, Noun::plan);
        incentive.lots = index_list(item, "lots", book.lots, Noun::lot);
        incentive.lender = item.name_or("lender", "");
        incentive.expires = item.maybe_date("expires");
        incentive.close_by = item.maybe_date("close_by");
        incentive.conditions = item.text_or("conditions", "");
        distinct_id(item, book.incentives, incentive.id, Noun::incentive);
        book.incentives.push_back(std::move(incentive));
    });
    root.object("deposits", [&](Reader& item) {
        item.object("earnest", [&](Reader& earnest) {
            book.deposits.earnest = earnest.maybe_money("amount");
            if (!book.deposits.earnest) book.deposits.earnest_percent = earnest.percent("percent");
        });
        item.object("options", [&](Reader& share) {
            book.deposits.structural_percent = share.percent("structural_percent");
            book.deposits.finish_percent = share.percent("finish_percent");
        });
        book.deposits.note = item.text_or("note", "");
    });
}

} // namespace quoin
