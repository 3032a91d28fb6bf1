// Answering a quote: the priced home in words, and each scenario on it.
#include <quoin/answers/quote.hpp>

#include <algorithm>

#include "add_item.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

const std::string& area_name(const PriceBook& book, Index<Area> area) {
    return at(book.areas, area).name;
}

QuoteLine option_line(const PriceBook& book, const Selection& selection, const Line& line) {
    const Option& option = at(book.options, line.option.value());
    QuoteLine out;
    out.area = area_name(book, option.area);
    out.id = option.id;
    out.name = option.name;
    out.detail = form_name(option, at(selection.picks, line.pick.value()));
    out.note = option.note;
    out.unit = option.unit;
    out.structural = option.structural;
    out.work = option.work;
    return out;
}

QuoteLine quote_line(const Sitting& sitting, const Line& line) {
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    const Plan& plan = at(book.plans, selection.plan);
    QuoteLine out;
    switch (line.kind) {
    case LineKind::base:
        out.name = plan.name;
        break;
    case LineKind::elevation:
        out.name = at(plan.elevations, selection.elevation).name;
        break;
    case LineKind::lot:
        out.name = at(book.lots, selection.lot).id;
        out.note = at(book.lots, selection.lot).note;
        break;
    case LineKind::incentive: {
        const Incentive& incentive = at(book.incentives, line.incentive.value());
        out.id = incentive.id;
        out.name = incentive.name;
        break;
    }
    default:
        out = option_line(book, selection, line);
    }
    out.kind = line.kind;
    out.quantity = line.quantity;
    out.unit_price = line.unit_price;
    out.amount = line.amount;
    return out;
}

void add_open_choices(const Sitting& sitting, QuoteAnswer& answer) {
    const Selection& selection = sitting.inquiry().selection;
    for (const Index<Option> index : indexes_of(sitting.book().options)) {
        const Option& option = at(sitting.book().options, index);
        if (option.kind != OptionKind::choice || option.choices.empty()) continue;
        const Pick first{index, {}, Index<Choice>{}};
        if (!comes_with_plan(sitting.book(), first, selection.plan)) continue;
        if (selection.find(index) != nullptr) continue;
        answer.open_choices.push_back({area_name(sitting.book(), option.area), option.id,
                                       option.name, option.choices.front().name});
    }
}

template <class Value>
void add_once(std::vector<Value>& list, const Value& value) {
    if (std::find(list.begin(), list.end(), value) == list.end()) list.push_back(value);
}

void add_credit(const Incentive& incentive, const IncentiveGiven& given, QuoteAnswer& answer) {
    if (is_off_price(given.use) || given.amount.is_zero()) return;
    for (QuoteCredit& credit : answer.credits) {
        if (credit.id != incentive.id || credit.use != given.use) continue;
        credit.amount += given.amount;
        return;
    }
    answer.credits.push_back({incentive.id, incentive.name, given.use, given.amount});
}

void add_incentive_words(const Sitting& sitting, const PricedHome& home, QuoteAnswer& answer) {
    for (const IncentiveGiven& given : home.given) {
        const Incentive& incentive = at(sitting.book().incentives, given.incentive);
        if (!incentive.conditions.empty()) {
            add_once(answer.incentive_conditions, incentive.name + ": " + incentive.conditions);
        }
        if (!incentive.lender.empty()) add_once(answer.incentive_lenders, incentive.lender);
        add_credit(incentive, given, answer);
    }
    Money credited;
    for (const QuoteCredit& credit : answer.credits) credited += credit.amount;
    ensure_equal(credited, home.credited(),
                 "credits are the incentives that are not off the price");
}

} // namespace

std::vector<QuoteLine> quote_lines(const Sitting& sitting, const PricedHome& home) {
    const PriceBook& book = sitting.book();
    // What is no option stands before the areas, incentives after them.
    const auto rank = [&](const Line& line) {
        if (line.kind == LineKind::incentive) return book.areas.size() + 1;
        return line.option ? at(book.options, *line.option).area.position() + 1 : 0;
    };
    std::vector<Line> ordered = home.lines;
    std::stable_sort(ordered.begin(), ordered.end(),
                     [&](const Line& a, const Line& b) { return rank(a) < rank(b); });
    std::vector<QuoteLine> lines;
    for (const Line& line : ordered) lines.push_back(quote_line(sitting, line));
    Money sum;
    for (const QuoteLine& line : lines) sum += line.amount;
    ensure_equal(sum, home.contract_price, "the lines of a quote sum to its contract price");
    return lines;
}

QuoteAnswer quote(const Sitting& sitting) {
    const Inquiry& inquiry = sitting.inquiry();
    const PricedHome home = price_home(sitting.book(), inquiry.selection);
    QuoteAnswer answer;
    answer.heading = heading_of(sitting);
    answer.lines = quote_lines(sitting, home);
    answer.options = home.options;
    answer.incentives = home.incentives;
    answer.contract_price = home.contract_price;
    for (const Request& request : inquiry.selection.requests) {
        answer.requests.push_back(
            {area_name(sitting.book(), request.area), request.text, request.estimate});
    }
    add_open_choices(sitting, answer);
    add_incentive_words(sitting, home, answer);
    answer.earnest_deposit = home.earnest_deposit;
    answer.option_deposit = home.option_deposit;
    answer.deposits_paid = inquiry.facts.deposits_paid;
    answer.deposit_note = sitting.book().deposits.note;
    const auto figures = sitting.figures(home);
    for (std::size_t i = 0; i < figures.size(); ++i) {
        answer.scenarios.push_back(scenario_answer(sitting, sitting.rules()[i], figures[i]));
    }
    for (const ScenarioAnswer& scenario : answer.scenarios) {
        ensure_equal(scenario.price, answer.contract_price, "every loan of a quote is on its home");
    }
    return answer;
}

} // namespace quoin
