// Rechecking the priced home: each line, the contract price, the deposits.
#include "ledger.hpp"

#include <quoin/answers/quote.hpp>

namespace quoin {
namespace {

FigureLabel label_of(const QuoteLine& line) {
    switch (line.kind) {
    case LineKind::base:
        return NamedLabel{NamedFigure::base_price, line.name};
    case LineKind::elevation:
        return NamedLabel{NamedFigure::elevation, line.name};
    case LineKind::lot:
        return NamedLabel{NamedFigure::lot_premium, line.name};
    default:
        break;
    }
    if (line.detail.empty()) return NamedLabel{NamedFigure::itself, line.name};
    return ChoiceLabel{line.name, line.detail};
}

void add_lines(const RecheckCase& of, const Ground& book, Ledger& ledger,
               std::vector<std::string>& ids) {
    Ground ground = book;
    ground.rounding = 1;
    int count = 0;
    for (const QuoteLine& line : quote_lines(of.sitting, of.home)) {
        ids.push_back("line_" + std::to_string(++count));
        if (line.quantity == Decimal::whole(1)) {
            ledger.given({ids.back(), label_of(line)}, line.amount, book);
            continue;
        }
        ledger.figure({ids.back(), label_of(line)},
                      to_cent(number(line.quantity) * number(in_dollars(line.unit_price))), ground,
                      line.amount);
    }
}

void add_deposits(const RecheckCase& of, const Ground& book, Ledger& ledger) {
    const Deposits& terms = of.sitting.book().deposits;
    if (of.sitting.inquiry().facts.deposits_paid) {
        ledger.given({"deposits", FigureCode::deposits_paid}, of.f.cash[CashPart::deposits],
                     from(CommonRule::inquiry, CommonSource::stated_by_buyer));
        return;
    }
    Ground ground = book;
    ground.rounding = 2;
    if (terms.earnest) {
        ledger.given(FigureCode::earnest_money, of.home.earnest_deposit, book);
    } else {
        ledger.given(FigureCode::earnest_percent, terms.earnest_percent, book);
        ledger.figure(FigureCode::earnest_money,
                      to_cent(percent_of(figure("contract_price"), figure("earnest_percent"))),
                      ground, of.home.earnest_deposit);
    }
    Money structural;
    for (const Line& line : of.home.lines) {
        if (line.option && at(of.sitting.book().options, *line.option).structural) {
            structural += line.amount;
        }
    }
    ledger.given(FigureCode::structural_options, structural, book);
    ledger.given(FigureCode::other_options, of.home.options - structural, book);
    ledger.given(FigureCode::structural_share, terms.structural_percent, book);
    ledger.given(FigureCode::other_share, terms.finish_percent, book);
    const auto share = [](const char* options, const char* percent) {
        return to_cent(percent_of(greatest_of({figure(options), number(0)}), figure(percent)));
    };
    ledger.figure(FigureCode::option_deposit,
                  share("structural_options", "structural_share") +
                      share("other_options", "other_share"),
                  ground, of.home.option_deposit);
    ledger.figure(FigureCode::deposits, figure("earnest_money") + figure("option_deposit"), {},
                  of.f.cash[CashPart::deposits]);
}

} // namespace

void recheck_home(const RecheckCase& of, Ledger& ledger) {
    const PriceBook& book = of.sitting.book();
    Ground ground;
    ground.rule = RuleOfFile{FileRule::price_book, book.version};
    ground.effective = book.effective;
    ground.until = plus_days(book.expires, 1);
    ground.source = book.community.builder;
    ledger.section(ProofPart::home);
    std::vector<std::string> lines;
    add_lines(of, ground, ledger, lines);
    ledger.figure(FigureCode::contract_price, sum_of_figures(lines), {}, of.home.contract_price);
    add_deposits(of, ground, ledger);
}

} // namespace quoin
