// Making a desk and an inquiry out of plain figures.
#include "plain_afford.hpp"

#include <algorithm>
#include <optional>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/render/format.hpp>

#include "loading.hpp"
#include <quoin/inquiry/asking.hpp>

namespace quoin::apps {
namespace {

// Common practice, no source: figures of a usual size where none are given, each told.
constexpr const char* usual_property_tax = "1.2"; ///< percent of the price a year
constexpr const char* usual_insurance = "0.4";    ///< percent of the price a year
constexpr const char* usual_closing_costs = "2";  ///< percent of the loan
constexpr const char* usual_score = "740";
constexpr const char* usual_years = "30";
constexpr int days_to_closing = 60;

class Making {
  public:
    Making(const Given& given, Date today) : given_(given) {
        made_.inquiry.as_of =
            given.one("as-of").empty() ? today : day_typed("--as-of", given.one("as-of"));
        made_.inquiry.contract = made_.inquiry.as_of;
        made_.inquiry.closing = plus_days(made_.inquiry.as_of, days_to_closing);
        made_.inquiry.buyer = "the buyer";
    }

    PlainCase make(const std::string& rates) {
        load(rates);
        set_home();
        set_place();
        set_sheet();
        set_means();
        for (const LoanProgram* program : programs()) add_scenarios(*program);
        return std::move(made_);
    }

  private:
    /// Not below zero.
    static Money amount(const char* name, const std::string& text, const char* such) {
        return amount_typed(name, text, Money{}, most_typed, such);
    }
    static Percent percent(const char* name, const std::string& text, int most) {
        return Percent(number_typed(name, text, Decimal{}, Decimal::whole(most),
                                    fmt::format("a percent from 0 to {}", most)));
    }
    void assume(std::string words) { made_.assumptions.push_back(std::move(words)); }
    /// What was given, or what is usual, which is then told.
    std::string given_or(const std::string& given, const char* usual, std::string_view words) {
        if (!given.empty()) return given;
        assume(fmt::format(fmt::runtime(words), usual));
        return usual;
    }

    void load(const std::string& rates);
    void set_home();
    void set_place();
    void set_sheet();
    void set_means();
    [[nodiscard]] std::vector<const LoanProgram*> programs() const;
    void add_scenarios(const LoanProgram& program);

