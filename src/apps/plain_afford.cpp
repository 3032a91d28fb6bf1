// Making a desk and an inquiry out of plain figures.
#include "plain_afford.hpp"

#include "loading.hpp"
#include "words/apps.hpp"
#include <quoin/inquiry/typed.hpp>

namespace quoin::apps {
namespace {

// Common practice, no source: figures of a usual size where none are given, each told.
constexpr const char* usual_property_tax = "1.2"; ///< percent of the price a year
constexpr const char* usual_insurance = "0.4";    ///< percent of the price a year
constexpr const char* usual_closing_costs = "2";  ///< percent of the loan
constexpr const char* usual_score = "740";
constexpr int usual_years = 30;
constexpr int days_to_closing = 60;

class Making {
  public:
    Making(const Given& given, Date today, const Catalogue& say)
        : given_(given), say_(say.apps.plain), language_(say.language) {
        made_.inquiry.as_of =
            given.one("as-of").empty() ? today : day_typed("--as-of", given.one("as-of"));
        made_.inquiry.contract = made_.inquiry.as_of;
        made_.inquiry.closing = plus_days(made_.inquiry.as_of, days_to_closing);
        made_.inquiry.buyer = say_.buyer();
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
    static std::string dashed(const char* option) { return std::string("--") + option; }
    /// Not below zero; nothing where it is not given.
    [[nodiscard]] std::optional<Money> amount(const char* option, Wanted::Kind what,
                                              const char* such) const {
        const std::string text = given_.one(option);
        if (text.empty()) return std::nullopt;
        return amount_typed(dashed(option), text, Money{}, most_typed,
                            {.kind = what, .such = such});
    }
    [[nodiscard]] std::optional<int> whole(const char* option, int least, int most) const {
        const std::string text = given_.one(option);
        if (text.empty()) return std::nullopt;
        return whole_typed(dashed(option), text, least, most);
    }
    static Percent percent(const char* option, const std::string& text, int most) {
        return Percent(number_typed(dashed(option), text, Decimal{}, Decimal::whole(most),
                                    {.kind = Wanted::Kind::percent}));
    }
    /// As it is given, or what is usual.
    Percent percent_or(const char* option, const char* usual, const Phrase<Text>& assumed) {
        return percent(option, given_or(option, usual, assumed), 20);
    }
    void assume(std::string words) { made_.assumptions.push_back(std::move(words)); }
    /// What was given, or what is usual, which is then told.
    std::string given_or(const char* option, const char* usual, const Phrase<Text>& assumed) {
        if (std::string given = given_.one(option); !given.empty()) return given;
        assume(assumed(usual));
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
    const PlainWords& say_;
    Language language_;
    PlainCase made_;
};

void Making::load(const std::string& rates) {
    Findings findings;
    made_.desk.lending = load_lending(rates, {{}, made_.inquiry.as_of}, findings, language_);
    if (!findings.none()) throw Refused(std::move(findings));
}

/// A home of no builder: its price is what is asked for.
void Making::set_home() {
    Plan plan;
    plan.id = plan.name = "home";
    plan.base_price = Money::dollars(100'000);
    if (const auto size = whole("square-feet", 100, 100'000)) {
        plan.square_feet = Decimal::whole(*size);
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
    place.name = say_.place();
    place.assessed_percent = Percent(Decimal::whole(100));
    const Percent tax = percent_or("property-tax", usual_property_tax, say_.assumed_property_taxes);
    place.levies.push_back(
        {say_.property_taxes(), Decimal::billionths(tax.value().billionths() * 10)});
    place.tax_due = {{5, 31, Percent(Decimal::whole(50))}, {11, 30, Percent(Decimal::whole(50))}};
    assume(say_.assumed_tax_days());
    const Percent insurance = percent_or("insurance", usual_insurance, say_.assumed_insurance);
    place.dwelling_percent = Percent(Decimal::whole(100));
    place.homeowner.unit = "per thousand";
    place.homeowner.values.push_back(Decimal::billionths(insurance.value().billionths() * 10));
    place.homeowner.written.emplace_back("any");
    if (const auto dues = amount("dues", Wanted::Kind::amount_not_below_zero, "60")) {
        place.dues.push_back({say_.dues(), *dues});
    }
    ClosingCost costs;
    costs.name = say_.closing_costs();
    costs.base = CostBase::loan;
    costs.percent = percent_or("closing-costs", usual_closing_costs, say_.assumed_closing_costs);
    place.closing_costs.push_back(std::move(costs));
    place.rural_eligible = true; // who names the USDA program means a place that is
    if (const std::string region = given_.one("region"); !region.empty()) {
        place.region = meaning_in(codes<Region>, region);
        std::vector<std::string> regions;
        for (const auto& each : codes<Region>) regions.emplace_back(each.word);
        if (!place.region)
            refuse_typed("--region", region, {.kind = Wanted::Kind::any_of, .names = regions});
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
        assume(
            (newest->sample ? say_.assumed_sample_factors : say_.assumed_factors)(newest->lender));
    }
    made_.desk.lending.sheets = {std::move(sheet)};
}

void Making::set_means() {
    Inquiry& inquiry = made_.inquiry;
    inquiry.monthly_income = amount("income", Wanted::Kind::gross_dollars_a_month, "8400");
    inquiry.monthly_debts = amount("debts", Wanted::Kind::dollars_a_month, "450");
    inquiry.cash = amount("cash", Wanted::Kind::amount_not_below_zero, "60000");
    if (!inquiry.cash) assume(say_.assumed_cash());
    inquiry.monthly_taxes = amount("taxes", Wanted::Kind::dollars_a_month, "1700");
    inquiry.household = whole("persons", 1, 20);
    inquiry.score =
        whole_typed("--score", given_or("score", usual_score, say_.assumed_score), 300, 850);
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
            refuse_typed("--program", id, {.kind = Wanted::Kind::one_of, .names = ids});
        }
        chosen.push_back(&at(all, *index));
    }
    return chosen;
}

void Making::add_scenarios(const LoanProgram& program) {
    const Wanted expected{
        .kind = Wanted::Kind::yearly_rate_above, .most = Decimal::whole(25), .such = "6.25"};
    const std::string typed = given_.one("rate");
    const Rate rate = rate_typed("--rate", typed, expected);
    if (rate <= Rate{} || rate.percent() > expected.most) {
        refuse_typed("--rate", typed, expected);
    }
    std::vector<std::string> downs;
    for (const Percent usual : program.policy.usual_down) downs.push_back(usual.value().text());
    if (const std::string down = given_.one("down"); !down.empty()) downs = {down};
    for (const std::string& down : downs) {
        Scenario scenario;
        scenario.program = program.id;
        scenario.term = Months(12 * whole("years", 1, 40).value_or(usual_years));
        scenario.down = {DownPayment::By::percent, percent("down", down, 99), {}};
        scenario.rate = {RateChoice::By::quoted, Points{}, rate};
        scenario.score = made_.inquiry.score;
        scenario.name =
            down == "0" ? say_.loan_nothing_down(program.name) : say_.loan(program.name, down);
        made_.inquiry.scenarios.push_back(std::move(scenario));
    }
}

} // namespace

PlainCase plain_case(const Given& given, const std::string& rates, Date today,
                     const Catalogue& say) {
    return Making(given, today, say).make(rates);
}

} // namespace quoin::apps
