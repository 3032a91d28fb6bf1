// "How much do we bring, when, and what is it for?" The cash of one scenario: costs by the sections
// of the federal disclosure forms, prepaids, the escrow account, credits, and a calendar.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/loan/housing_escrow.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

struct CostLine {
    CostSection section = CostSection::origination;
    std::string name;
    Money amount;
    PaidBy paid_by = PaidBy::buyer;
    bool finance_charge = false;
    bool before_closing = false;
};

/// What is prepaid at closing. The words are what JSON says, whatever the language.
enum class Prepaid { interest, insurance, property_tax };
template <>
inline constexpr auto codes<Prepaid> = coded<Prepaid>({{Prepaid::interest, "interest"},
                                                       {Prepaid::insurance, "insurance"},
                                                       {Prepaid::property_tax, "property_tax",
                                                        "property tax and district charges"}});

struct PrepaidLine {
    Prepaid what = Prepaid::interest;
    int count = 0;           ///< days of interest, months of insurance
    Money per_day;           ///< interest of a day
    std::optional<Date> due; ///< of a bill paid at closing
    Money amount;
};

struct CreditLine {
    CreditUse use = CreditUse::points;
    Money amount;
};

/// What cash leaves the buyer for before the home is theirs.
enum class CashDue { deposits, earnest_money, option_share, costs_when_ordered, closing };
template <>
inline constexpr auto codes<CashDue> =
    coded<CashDue>({{CashDue::deposits, "deposits", "deposits paid"},
                    {CashDue::earnest_money, "earnest_money", "earnest money"},
                    {CashDue::option_share, "option_share", "share of options, at their selection"},
                    {CashDue::costs_when_ordered, "costs_when_ordered", "costs paid when ordered"},
                    {CashDue::closing, "closing", "at closing"}});

/// A day on which cash leaves the buyer.
struct CalendarDay {
    Date date;
    CashDue what = CashDue::closing;
    Money amount;
};

/// What low appraisal or contributions over the cap do.
struct ValueEffects {
    Money appraisal_gap; ///< price over value, made up in cash; zero where there is none
    Money over_cap;      ///< contributions that the cap leaves no use for
    Ltv ltv_if_given;    ///< if they were given all the same, and so taken off the value
};

struct CashAnswer {
    Heading heading;
    ScenarioAnswer scenario;
    std::vector<CostLine> costs; ///< by section, those of the seller and lender among them
    std::vector<PrepaidLine> prepaids;
    std::optional<HousingEscrow> escrow; ///< nothing: waived, or due days are not known
    std::vector<CreditLine> credits;
    std::optional<Percent> contribution_cap;
    bool cap_by_price = false; ///< the cap is of the price, not of the value
    ValueEffects effects;
    std::vector<CalendarDay> calendar; ///< sums to the cash needed
};

[[nodiscard]] CashAnswer cash(const Sitting& sitting, std::size_t scenario);

} // namespace quoin