    const Given& given_;
    PlainCase made_;
};

void Making::load(const std::string& rates) {
    Findings findings;
    made_.desk.lending = load_lending(rates, {{}, made_.inquiry.as_of}, findings);
    if (!findings.none()) throw Refused(std::move(findings));
}

/// A home of no builder: its price is what is asked for.
void Making::set_home() {
    Plan plan;
    plan.id = plan.name = "home";
    plan.base_price = Money::dollars(100'000);
    if (!given_.one("square-feet").empty()) {
        plan.square_feet =
            Decimal::whole(whole_typed("--square-feet", given_.one("square-feet"), 100, 100'000));
    }
    plan.elevations.emplace_back();
    PriceBook& book = made_.desk.book;
    book.plans.push_back(std::move(plan));
    book.lots.emplace_back();
    book.lots.front().status = LotStatus::held; // not one that is for sale
    book.effective = book.expires = made_.inquiry.as_of;
    book.community.place = "plain";
}

void Making::set_place() {
    Place place;
    place.id = "plain";
    place.name = "the figures given";
    place.assessed_percent = Percent(Decimal::whole(100));
    const Percent tax = percent("--property-tax",
                                given_or(given_.one("property-tax"), usual_property_tax,
                                         "property tax of {} % of the price a year"),
                                20);
    place.levies.push_back({"Property tax", Decimal::billionths(tax.value().billionths() * 10)});
    place.tax_due = {{5, 31, Percent(Decimal::whole(50))}, {11, 30, Percent(Decimal::whole(50))}};
    assume("the tax due in two halves, on 31 May and 30 November");
    const Percent insurance = percent("--insurance",
                                      given_or(given_.one("insurance"), usual_insurance,
                                               "homeowner's insurance of {} % of the price a year"),
                                      20);
    place.dwelling_percent = Percent(Decimal::whole(100));
    place.homeowner.unit = "per thousand";
    place.homeowner.values.push_back(Decimal::billionths(insurance.value().billionths() * 10));
    place.homeowner.written.emplace_back("any");
    if (!given_.one("dues").empty()) {
        place.dues.push_back({"Association dues", amount("--dues", given_.one("dues"),
                                                         "an amount not below zero, such as 60")});
    }
    ClosingCost costs;
    costs.name = "Closing costs";
    costs.base = CostBase::loan;
    costs.percent = percent("--closing-costs",
                            given_or(given_.one("closing-costs"), usual_closing_costs,
                                     "closing costs of {} % of the loan, none of them in the APR"),
                            20);
    place.closing_costs.push_back(std::move(costs));
    place.rural_eligible = true; // who names the USDA program means a place that is
    if (!given_.one("region").empty()) {
        for (const auto& [name, region] : region_words()) {
            if (name == given_.one("region")) place.region = region;
        }
        if (!place.region) {
            refuse_typed("--region", given_.one("region"), "northeast, midwest, south or west");
        }
    }
    made_.desk.lending.places = {std::move(place)};
}

/// Of the shipped sheets only the mortgage insurance factors are used; the rate is the one given.
void Making::set_sheet() {
    const RateSheet* newest = made_.desk.lending.newest_sheet(made_.inquiry.as_of);
    RateSheet sheet;
    sheet.id = "plain";
    sheet.date = sheet.good_through = made_.inquiry.as_of;
    if (newest != nullptr) {
        sheet.mortgage_insurance = newest->mortgage_insurance;
        assume(fmt::format("mortgage insurance by the factors of {}{}, where the program has it",
                           newest->lender, newest->sample ? " (sample data)" : ""));
    }
    made_.desk.lending.sheets = {std::move(sheet)};
}

void Making::set_means() {
    Inquiry& inquiry = made_.inquiry;
    inquiry.monthly_income =
        amount("--income", given_.one("income"), "gross dollars a month, such as 8400");
    if (!given_.one("debts").empty()) {
        inquiry.monthly_debts =
            amount("--debts", given_.one("debts"), "dollars a month, such as 450");
    }
    if (given_.one("cash").empty()) {
        assume("as much cash as it takes (--cash not given)");
    } else {
        inquiry.cash =
            amount("--cash", given_.one("cash"), "an amount not below zero, such as 60000");
    }
    if (!given_.one("taxes").empty()) {
        inquiry.monthly_taxes =
            amount("--taxes", given_.one("taxes"), "dollars a month, such as 1700");
    }
    if (!given_.one("persons").empty()) {
        inquiry.household = whole_typed("--persons", given_.one("persons"), 1, 20);
    }
    inquiry.score = whole_typed(
        "--score", given_or(given_.one("score"), usual_score, "a credit score of {}"), 300, 850);
}

/// Those named; else all of a fixed rate that are open to any buyer and place.
std::vector<const LoanProgram*> Making::programs() const {
    const auto& all = made_.desk.lending.programs;
    std::vector<const LoanProgram*> chosen;
    for (const LoanProgram& program : all) {
        const bool open = program.policy.any_buyer && !program.policy.rural_alone;
        if (!given_.has("program") && open && !program.adjustable) chosen.push_back(&program);
    }
    for (const std::string& id : given_.all("program")) {
        const auto index = index_of(all, id);
        if (!index || at(all, *index).adjustable) {
            std::vector<std::string> ids;
            for (const LoanProgram& program : all) {
                if (!program.adjustable) ids.push_back(program.id);
            }
            refuse_typed("--program", id, fmt::format("one of {}", fmt::join(ids, ", ")));
        }
        chosen.push_back(&at(all, *index));
    }
    return chosen;
}

void Making::add_scenarios(const LoanProgram& program) {
    const std::string expected = "a yearly rate in percent, above 0 to 25, such as 6.25";
    const Rate rate = rate_typed("--rate", given_.one("rate"), expected);
    if (rate <= Rate{} || rate.percent() > Decimal::whole(25)) {
        refuse_typed("--rate", given_.one("rate"), expected);
    }
    std::vector<std::string> downs;
    for (const Percent usual : program.policy.usual_down) downs.push_back(usual.value().text());
    if (!given_.one("down").empty()) downs = {given_.one("down")};
    for (const std::string& down : downs) {
        Scenario scenario;
        scenario.program = program.id;
        scenario.term =
            Months(12 * whole_typed("--years",
                                    given_.one("years").empty() ? usual_years : given_.one("years"),
                                    1, 40));
        scenario.down = {DownPayment::By::percent, percent("--down", down, 99), {}};
        scenario.rate = {RateChoice::By::quoted, Points{}, rate};
        scenario.score = made_.inquiry.score;
        scenario.name = fmt::format("{}, {} down", program.name,
                                    down == "0" ? std::string("nothing") : down + " %");
        made_.inquiry.scenarios.push_back(std::move(scenario));
    }
}

} // namespace

PlainCase plain_case(const Given& given, const std::string& rates, Date today) {
    return Making(given, today).make(rates);
}

} // namespace quoin::apps
