// Rechecking: every figure of every example, and of generated homes, agrees with its formula.
#include <shown.hpp>

#include <set>

#include <quoin/answers/recheck.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/workbook.hpp>

#include "answers/recheck/reckon.hpp"
#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::string differing(const RecheckAnswer& answer) {
    std::string text;
    for (const RecheckSection& section : answer.sections) {
        for (const RecheckedFigure& figure : section.figures) {
            if (figure.agrees()) continue;
            text += figure.id + ": " + figure.value.text() + ", by its formula " +
                    figure.reckoned.text() + "\n";
        }
    }
    return text;
}

const RecheckedFigure& named(const RecheckAnswer& answer, const std::string& id) {
    for (const RecheckSection& section : answer.sections) {
        for (const RecheckedFigure& figure : section.figures) {
            if (figure.id == id) return figure;
        }
    }
    throw std::runtime_error("no figure " + id);
}

void check_all(const Sitting& sitting) {
    for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
        const RecheckAnswer answer = recheck(sitting, s);
        CAPTURE(answer.scenario.terms.name);
        if (!answer.scenario.available()) {
            CHECK(answer.sections.empty());
            continue;
        }
        INFO(differing(answer));
        REQUIRE(answer.differences() == 0);
        CHECK(answer.figure_count() > 80);
    }
}

const char* const buyers[] = {"six-programs", "short-of-cash", "va-used-before",
                              "right-under-eighty", "moves-again"};

std::unique_ptr<apps::Loaded> buyer(const std::string& name) {
    return apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/" + name + ".json",
                              QUOIN_SOURCE_DIR "/rates");
}

} // namespace

TEST_CASE("Every figure of every example buyer agrees with its formula") {
    for (const char* name : buyers) {
        CAPTURE(name);
        check_all(buyer(name)->sitting());
    }
    check_all(small()->sitting());
}

TEST_CASE("Every figure of generated homes, low appraisals and credits agrees with its formula") {
    Homes homes(7);
    for (int i = 0; i < 25; ++i) {
        CAPTURE(i);
        Inquiry inquiry = homes.next();
        const PricedHome home = price_home(six_programs().desk.book, inquiry.selection);
        if (i % 3 == 1) inquiry.facts.appraised_value = home.contract_price - money("7500");
        if (i % 4 == 2) {
            inquiry.facts.credits.push_back(
                {"seller",
                 CreditFrom::seller,
                 money("30000"),
                 {CreditUse::points, CreditUse::upfront_fee, CreditUse::closing_costs}});
            inquiry.facts.credits.push_back({"lender",
                                             CreditFrom::lender,
                                             money("2500"),
                                             {CreditUse::prepaids, CreditUse::closing_costs}});
        }
        for (Scenario& scenario : inquiry.scenarios) {
            scenario.single_premium = i % 2 == 1;
            scenario.finance_fee = i % 3 != 2;
            scenario.finance_premium = i % 4 == 3;
            if (i % 5 == 2) {
                scenario.rate = {RateChoice::By::quoted, Points(Decimal::whole(-i % 4)),
                                 rate("7.125")};
            }
        }
        if (i % 5 == 3) inquiry.facts.deposits_paid = money("12345.67");
        check_all(Sitting(six_programs().desk, inquiry));
    }
}

TEST_CASE("A principal reduced at closing, and a lender credit lost, agree with their formulas") {
    const auto loaded = buyer("six-programs");
    for (Scenario& scenario : loaded->inquiry.scenarios) {
        scenario.rate = {RateChoice::By::quoted, Points(Decimal::whole(-6)), rate("7.125")};
        scenario.buydown.clear();
    }
    check_all(loaded->sitting());
    int reduced = 0;
    int lost = 0;
    for (std::size_t s = 0; s < loaded->inquiry.scenarios.size(); ++s) {
        const RecheckAnswer answer = recheck(loaded->sitting(), s);
        if (!answer.scenario.available()) continue;
        const Money reduction = answer.scenario.cash[CashPart::principal_reduction];
        lost += answer.scenario.lender_credit_without_use > Money{} ? 1 : 0;
        if (reduction.is_zero()) continue;
        ++reduced;
        CHECK(named(answer, "principal_reduction").value == in_dollars(reduction));
        CHECK(answer.months.front().balance == answer.scenario.loan - reduction);
        // HUD's own balances run on to the end of the note's last year.
        CHECK(answer.months.size() % 12 == 1);
        CHECK(static_cast<int>(answer.months.size()) > answer.scenario.payments);
    }
    CHECK(reduced == 1);
    CHECK(lost > 2);
}

