// Rendering the cash of a scenario as text.
#include <quoin/answers/cash.hpp>
#include <quoin/render/answers.hpp>

#include <fmt/format.h>

#include "own_cautions.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Table two_columns(std::string last = {}) {
    return Table(
        {{"", Align::left, 66, 62}, {"", Align::left, 16, 14}, {last, Align::right, 14, 14}});
}

std::string payer_text(const CostLine& line) {
    if (line.paid_by != PaidBy::buyer) return "paid by the " + std::string(name_of(line.paid_by));
    return line.before_closing ? "when ordered" : "";
}

Money buyers_sum(const CashAnswer& answer, CostSection section) {
    Money sum;
    for (const CostLine& line : answer.costs) {
        if (line.section == section && line.paid_by == PaidBy::buyer) sum += line.amount;
    }
    return sum;
}

void add_section(const CashAnswer& answer, CostSection section, Table& table) {
    bool headed = false;
    for (const CostLine& line : answer.costs) {
        if (line.section != section) continue;
        if (!headed) {
            table.row({std::string(name_of(section)), "", dollars(buyers_sum(answer, section))});
            headed = true;
        }
        table.row({"  " + line.name + (line.finance_charge ? " (finance charge)" : ""),
                   payer_text(line), dollars(line.amount)});
    }
}

std::string costs_text(const CashAnswer& answer) {
    Table table = two_columns("buyer's sums");
    for (const CostSection section :
         {CostSection::origination, CostSection::not_shopped_for, CostSection::shopped_for,
          CostSection::taxes_and_government, CostSection::other}) {
        add_section(answer, section, table);
    }
    return "\nClosing costs\n" + table.text();
}

std::string prepaids_text(const CashAnswer& answer) {
    if (answer.prepaids.empty()) return {};
    Table table = two_columns();
    for (const PrepaidLine& line : answer.prepaids) {
        table.row({line.name, line.due ? "due " + line.due->text() : "", dollars(line.amount)});
    }
    return "\nPrepaid at closing\n" + table.text();
}

/// "short $1,350.00, spread over twelve months: $112.50 more a month".
std::string found_words(const EscrowYearEnd& end, Money change) {
    std::string words;
    if (!end.shortage.is_zero()) {
        words = dollars(end.shortage) + " short and spreads it over twelve months";
    } else if (!end.refund.is_zero()) {
        words = dollars(end.refund) + " over, which is paid back";
    } else {
        words = "nothing missing";
    }
    if (change.is_zero()) return words;
    return words + (change > Money{} ? fmt::format("; {} more a month", dollars(change))
                                     : fmt::format("; {} less a month", dollars(-change)));
}

std::string ends_text(const EscrowOutlook& outlook) {
    constexpr const char* ordinals[] = {"first", "second", "third", "fourth"};
    std::string out;
    for (std::size_t year = 0; year < outlook.ends.size() && year < std::size(ordinals); ++year) {
        out += fmt::format(" The analysis after the {} year finds {}.", ordinals[year],
                           found_words(outlook.ends[year], outlook.change(year)));
    }
    return out;
}

std::string outlook_text(const NewHomeEscrow& outlook) {
    std::string out =
        paragraph("It is set from the settled tax." + ends_text(outlook.from_settled), "  ");
    const EscrowAccount& land = outlook.from_first_bills.first;
    if (land.deposit == outlook.from_settled.first.deposit) return out;
    return out + paragraph(fmt::format("If the lender sets it from the land-only bills instead, it "
                                       "is {} a month in the first year.",
                                       dollars(land.deposit)) +
                               ends_text(outlook.from_first_bills),
                           "  ");
}

