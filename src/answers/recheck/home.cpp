// Rechecking the priced home: each line, the contract price, the deposits.
#include "ledger.hpp"

#include <quoin/answers/quote.hpp>

namespace quoin {
namespace {

std::string label_of(const QuoteLine& line) {
    switch (line.kind) {
    case LineKind::base:
        return "Base price, " + line.name;
    case LineKind::elevation:
        return "Elevation, " + line.name;
    case LineKind::lot:
        return "Lot premium, lot " + line.name;
    default:
        return line.detail.empty() ? line.name : line.name + ": " + line.detail;
    }
}

void add_lines(const RecheckCase& of, const Ground& book, Ledger& ledger,
               std::vector<std::string>& ids) {
    Ground ground = book;
    ground.rounding = 1;
    int count = 0;
    for (const QuoteLine& line : quote_lines(of.sitting, of.home)) {
        ids.push_back("line_" + std::to_string(++count));
        if (line.quantity == Decimal::whole(1)) {
            ledger.given(ids.back(), label_of(line), line.amount, book);
            continue;
        }
        ledger.figure(ids.back(), label_of(line),
                      to_cent(number(line.quantity) * number(in_dollars(line.unit_price))), ground,
                      line.amount);
    }
}

void add_deposits(const RecheckCase& of, const Ground& book, Ledger& ledger) {
    const Deposits& terms = of.sitting.book().deposits;
    if (of.sitting.inquiry().facts.deposits_paid) {
        ledger.given("deposits", "deposits paid", of.f.cash[CashPart::deposits],
                     from("inquiry", "stated by the buyer"));
        return;
    }
    Ground ground = book;
    ground.rounding = 2;
    if (terms.earnest) {
        ledger.given("earnest_money", "earnest money", of.home.earnest_deposit, book);
    } else {
        ledger.given("earnest_percent", "earnest money, of the price", terms.earnest_percent, book);
        ledger.figure("earnest_money", "earnest money",
                      to_cent(percent_of(figure("contract_price"), figure("earnest_percent"))),
                      ground, of.home.earnest_deposit);
    }
    Money structural;
    for (const Line& line : of.home.lines) {
        if (line.option && at(of.sitting.book().options, *line.option).structural) {
            structural += line.amount;
        }
    }
    ledger.given("structural_options", "structural options among the lines", structural, book);
    ledger.given("other_options", "other options among the lines", of.home.options - structural,
                 book);
    ledger.given("structural_share", "deposit, of structural options", terms.structural_percent,
                 book);
    ledger.given("other_share", "deposit, of other options", terms.finish_percent, book);
    const auto share = [](const char* options, const char* percent) {
        return to_cent(percent_of(greatest_of({figure(options), number(0)}), figure(percent)));
    };
    ledger.figure("option_deposit", "option deposit",
                  share("structural_options", "structural_share") +
                      share("other_options", "other_share"),
                  ground, of.home.option_deposit);
    ledger.figure("deposits", "deposits", figure("earnest_money") + figure("option_deposit"), {},
                  of.f.cash[CashPart::deposits]);
}

} // namespace

void recheck_home(const RecheckCase& of, Ledger& ledger) {
    const PriceBook& book = of.sitting.book();
    Ground ground;
    ground.rule = "price book " + book.version;
    ground.effective = book.effective;
    ground.until = plus_days(book.expires, 1);
    ground.source = book.community.builder;
    ledger.section(RecheckSheet::home, "The home");
    std::vector<std::string> lines;
    add_lines(of, ground, ledger, lines);
    ledger.figure("contract_price", "contract price", sum_of_figures(lines), {},
                  of.home.contract_price);
    add_deposits(of, ground, ledger);
}

} // namespace quoin