TEST_CASE("What becomes of a lender credit is the program's own policy where no source has it") {
    const auto loaded = buyer("six-programs");
    for (LoanProgram& program : loaded->desk.lending.programs) {
        bool& reduces = program.policy.credit_reduces_principal;
        reduces = !reduces;
    }
    for (Scenario& scenario : loaded->inquiry.scenarios) {
        scenario.rate = {RateChoice::By::quoted, Points(Decimal::whole(-6)), rate("7.125")};
        scenario.buydown.clear();
    }
    const Sitting sitting = loaded->sitting();
    int told = 0;
    for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
        const RecheckAnswer answer = recheck(sitting, s);
        if (!answer.scenario.available()) continue;
        ++told;
        const LoanProgram& program = *sitting.rules(s).program;
        const bool reduces = program.policy.credit_reduces_principal;
        const Ground& ground =
            named(answer, reduces ? "principal_reduction" : "lender_credit_lost").ground;
        CHECK(ground.rule == GroundRule(RuleOfFile{FileRule::lender_credit_left, program.id}));
        CHECK(ground.source == GroundSource{});
        CHECK_FALSE(ground.status);
    }
    CHECK(told > 3);
}

TEST_CASE("The schedule that is run anew is the loan's own") {
    for (const char* name : buyers) {
        const auto loaded = buyer(name);
        const Sitting sitting = loaded->sitting();
        for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
            const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
            const LoanFigures f = loan_figures(sitting.rules()[s], home, sitting.inquiry().facts);
            if (!f.available()) continue;
            const RecheckAnswer answer = recheck(sitting, s);
            CAPTURE(answer.scenario.terms.name);
            REQUIRE(static_cast<int>(answer.months.size()) == f.schedule.months() + 1);
            for (int month = 1; month <= f.schedule.months(); ++month) {
                const RecheckedMonth& row = answer.months[static_cast<std::size_t>(month)];
                const ScheduleRow own = f.schedule.row(month);
                if (row.payment != own.payment || row.interest != own.interest ||
                    row.balance != own.balance || row.insurance != f.insurance.in_month(month)) {
                    FAIL(month);
                }
            }
        }
    }
}

TEST_CASE("Tax due in two shares on one day, two years on the land: each bill by its share") {
    const auto loaded = buyer("six-programs");
    loaded->inquiry.closing = date("2027-07-20");
    for (Place& place : loaded->desk.lending.places) {
        if (!place.land_only) continue;
        place.land_only->months = 24;
        place.tax_due = {{7, 31, Percent(Decimal::whole(30))},
                         {7, 31, Percent(Decimal::whole(45))},
                         {1, 31, Percent(Decimal::whole(25))}};
    }
    check_all(loaded->sitting());
    const RecheckAnswer answer = recheck(loaded->sitting(), 0);
    const RecheckedFigure& second = named(answer, "prepaid_tax_2");
    const auto& bill = std::get<BillLabel>(second.label);
    CHECK(bill.part == MonthPart::property_tax);
    CHECK(bill.on_land);
    CHECK(bill.due == date("2027-07-31"));
    CHECK(second.ground.rounding == 23);
    CHECK(inputs_of(second.formula) == std::vector<std::string>{"land_levies", "land_districts"});
    CHECK(inputs_of(named(answer, "escrow_bill_1").formula) ==
          std::vector<std::string>{"levies", "districts"});
}

