// ScenarioAnswer: one scenario on one home, as plain values with names.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/adjustable_answer.hpp>
#include <quoin/answers/cost_of_credit.hpp>
#include <quoin/inquiry/sitting.hpp>
#include <quoin/loan/loan_figures.hpp>

namespace quoin {

/// The terms that must stand beside every payment.
struct ScenarioTerms {
    std::string name;
    std::string program; ///< its name
    std::string program_id;
    std::string fine_print; ///< the program's catch
    Months term;
    int lock_days = 0;
    Date lock_ends; ///< when a lock taken on the inquiry's day ends
    std::optional<int> score;
    Rate rate;
    Points points;
    std::optional<Rate> apr; ///< to a millionth of a percent
    Money down_payment;
    Percent down_percent; ///< of the price
    Ltv ltv;              ///< rounded for people; the rules read it cut to two decimals
    bool down_from_cash = false;
    Money extra_principal; ///< each month, by choice: totals and insurance follow it, the APR does
                           ///< not
    std::optional<AdjustableAnswer> adjustable; ///< nothing where the rate is fixed
    std::vector<ListGap> continued;             ///< lists whose last edition is used beyond its end
};

struct InsuranceAnswer {
    std::string name;
    Percent annual_percent;
    Money first_monthly;
    int payments = 0;              ///< that carry it; 0: none
    bool paid_up = false;          ///< at closing, in a single premium
    std::optional<Date> last_date; ///< of the last payment that carries it
    int on_request_payment = 0;    ///< conventional: balance at 80% of value; else 0
    std::optional<Date> on_request_date;
    bool whole_term = false;
};

/// The month, the APR and the cost of credit are as disclosed; the end of the insurance and the
/// totals from `payments` on are what the buyer pays, with extra principal.
struct ScenarioAnswer {
    ScenarioTerms terms;
    std::vector<Refusal> refusals; ///< where not empty, the figures below are not for use
    Money price;
    Money value;
    Money base_loan;
    std::string upfront_name; ///< of the fee; of the insurance where that is paid up
    Percent upfront_percent;
    Money upfront_fee;
    Money financed_fee;
    Money loan;
    Monthly monthly;
    Monthly first_year;
    int first_year_months = 0;      ///< months of the first-year figure; 0: it never applies
    std::optional<Buydown> buydown; ///< temporary: what the first years pay
    InsuranceAnswer insurance;
    CashToClose cash;
    CreditsUsed credits;
    Money lender_credit_without_use; ///< of negative points
    std::optional<Percent> contribution_cap;
    CostOfCredit cost_of_credit;
    Date first_payment;
    int payments = 0;
    Money last_payment;
    Money total_interest;
    Money paid_in_five_years;
    Money paid_over_loan; ///< to the end of the term
    Money balance_after_five_years;
    Money balance_after_ten_years;

    [[nodiscard]] bool available() const { return refusals.empty(); }
};

/// LTV to two decimals, half away from zero: a loan cut to whole dollars at 5% down is 95.00%.
[[nodiscard]] Ltv shown_ltv(Money base_loan, Money value);

[[nodiscard]] ScenarioAnswer scenario_answer(const Sitting& sitting, const ScenarioRules& rules,
                                             const LoanFigures& figures);

} // namespace quoin
