// What a program says besides its tables: read, and as usual for its kind where it says nothing.
#include <shown.hpp>

#include <fstream>
#include <sstream>

#include <quoin/lending/reading.hpp>
#include <quoin/loan/fee_methods.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::string program_of(const std::string& kind, const std::string& policy) {
    return R"({"format": "quoin/program/1", "id": "own", "name": "Own", "kind": ")" + kind +
           R"(", "terms_months": [360], "rules": {})" +
           (policy.empty() ? "" : R"(, "policy": )" + policy) + "}";
}

struct Policy {
    Findings findings;
    ProgramPolicy item;

    Policy(const std::string& kind, const std::string& policy) {
        const Document document =
            parse_json(std::make_shared<Source>("t.json", program_of(kind, policy)), findings);
        item = read_program(document, fee_methods(), findings).policy;
    }
};

std::vector<Percent> percents(std::initializer_list<const char*> texts) {
    std::vector<Percent> list;
    for (const char* text : texts) list.emplace_back(decimal(text));
    return list;
}

} // namespace

TEST_CASE("A program's file that says no policy has that of its kind") {
    struct Row {
        const char* kind;
        bool cap_by_price;
        bool cap_on_concessions;
        bool credit_reduces_principal;
        bool rural_alone;
        bool any_buyer;
        std::vector<Percent> usual_down;
    };
    for (const Row& row : {
             Row{"conventional", false, false, false, false, true, percents({"5", "20"})},
             Row{"fha", true, false, true, false, true, percents({"3.5"})},
             Row{"va", false, true, false, false, false, percents({"0"})},
             Row{"usda", true, false, false, true, false, percents({"0"})},
         }) {
        CAPTURE(row.kind);
        const ProgramPolicy usual{
            row.cap_by_price, row.cap_on_concessions, row.credit_reduces_principal,
            row.rural_alone,  row.any_buyer,          row.usual_down};
        for (const char* text : {"", "{}", R"({"comment": "as usual"})"}) {
            const Policy policy(row.kind, text);
            REQUIRE(policy.findings.none());
            CHECK(policy.item == usual);
        }
    }
}

TEST_CASE("The shipped programs say the policy of their kind") {
    for (const LoanProgram& program : six_programs().desk.lending.programs) {
        CAPTURE(program.id);
        CHECK(program.policy == usual_policy(program.kind));
    }
}

TEST_CASE("What a policy says stands, and the rest is as usual") {
    const auto fha = usual_policy(ProgramKind::fha);
    const auto with = [&](const char* text, const auto& change) {
        INFO(text);
        const Policy policy("fha", text);
        REQUIRE(policy.findings.none());
        ProgramPolicy expected = fha;
        change(expected);
        CHECK(policy.item == expected);
        CHECK_FALSE(policy.item == fha);
    };
    with(R"({"contribution_cap_of": "value"})", [](auto& p) { p.cap_by_price = false; });
    with(R"({"contributions_counted": "concessions"})",
         [](auto& p) { p.cap_on_concessions = true; });
    with(R"({"lender_credit_left": "lost"})", [](auto& p) { p.credit_reduces_principal = false; });
    with(R"({"places": "rural"})", [](auto& p) { p.rural_alone = true; });
    with(R"({"buyers": "eligible"})", [](auto& p) { p.any_buyer = false; });
    with(R"({"usual_down": ["0", "10.5"]})", [](auto& p) {
        p.usual_down = percents({"0", "10.5"});
    });
}

TEST_CASE("One mistake in a policy is one problem") {
    struct Row {
        const char* text;
        const char* id;
        const char* path;
    };
    for (const Row& row : {
             Row{R"({"contribution_cap_of": "loan"})", "not-one-of", "/policy/contribution_cap_of"},
             Row{R"({"contributions_counted": true})", "wrong-kind",
                 "/policy/contributions_counted"},
             Row{R"({"lender_credit_left": "paid out"})", "not-one-of",
                 "/policy/lender_credit_left"},
             Row{R"({"places": "urban"})", "not-one-of", "/policy/places"},
             Row{R"({"buyers": "all"})", "not-one-of", "/policy/buyers"},
             Row{R"({"usual_down": []})", "out-of-range", "/policy/usual_down"},
             Row{R"({"usual_down": ["-1"]})", "out-of-range", "/policy/usual_down/0"},
             Row{R"({"usual_down": ["5", "99.5"]})", "out-of-range", "/policy/usual_down/1"},
             Row{R"({"usual_down": ["little"]})", "not-a-decimal", "/policy/usual_down/0"},
             Row{R"({"usual_down": "5"})", "wrong-kind", "/policy/usual_down"},
             Row{R"({"place": "rural"})", "member-unknown", "/policy/place"},
             Row{R"([])", "wrong-kind", "/policy"},
         }) {
        CAPTURE(row.text);
        const Policy policy("fha", row.text);
        REQUIRE(problem_ids(policy.findings) == Ids{row.id});
        CHECK(policy.findings.problems()[0].path == row.path);
    }
}

TEST_CASE("The example of a program of one's own says some of its policy, in place of the usual") {
    std::ifstream file(QUOIN_SOURCE_DIR "/examples/own-program/larch-county-start.json");
    std::ostringstream text;
    text << file.rdbuf();
    Findings findings;
    const LoanProgram program = read_program(json(text.str()), fee_methods(), findings);
    REQUIRE(findings.none());
    ProgramPolicy expected = usual_policy(ProgramKind::conventional);
    expected.cap_by_price = true;
    expected.rural_alone = true;
    expected.any_buyer = false;
    expected.usual_down = percents({"3"});
    CHECK(program.policy == expected);
}
