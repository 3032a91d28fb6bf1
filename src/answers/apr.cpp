// Reading an APR problem, and answering it.
#include <quoin/answers/apr.hpp>

#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {
namespace {

constexpr int most_periods = 10'000;

/// "19/30", "0", "12" or 12: a fraction of whole numbers.
std::optional<Ratio> as_ratio(const Spot& spot, Findings& findings) {
    const std::string& text = spot.value->literal;
    const std::size_t slash = std::min(text.find('/'), text.size());
    const auto top = Decimal::parse(text.substr(0, slash));
    const auto bottom = slash < text.size() ? Decimal::parse(text.substr(slash + 1))
                                            : std::optional(Decimal::whole(1));
    constexpr std::int64_t most = 1'000'000;
    const bool sound = top && bottom && top->is_whole() && bottom->is_whole() &&
                       *top >= Decimal{} && *bottom >= Decimal::whole(1) &&
                       *top <= Decimal::whole(most) && *bottom <= Decimal::whole(most);
    if (sound) return Ratio{top->rounded(Rounding::down), bottom->rounded(Rounding::down)};
    findings.add(problems::not_a_fraction(spot));
    return std::nullopt;
}

Flow read_flow(Reader& item) {
    Flow flow;
    flow.amount = item.money("amount");
    if (item.has("amount") && flow.amount <= Money{}) {
        item.report(problems::amount_not_above_zero(item.spot("amount")));
    }
    flow.periods = item.whole("periods", 0, most_periods);
    if (item.has("fraction")) {
        flow.fraction = as_ratio(item.spot("fraction"), item.findings()).value_or(Ratio{});
        if (flow.fraction.top >= flow.fraction.bottom) {
            item.report(problems::fraction_out_of_range(item.spot("fraction")));
        }
    }
    flow.count = item.maybe_whole("count", 1, most_periods).value_or(1);
    return flow;
}

std::vector<Flow> read_flows(Reader& root, std::string_view key) {
    auto flows = root.list(key, read_flow, true);
    if (root.has(key) && flows.empty() && root.findings().none()) {
        root.report(problems::list_empty(root.spot(key)));
    }
    return flows;
}

} // namespace

AprAnswer read_and_solve_apr(const Document& document, Findings& findings) {
    AprAnswer answer;
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return answer;
    if (root.has("format") && root.text("format") != "quoin/apr/1") {
        findings.add(problems::format_unknown(root.spot("format"), "quoin/apr/1"));
    }
    ActuarialProblem& problem = answer.problem;
    if (root.has("unit_periods_per_year")) {
        problem.periods_per_year =
            as_ratio(root.spot("unit_periods_per_year"), findings).value_or(Ratio{12, 1});
        if (problem.periods_per_year.top == 0) {
            findings.add(problems::not_a_fraction(root.spot("unit_periods_per_year")));
        }
    } else {
        root.must_have("unit_periods_per_year");
    }
    problem.advances = read_flows(root, "advances");
    problem.payments = read_flows(root, "payments");
    root.finish();
    if (!findings.none()) return answer;
    const ActuarialSolution solution = solve(problem);
    if (solution.trouble != ActuarialTrouble::none) {
        const Spot payments = root.spot("payments");
        findings.add(solution.trouble == ActuarialTrouble::several_rates
                         ? problems::several_rates(payments)
                         : problems::no_rate(payments));
    }
    answer.apr = solution.apr;
    answer.advanced = sum_of(problem.advances);
    answer.paid = sum_of(problem.payments);
    answer.finance_charge = answer.paid - answer.advanced;
    return answer;
}

} // namespace quoin