std::string escrow_text(const CashAnswer& answer) {
    if (!answer.escrow) return "\nEscrow account: none (waived, or the due days are not known)\n";
    const EscrowAccount& account = answer.escrow->account;
    std::string out = fmt::format(
        "\nEscrow account: {} at closing, {} a month, never under its cushion of {}\n",
        dollars(account.initial_deposit), dollars(account.deposit), dollars(account.cushion));
    Table table({{"month", Align::left, 10, 10},
                 {"in", Align::right, 12, 12},
                 {"bills", Align::right, 12, 12},
                 {"balance", Align::right, 12, 12}});
    for (const EscrowMonth& month : account.months) {
        table.row({month.month.text().substr(0, 7), dollars(month.deposit), dollars(month.paid),
                   dollars(month.balance)});
    }
    out += table.text();
    for (const EscrowBill& bill : answer.escrow->bills) {
        out += fmt::format("  {} due {}: {}\n", bill.item, bill.due.text(), dollars(bill.amount));
    }
    if (answer.escrow->outlook) out += outlook_text(*answer.escrow->outlook);
    return out;
}

std::string credits_text(const CashAnswer& answer) {
    const CreditsUsed& credits = answer.scenario.credits;
    if (answer.credits.empty() && credits.without_use.is_zero() && credits.over_cap.is_zero()) {
        return {};
    }
    Table table = two_columns();
    for (const CreditLine& line : answer.credits) {
        table.row({"used for " + words(line.use, answer.scenario), "", dollars(line.amount)});
    }
    if (!credits.without_use.is_zero()) {
        table.row({"nothing left that it may pay", "", dollars(credits.without_use)});
    }
    std::string out = "\nCredits\n" + table.text();
    if (answer.contribution_cap) {
        out += fmt::format("  interested parties may give {} of the {}; {} of it counts here\n",
                           percent_text(answer.contribution_cap->value(), 0),
                           answer.cap_by_price ? "price" : "value",
                           dollars(credits.interested_parties));
    }
    if (!credits.over_cap.is_zero()) {
        out +=
            paragraph(fmt::format("{} is over that cap. Given all the same it would come off the "
                                  "price for LTV, which would be {}.",
                                  dollars(credits.over_cap),
                                  percent_text(answer.effects.ltv_if_given.value(), 2)),
                      "  ");
    }
    return out;
}

std::string buydown_text(const CashAnswer& answer) {
    const auto& buydown = answer.scenario.buydown;
    if (!buydown) return {};
    const Money own = answer.scenario.cost_of_credit.buydown.put_up;
    std::string out =
        fmt::format("\nTemporary buydown: {} put up at closing, {} of it by the buyer\n",
                    dollars(buydown->total_subsidy()), dollars(own));
    int year = 0;
    for (const BuydownYear& bought : buydown->years) {
        out += fmt::format("  year {}: as at {}, {} principal and interest ({} a month from the "
                           "subsidy)\n",
                           ++year, rate_text(bought.rate), dollars(bought.payment),
                           dollars(bought.subsidy));
    }
    return out + fmt::format("  then {}; the buyer qualifies at the note rate, {}\n",
                             dollars(buydown->note_payment),
                             percent_text(buydown->qualifying_rate().percent(), 3));
}

/// What becomes of a lender credit that closing costs and prepaids do not use up.
std::string lender_credit_text(const ScenarioAnswer& scenario) {
    std::string out;
    const Money reduction = scenario.cash[CashPart::principal_reduction];
    if (!reduction.is_zero()) {
        out += paragraph(fmt::format("The lender credit for this rate comes to more than closing "
                                     "costs and prepaids: {} of it reduces the principal at "
                                     "closing. The loan and its payment stay, and end sooner.",
                                     dollars(reduction)),
                         "  ");
    }
    const Money lost = scenario.lender_credit_without_use;
    if (!lost.is_zero()) {
        out += paragraph(fmt::format("{} of the lender credit for this rate is lost: closing costs "
                                     "and prepaids do not come to as much, and it pays nothing "
                                     "else. A lower rate gives less of a credit.",
                                     dollars(lost)),
                         "  ");
    }
    return out;
}

