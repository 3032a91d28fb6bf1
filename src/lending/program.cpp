// Reading a loan program.
#include <quoin/lending/program.hpp>

#include <quoin/lending/reading.hpp>

#include "dated_list.hpp"
#include "not_negative.hpp"

namespace quoin {
namespace {

constexpr std::array<std::string_view, rule_count> rule_names = {
    "maximum_ltv", "loan_limit",        "upfront_fee",
    "annual_fee",  "annual_fee_months", "contribution_cap"};

std::vector<int> read_terms(Reader& root) {
    std::vector<int> terms;
    root.items("terms_months", [&](const Spot& spot) {
        const auto months = as_decimal(spot, root.findings());
        if (!months) return;
        if (!months->is_whole() || *months < Decimal::whole(shortest_term.count()) ||
            *months > Decimal::whole(longest_term.count())) {
            root.report(
                problems::not_a_whole_number(spot, shortest_term.count(), longest_term.count()));
            return;
        }
        terms.push_back(static_cast<int>(months->rounded(Rounding::down)));
    });
    return terms;
}

} // namespace

std::string_view name_of(Rule rule) {
    const auto index = static_cast<std::size_t>(rule);
    return index < rule_names.size() ? rule_names[index] : std::string_view{};
}

LoanProgram read_program(const Document& document, const FeeMethods& methods, Findings& findings) {
    LoanProgram program;
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return program;
    if (!root.format_is("quoin/program/1")) return program;
    program.id = root.id("id");
    program.name = root.name("name");
    program.kind = root.word<ProgramKind>("kind");
    program.policy = read_policy(root, program.kind);
    program.summary = root.text_or("summary", "");
    program.fine_print = root.text_or("catch", "");
    program.terms_months = read_terms(root);
    program.whole_dollars =
        root.word_or("loan_rounding", Words<bool>{{true, "dollar"}, {false, "cent"}}, true);
    root.object("upfront", [&](Reader& item) {
        program.upfront_name = item.name("name");
        program.upfront = item.word("method", methods.upfront);
    });
    root.object("annual", [&](Reader& item) {
        program.annual_name = item.name("name");
        program.annual = item.word("method", methods.annual);
    });
    root.object("adjustable",
                [&](Reader& item) { program.adjustable = read_adjustable_plan(item); });
    program.ratios = read_ratio_limits(root);
    program.residual_income = read_residual_income(root);
    if (root.has("rules_of")) program.rules_of = root.id("rules_of");
    root.object(
        "rules",
        [&](Reader& rules) {
            for (std::size_t i = 0; i < rule_count; ++i) {
                program.rules[i] = read_dated_list(rules, rule_names[i], read_table_not_negative);
            }
        },
        true);
    root.finish();
    return program;
}

} // namespace quoin
