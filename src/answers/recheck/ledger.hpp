// Ledger: figures entered one after the other, each reckoned from those before it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <quoin/answers/recheck.hpp>

namespace quoin {

struct Known;

/// What is entered: under which id, and what it is.
struct Entered {
    Entered(FigureCode code) : id(code_of(code)), label(code) {} // NOLINT: most are their code
    Entered(NumberedLabel of)                                    // NOLINT: likewise
        : id(std::string(code_of(of.figure)) + "_" + std::to_string(of.number)), label(of) {}
    Entered(std::string id_, FigureLabel label_) : id(std::move(id_)), label(std::move(label_)) {}

    std::string id;
    FigureLabel label;
};

class Ledger {
  public:
    explicit Ledger(RecheckAnswer& answer);
    ~Ledger();

    void section(ProofPart part);
    /// A figure that was looked up or chosen.
    void given(Entered what, FigureUnit unit, Decimal value, Ground ground);
    /// A figure by its formula, held against the engine's.
    void figure(Entered what, FigureUnit unit, Formula formula, Ground ground, Decimal ours);
    /// A step in between that the engine does not name.
    void step(Entered what, FigureUnit unit, Formula formula, Ground ground);

    // Of money and percents, the most frequent.
    void given(Entered what, Money value, Ground ground);
    void given(Entered what, Percent value, Ground ground);
    void step(Entered what, Formula formula, Ground ground);
    void figure(Entered what, Formula formula, Ground ground, Money ours);

    [[nodiscard]] bool has(std::string_view id) const;

  private:
    void add(RecheckedFigure entry);

    RecheckAnswer& answer_;
    std::unique_ptr<Known> known_;
};

/// Grounds. `rounded_by` is the number in docs/roundings.md.
[[nodiscard]] Ground rounded_by(int number);
[[nodiscard]] Ground from(GroundRule rule, GroundSource source, std::optional<Status> status = {},
                          int rounding = 0);

// The sections, in their order; each enters what the ones before it leave.
struct RecheckCase {
    const Sitting& sitting;
    const ScenarioRules& rules;
    const PricedHome& home;
    const LoanFigures& f;
};
/// Of a row that a table was read at.
[[nodiscard]] Ground of_table(const RecheckCase& of, const BandTable& table, int row,
                              GroundRule rule);
/// A member of a program's file: "fha annual_fee".
[[nodiscard]] std::string member_of(const RecheckCase& of, Rule rule);
[[nodiscard]] Ground of_place(const RecheckCase& of, FileRule rule, int rounding = 0);
[[nodiscard]] RuleOfFile rule_of_sheet(const RecheckCase& of, FileRule rule);
/// The id of a part's figure of a year.
[[nodiscard]] std::string yearly_id(MonthPart part);
void recheck_home(const RecheckCase& of, Ledger& ledger);
void recheck_loan(const RecheckCase& of, Ledger& ledger);
void recheck_month(const RecheckCase& of, Ledger& ledger);
void recheck_cash(const RecheckCase& of, Ledger& ledger);
void recheck_credit_cost(const RecheckCase& of, const CostOfCredit& cost, Ledger& ledger);
/// The schedule with its insurance, run anew.
[[nodiscard]] std::vector<RecheckedMonth> recheck_months(const RecheckCase& of);

} // namespace quoin