TEST_CASE("Every figure agrees whoever puts up a temporary buydown") {
    const auto loaded = buyer("moves-again");
    for (const char* seller : {"0", "0.01", "1234.56", "4000", "100000"}) {
        CAPTURE(seller);
        loaded->inquiry.facts.credits = {
            {"buydown", CreditFrom::seller, money(seller), {CreditUse::buydown}}};
        check_all(loaded->sitting());
    }
    loaded->inquiry.facts.credits.clear();
    for (std::size_t s = 0; s < loaded->inquiry.scenarios.size(); ++s) {
        const RecheckAnswer answer = recheck(loaded->sitting(), s);
        const bool bought = !loaded->inquiry.scenarios[s].buydown.empty();
        CHECK(answer.bought_down == bought);
        if (bought) CHECK(named(answer, "bought_down_month_1").ground.rounding == 37);
    }
}

TEST_CASE("A figure that is a cent off is found, and said") {
    const auto loaded = buyer("six-programs");
    RecheckAnswer answer = recheck(loaded->sitting(), 0);
    for (RecheckSection& section : answer.sections) {
        for (RecheckedFigure& figure : section.figures) {
            if (figure.id == "cash_to_close") {
                figure.value = figure.value + Decimal::billionths(Decimal::one / 100);
            }
        }
    }
    CHECK(answer.differences() == 1);
    CHECK(text_of(answer).find("DIFFERS from its formula") != std::string::npos);
    CHECK(json_text_of(answer).find("\"differences\": 1") != std::string::npos);
}

TEST_CASE("Published grounds stand beside their figures") {
    const auto loaded = buyer("six-programs");
    const RecheckAnswer fha = recheck(loaded->sitting(), 3);
    const RecheckedFigure& annual = named(fha, "annual_percent");
    CHECK(std::get<std::string>(annual.ground.source).find("Mortgagee Letter 2023-05") !=
          std::string::npos);
    CHECK(annual.ground.effective == date("2023-03-20"));
    CHECK(annual.ground.status == Status::published);
    CHECK(named(fha, "mortgage_insurance").ground.rounding == 15);
    CHECK(named(fha, "principal_and_interest").ground.rounding == 12);
    const RecheckAnswer conventional = recheck(loaded->sitting(), 0);
    const Ground& until = named(conventional, "insured_until_percent").ground;
    CHECK(std::get<std::string>(until.source).find("4902(b)") != std::string::npos);
}

TEST_CASE("Names of figures serve as names of cells: each once, none a cell's own") {
    for (const char* name : buyers) {
        const auto loaded = buyer(name);
        const RecheckAnswer answer = recheck(loaded->sitting(), 0);
        std::set<std::string> names;
        for (const auto& [id, cell] : workbook_of(answer).names) {
            CHECK(names.insert(id).second);
            const bool plain =
                id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string::npos;
            CHECK(plain);
            // Like LOAN1 or R1C1, a cell has letters and then digits with nothing between.
            const std::size_t digit = id.find_first_of("0123456789");
            CHECK((digit == std::string::npos || id[digit - 1] == '_'));
        }
    }
}

TEST_CASE("A formula is reckoned in exact fractions, rounded where it says") {
    Known known;
    known.figures["a"] = Fraction(1, 3);
    const auto value = [&](const Formula& formula) { return reckon(formula, known); };
    CHECK(value(figure("a") * number(3)) == 1);
    CHECK(value(to_cent(figure("a"))) == Fraction(33, 100));
    CHECK(value(to_cent(number(decimal("0.005")))) == Fraction(1, 100));
    CHECK(value(to_cent(number(decimal("-0.005")))) == Fraction(-1, 100));
    CHECK(value(down_to_dollar(number(decimal("-2.9")))) == -2);
    CHECK(value(rounded(number(decimal("2.01")), 0, Rounding::up)) == 3);
    CHECK(value(least_of({number(2), number(1), number(3)})) == 1);
    CHECK(value(greatest_of({number(2), number(1), number(3)})) == 3);
    CHECK(value(number(7) - number(2) - number(1)) == 4);
    // 12 CFR 1026, H-24(B): 162,000 at 3.875% over 360 months.
    CHECK(value(level_payment_of(number(162'000), number(decimal("3.875")), number(360))) ==
          Fraction(76178, 100));
    CHECK(value(level_payment_of(number(1200), number(0), number(12))) == 100);
    CHECK_THROWS_AS(value(figure("nowhere")), Broken);
}
