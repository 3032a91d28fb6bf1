// What is usual for each kind of program, and reading what a program says in its place.
#include <quoin/lending/program_policy.hpp>

#include <array>

#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {
namespace {

const Words<bool> cap_base_words = {{false, "value"}, {true, "price"}};
const Words<bool> counted_words = {{false, "all"}, {true, "concessions"}};
const Words<bool> credit_words = {{false, "lost"}, {true, "reduces principal"}};
const Words<bool> place_words = {{false, "any"}, {true, "rural"}};
const Words<bool> buyer_words = {{true, "any"}, {false, "eligible"}};

std::vector<Percent> read_usual_down(Reader& policy) {
    std::vector<Percent> downs;
    policy.items("usual_down", [&](const Spot& spot) {
        const auto percent = as_decimal(spot, policy.findings());
        if (!percent) return;
        if (*percent < Decimal{} || *percent > Decimal::whole(99)) {
            policy.report(problems::percent_out_of_range(spot, 0, 99));
        }
        downs.emplace_back(*percent);
    });
    if (downs.empty() && policy.sound()) {
        policy.report(problems::list_empty(policy.spot("usual_down")));
    }
    return downs;
}

} // namespace

/// FHA's contribution cap is a share of the price (HUD 4000.1, II.A), and so is USDA's (HB-1-3555,
/// from memory); the others' is of the value (Fannie Mae B3-4.1-02; VA Pamphlet 26-7, chapter 8).
/// VA's holds for concessions (there). What is left of a lender credit must be applied to the
/// principal balance under FHA (HUD Reference Guide 2-06, premium pricing); elsewhere it pays
/// closing costs and prepaids alone (Fannie Mae SEL-2018-03). USDA guarantees loans in rural areas
/// (42 USC 1490, from memory). Conventional loans need no mortgage insurance from 20% down on.
const ProgramPolicy& usual_policy(ProgramKind kind) {
    const auto percent = [](int tenths) {
        return Percent(Decimal::billionths(tenths * (Decimal::one / 10)));
    };
    static const std::array<ProgramPolicy, 4> policies{{
        // of price, concessions, to principal, rural, any buyer, down
        {false, false, false, false, true, {percent(50), percent(200)}}, // conventional
        {true, false, true, false, true, {percent(35)}},                 // FHA
        {false, true, false, false, false, {percent(0)}},                // VA
        {true, false, false, true, false, {percent(0)}},                 // USDA
    }};
    return policies.at(static_cast<std::size_t>(kind));
}

ProgramPolicy read_policy(Reader& program, ProgramKind kind) {
    ProgramPolicy policy = usual_policy(kind);
    program.object("policy", [&](Reader& item) {
        const auto read = [&](std::string_view key, const Words<bool>& words, bool& member) {
            member = item.word_or(key, words, member);
        };
        read("contribution_cap_of", cap_base_words, policy.cap_by_price);
        read("contributions_counted", counted_words, policy.cap_on_concessions);
        read("lender_credit_left", credit_words, policy.credit_reduces_principal);
        read("places", place_words, policy.rural_alone);
        read("buyers", buyer_words, policy.any_buyer);
        if (item.has("usual_down")) policy.usual_down = read_usual_down(item);
    });
    return policy;
}

} // namespace quoin
