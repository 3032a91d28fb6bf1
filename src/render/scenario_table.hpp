// The tables that set scenarios side by side: terms, the month by part, the cash, the years.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/scenario_answer.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// A row of a table before it is laid out: what it is called, and the figure of each scenario.
struct SideRow {
    enum class Kind { figures, rule, gap };

    Kind kind = Kind::figures;
    std::string label;
    std::vector<std::string> figures;
};

/// "0.125", or "0.125 credit": a lender credit is told by its name, without a minus.
[[nodiscard]] std::string points_cell(Points points, const SideWords& say);

/// The month by part, what is settled and what the first year is; then the terms that stand beside.
[[nodiscard]] Blocks month_table(const std::vector<ScenarioAnswer>& scenarios,
                                 const Catalogue& say = catalogue_in(Language::english));

/// The loan: price, down payment, base loan, fee, LTV, rate, mortgage insurance and its end.
[[nodiscard]] Blocks loan_table(const std::vector<ScenarioAnswer>& scenarios,
                                const Catalogue& say = catalogue_in(Language::english));

[[nodiscard]] Blocks cash_table(const std::vector<ScenarioAnswer>& scenarios,
                                const Catalogue& say = catalogue_in(Language::english));

/// The month by part, the terms and the cash in one table, nothing of it twice.
[[nodiscard]] std::vector<SideRow> sheet_rows(const std::vector<ScenarioAnswer>& scenarios,
                                              const Catalogue& say);

[[nodiscard]] Blocks years_table(const std::vector<ScenarioAnswer>& scenarios,
                                 const Catalogue& say = catalogue_in(Language::english));

/// One line for each scenario that cannot be had, with its reasons; empty where all can.
[[nodiscard]] Blocks refusal_lines(const std::vector<ScenarioAnswer>& scenarios,
                                   const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
