// Rendering the cash of a scenario as text.
#include <quoin/answers/cash.hpp>
#include <quoin/render/answers.hpp>

#include "cash_words.hpp"
#include "own_cautions.hpp"
#include "words/cash.hpp"
#include "words/parts.hpp"
#include "words/side_by_side.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Table two_columns(std::string last = {}) {
    return Table(
        {{"", Align::left, 66, 62}, {"", Align::left, 16, 14}, {last, Align::right, 14, 14}});
}

std::string payer_text(const CostLine& line, const Catalogue& say) {
    if (line.paid_by != PaidBy::buyer) return say.parts.paid_by(line.paid_by);
    return line.before_closing ? say.cash.when_ordered() : std::string();
}

Money buyers_sum(const CashAnswer& answer, CostSection section) {
    Money sum;
    for (const CostLine& line : answer.costs) {
        if (line.section == section && line.paid_by == PaidBy::buyer) sum += line.amount;
    }
    return sum;
}

void add_section(const CashAnswer& answer, CostSection section, Table& table,
                 const Catalogue& say) {
    bool headed = false;
    for (const CostLine& line : answer.costs) {
        if (line.section != section) continue;
        if (!headed) {
            table.row({say.parts.section(section), "", dollars(buyers_sum(answer, section))});
            headed = true;
        }
        table.row({"  " + (line.finance_charge ? say.cash.in_finance_charge(line.name) : line.name),
                   payer_text(line, say), dollars(line.amount)});
    }
}

Blocks costs_text(const CashAnswer& answer, const Catalogue& say) {
    Table table = two_columns(say.cash.buyers_sums());
    for (const CostSection section :
         {CostSection::origination, CostSection::not_shopped_for, CostSection::shopped_for,
          CostSection::taxes_and_government, CostSection::other}) {
        add_section(answer, section, table, say);
    }
    return titled(say.cash.closing_costs()) + table;
}

Blocks prepaids_text(const CashAnswer& answer, const Catalogue& say) {
    if (answer.prepaids.empty()) return {};
    Table table = two_columns();
    for (const PrepaidLine& line : answer.prepaids) {
        table.row({prepaid_words(line, say),
                   line.due ? say.cash.bill_due(*line.due) : std::string(), dollars(line.amount)});
    }
    return titled(say.cash.prepaids()) + table;
}

/// "$1,350.00 short and spreads it over twelve months; $112.50 more a month".
std::string found_words(const EscrowYearEnd& end, Money change, const CashWords& say) {
    std::string changes;
    if (change > Money{}) changes = say.more_a_month(change);
    if (change < Money{}) changes = say.less_a_month(-change);
    if (!end.shortage.is_zero()) return say.finds_short(end.shortage, changes);
    if (!end.refund.is_zero()) return say.finds_over(end.refund, changes);
    return say.finds_nothing(changes);
}

std::string ends_text(const EscrowOutlook& outlook, const CashWords& say) {
    std::string out;
    for (std::size_t year = 0; year < outlook.ends.size() && year < say.analysis.size(); ++year) {
        out += " " + say.analysis[year](found_words(outlook.ends[year], outlook.change(year), say));
    }
    return out;
}

Blocks outlook_text(const NewHomeEscrow& outlook, const CashWords& say) {
    Blocks out = paragraph(say.set_from_settled() + ends_text(outlook.from_settled, say), "  ");
    const EscrowAccount& land = outlook.from_first_bills.first;
    if (land.deposit == outlook.from_settled.first.deposit) return out;
    return out +
           paragraph(say.set_from_land(land.deposit) + ends_text(outlook.from_first_bills, say),
                     "  ");
}