/// What a part of the cash is called in this scenario.
std::string name_of(const CashPartRow& row, const ScenarioAnswer& scenario) {
    std::string name(row.name);
    if (row.part == CashPart::principal_reduction)
        return name + " at closing, by the lender credit";
    const bool paid_up = row.part == CashPart::upfront_fee && scenario.insurance.paid_up;
    return paid_up ? scenario.upfront_name + ", in cash" : name;
}

std::string needed_text(const CashAnswer& answer) {
    const CashToClose& cash = answer.scenario.cash;
    Table table = two_columns();
    const auto row = [&](const std::string& name, Money amount) {
        if (!amount.is_zero()) table.row({name, "", dollars(amount)});
    };
    const auto part = [&](const CashPartRow& of) {
        row(name_of(of, answer.scenario), cash[of.part] * of.sign);
    };
    for (const CashPartRow& of : needed_parts) {
        part(of);
        if (of.part != CashPart::down_payment || answer.effects.appraisal_gap.is_zero()) continue;
        table.row({"  of it, because the appraisal is under the price", "",
                   dollars(answer.effects.appraisal_gap)});
    }
    table.rule();
    row("cash needed", cash.needed());
    for (const CashPartRow& of : paid_before_parts) part(of);
    const bool back = cash.to_close() < Money{};
    table.row({back ? "paid back at the closing" : "left to bring to the closing", "",
               dollars(back ? -cash.to_close() : cash.to_close())});
    return "\nCash\n" + table.text() + lender_credit_text(answer.scenario);
}

std::string calendar_text(const CashAnswer& answer) {
    Table table = two_columns();
    for (const CalendarDay& day : answer.calendar) {
        table.row({std::string(name_of(day.what)), day.date.text(), dollars(day.amount)});
    }
    return "\nWhen\n" + table.text();
}

std::string credit_cost_text(const ScenarioAnswer& scenario) {
    const CostOfCredit& cost = scenario.cost_of_credit;
    Table table = two_columns();
    table.row({"prepaid finance charge", "", dollars(cost.prepaid_finance_charge)});
    if (!cost.buydown.put_up.is_zero()) {
        table.row({"  of it, the buyer's part of the buydown", "", dollars(cost.buydown.put_up)});
    }
    table.row({"amount financed", "", dollars(cost.amount_financed)});
    table.row({"finance charge", "", dollars(cost.finance_charge)});
    table.row({"total of payments", "", dollars(cost.total_of_payments)});
    table.row({"in five years: loan and its costs, as disclosed", "",
               dollars(cost.disclosed_in_five_years)});
    table.row(
        {"in five years: principal paid off", "", dollars(cost.disclosed_principal_in_five_years)});
    for (const PaymentLevel& level : cost.levels) {
        table.row({fmt::format("payments {} to {}, as disclosed", level.from, level.to), "",
                   dollars(level.payment)});
    }
    table.row({"APR", "", apr_text(cost.apr)});
    table.row(
        {"total interest percentage", "", disclosed_text(cost.total_interest_percentage.value())});
    return "\nWhat the loan costs\n" + table.text();
}

} // namespace

Cautions cautions_of(const CashAnswer& answer, const Catalogue& say) {
    Cautions notes = loan_cautions(answer.heading, {answer.scenario.terms});
    notes.push_back(agent_caution(say));
    return notes;
}

std::string text_of(const CashAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(answer.heading, "The cash it takes", say);
    if (!answer.scenario.available()) {
        return out + refused_lines(answer.scenario.terms, answer.scenario.refusals);
    }
    out += paragraph(answer.scenario.terms.name + ": " + dollars(answer.scenario.monthly.total()) +
                     " a month. " + terms_line(answer.scenario.terms));
    out += needed_text(answer) + calendar_text(answer) + costs_text(answer) +
           prepaids_text(answer) + escrow_text(answer) + credits_text(answer) +
           buydown_text(answer) + credit_cost_text(answer.scenario);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