Blocks escrow_text(const CashAnswer& answer, const Catalogue& say) {
    const CashWords& of = say.cash;
    if (!answer.escrow) return "\n" + paragraph(of.no_escrow());
    const EscrowAccount& account = answer.escrow->account;
    Blocks out =
        "\n" + paragraph(of.escrow(account.initial_deposit, account.deposit, account.cushion));
    Table table({{of.escrow_month(), Align::left, 10, 10},
                 {of.escrow_in(), Align::right, 12, 12},
                 {of.escrow_bills(), Align::right, 12, 12},
                 {of.escrow_balance(), Align::right, 12, 12}});
    for (const EscrowMonth& month : account.months) {
        table.row({of.calendar_month(static_cast<int>(month.month.month()), month.month.year()),
                   dollars(month.deposit), dollars(month.paid), dollars(month.balance)});
    }
    out += table;
    for (const EscrowBill& bill : answer.escrow->bills) {
        out += "  " + of.escrow_bill(bill_words(bill.item, say), bill.due, bill.amount) + "\n";
    }
    if (answer.escrow->outlook) out += outlook_text(*answer.escrow->outlook, of);
    return out;
}

/// How much interested parties may give, where that is limited, and what is over it.
Blocks cap_text(const CashAnswer& answer, const CashWords& say) {
    const CreditsUsed& credits = answer.scenario.credits;
    Blocks out;
    if (answer.contribution_cap) {
        const auto& phrase = answer.cap_by_price ? say.cap_of_price : say.cap_of_value;
        out += paragraph(
            phrase(percent_text(answer.contribution_cap->value(), 0), credits.interested_parties),
            "  ");
    }
    if (!credits.over_cap.is_zero()) {
        out += paragraph(
            say.over_cap(credits.over_cap, percent_text(answer.effects.ltv_if_given.value(), 2)),
            "  ");
    }
    return out;
}

Blocks credits_text(const CashAnswer& answer, const Catalogue& say) {
    const CreditsUsed& credits = answer.scenario.credits;
    if (answer.credits.empty() && credits.without_use.is_zero() && credits.over_cap.is_zero()) {
        return {};
    }
    Table table = two_columns();
    for (const CreditLine& line : answer.credits) {
        table.row(
            {say.cash.used_for(words(line.use, answer.scenario, say)), "", dollars(line.amount)});
    }
    if (!credits.without_use.is_zero()) {
        table.row({say.cash.without_use(), "", dollars(credits.without_use)});
    }
    return titled(say.cash.credits()) + table + cap_text(answer, say.cash);
}

Blocks buydown_text(const CashAnswer& answer, const CashWords& say) {
    const auto& buydown = answer.scenario.buydown;
    if (!buydown) return {};
    const Money own = answer.scenario.cost_of_credit.buydown.put_up;
    Blocks out = titled(say.buydown(buydown->total_subsidy(), own));
    int year = 0;
    for (const BuydownYear& bought : buydown->years) {
        out += paragraph(say.bought_down(++year, bought.rate, bought.payment, bought.subsidy), "  ",
                         "    ");
    }
    return out + "  " + say.after_buydown(buydown->note_payment, buydown->qualifying_rate()) + "\n";
}

/// What becomes of a lender credit that closing costs and prepaids do not use up.
Blocks lender_credit_text(const ScenarioAnswer& scenario, const CashWords& say) {
    Blocks out;
    const Money reduction = scenario.cash[CashPart::principal_reduction];
    if (!reduction.is_zero()) out += paragraph(say.lender_credit_reduces(reduction), "  ");
    const Money lost = scenario.lender_credit_without_use;
    if (!lost.is_zero()) out += paragraph(say.lender_credit_lost(lost), "  ");
    return out;
}

/// What a part of the cash is called in this scenario.
std::string name_of(CashPart part, const ScenarioAnswer& scenario, const Catalogue& say) {
    if (part == CashPart::principal_reduction) return say.cash.principal_reduced();
    if (part == CashPart::points) {
        return scenario.cash[part] < Money{} ? say.cash.lender_credit() : say.cash.points();
    }
    const bool paid_up = part == CashPart::upfront_fee && scenario.insurance.paid_up;
    return paid_up ? say.cash.premium_in_cash(upfront_fee_words(scenario, say))
                   : say.parts.cash(part);
}

Blocks needed_text(const CashAnswer& answer, const Catalogue& say) {
    const CashToClose& cash = answer.scenario.cash;
    const CashWords& of = say.cash;
    Table table = two_columns();
    const auto row = [&](const std::string& name, Money amount) {
        if (!amount.is_zero()) table.row({name, "", dollars(amount)});
    };
    const auto part = [&](const CashPartRow& each) {
        row(name_of(each.part, answer.scenario, say), cash[each.part] * each.sign);
    };
    for (const CashPartRow& each : needed_parts) {
        part(each);
        if (each.part == CashPart::down_payment) {
            row("  " + of.appraisal_gap(), answer.effects.appraisal_gap);
        }
    }
    table.rule();
    row(of.cash_needed(), cash.needed());
    for (const CashPartRow& each : paid_before_parts) part(each);
    const bool back = cash.to_close() < Money{};
    table.row({back ? say.side.back() : of.left_to_bring(), "",
               dollars(back ? -cash.to_close() : cash.to_close())});
    return titled(of.cash()) + table + lender_credit_text(answer.scenario, of);
}

Blocks calendar_text(const CashAnswer& answer, const Catalogue& say) {
    Table table = two_columns();
    for (const CalendarDay& day : answer.calendar) {
        const SaidDay said = said_day(day, say);
        table.row({said.what, short_date(day.date), said.amount});
    }
    return titled(say.cash.when()) + table;
}

Blocks credit_cost_text(const ScenarioAnswer& scenario, const CashWords& say) {
    const CostOfCredit& cost = scenario.cost_of_credit;
    Table table = two_columns();
    const auto row = [&](const std::string& name, const std::string& figure) {
        table.row({name, "", figure});
    };
    row(say.prepaid_finance_charge(), dollars(cost.prepaid_finance_charge));
    if (!cost.buydown.put_up.is_zero()) {
        row("  " + say.own_part_of_buydown(), dollars(cost.buydown.put_up));
    }
    row(say.amount_financed(), dollars(cost.amount_financed));
    row(say.finance_charge(), dollars(cost.finance_charge));
    row(say.total_of_payments(), dollars(cost.total_of_payments));
    row(say.cost_in_five_years(), dollars(cost.disclosed_in_five_years));
    row(say.principal_in_five_years(), dollars(cost.disclosed_principal_in_five_years));
    for (const PaymentLevel& level : cost.levels) {
        row(say.payments(level.from, level.to), dollars(level.payment));
    }
    row(say.apr(), cost.apr ? disclosed_text(cost.apr->percent()) : say.no_apr());
    row(say.total_interest_percentage(), disclosed_text(cost.total_interest_percentage.value()));
    return titled(say.cost_of_credit()) + table;
}

} // namespace

Cautions cautions_of(const CashAnswer& answer, const Catalogue& say) {
    Cautions notes = loan_cautions(answer.heading, {answer.scenario.terms}, say);
    notes.push_back(agent_caution(say));
    return notes;
}

Blocks blocks_of(const CashAnswer& answer, const Catalogue& say) {
    const CashWords& of = say.cash;
    const ScenarioAnswer& scenario = answer.scenario;
    const Blocks heading = heading_text(answer.heading, of.title(), say);
    if (!scenario.available()) {
        return refused_lines(scenario.terms, scenario.refusals, say) + "\n" + heading;
    }
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" + heading;
    out += paragraph(
        of.month(scenario.terms.name, scenario.monthly.total(), terms_line(scenario.terms, say)));
    out += needed_text(answer, say) + calendar_text(answer, say) + costs_text(answer, say) +
           prepaids_text(answer, say) + escrow_text(answer, say) + credits_text(answer, say) +
           buydown_text(answer, of) + credit_cost_text(scenario, of);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
