// Rechecking the month: mortgage insurance, taxes, districts, insurance, dues.
#include "ledger.hpp"

#include <algorithm>

#include <quoin/exact/index.hpp>
#include <quoin/loan/fee_methods.hpp>

namespace quoin {
namespace {

/// The premium of the first year's months; level unless it follows the balances.
void add_premium(const RecheckCase& of, const AnnualMethod& method, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const Formula premium = method.proof({0, std::min(12, f.schedule.months()) - 1});
    const std::vector<std::string> inputs = inputs_of(premium);
    if (std::find(inputs.begin(), inputs.end(), "upfront_in_loan") != inputs.end()) {
        ledger.given(FigureCode::upfront_in_loan, f.upfront_in_loan(), {});
    }
    const NamedFigure monthly =
        reads_schedule(method.proof({})) ? NamedFigure::monthly_at_first : NamedFigure::monthly;
    ledger.figure({"mortgage_insurance", NamedLabel{monthly, of.rules.program->annual_name}},
                  premium, rounded_by(method.rounding), f.monthly[MonthPart::mortgage_insurance]);
}

/// The last payment with conventional insurance, as disclosed: the first that leaves 78% of value
/// or less (80% on request), at the latest the middle of the term.
void add_end(const RecheckCase& of, Ledger& ledger) {
    const bool request = of.rules.scenario.end_mi_on_request;
    ledger.given(
        FigureCode::insured_until_percent, FigureUnit::percent, Decimal::whole(request ? 80 : 78),
        from("Homeowners Protection Act",
             request ? "12 USC 4902(a), (c)" : "12 USC 4901(18), 4902(b), (c)", Status::published));
    const Formula reached = rows_over(ScheduleColumn::balance, 0,
                                      percent_of(figure("value"), figure("insured_until_percent")));
    const int middle = of.f.insurance_end.midpoint;
    ledger.figure(FigureCode::insured_payments, FigureUnit::count,
                  least_of({reached, number(middle)}), rounded_by(18),
                  Decimal::whole(of.f.insurance.months()));
}

void add_insurance(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const AnnualMethod* method = of.rules.program->annual;
    if (method == nullptr) return;
    const bool factor = method->is_lenders;
    if (f.annual_percent == Percent{}) return; // 80% of value or less, paid up, or free
    const BandTable& table = *of.rules.yearly_percent().rule();
    const int row = f.row(factor ? Lookup::mi_factor : Lookup::annual_fee);
    const GroundRule rule = factor ? GroundRule(rule_of_sheet(of, FileRule::sheet_insurance))
                                   : member_of(of, Rule::annual_fee);
    ledger.given({"annual_percent", NamedLabel{NamedFigure::yearly, of.rules.program->annual_name}},
                 f.annual_percent, of_table(of, table, row, rule));
    add_premium(of, *method, ledger);
    if (factor) add_end(of, ledger);
}

/// Assessed, exempt and taxable value, and each levy and district on it. `prefix` tells the tax on
/// land alone from the settled one.
class TaxChain {
  public:
    TaxChain(const RecheckCase& of, Ledger& ledger, std::string prefix)
        : of_(of), ledger_(ledger), prefix_(std::move(prefix)) {}

    void run(const char* market_value, const PropertyTax& tax, bool first_year) {
        const Place& place = *of_.rules.place;
        ledger_.figure({id("assessed"), FigureCode::assessed},
                       to_dollar(percent_of(figure(market_value), figure("assessed_percent"))),
                       of_place(of_, FileRule::property_tax, 19), tax.assessed);
        add_exemptions(place, first_year);
        ledger_.figure({id("taxable"), FigureCode::taxable},
                       figure(id("assessed")) -
                           least_of({sum_of_figures(exemptions_), figure(id("assessed"))}),
                       {}, tax.taxable);
        for (std::size_t i = 0; i < place.levies.size(); ++i) {
            add(levies_, "levy_", i, place.levies[i].name, place.levies[i].mills, FileRule::levy);
        }
        ledger_.figure({id("levies"), PartLabel{NamedFigure::yearly, MonthPart::property_tax}},
                       sum_of_figures(levies_), {}, tax.levies);
        for (std::size_t i = 0; i < place.districts.size(); ++i) {
            const District& district = place.districts[i];
            if (district.yearly) {
                districts_.push_back(id("district_") + std::to_string(i + 1));
                ledger_.given({districts_.back(), NamedLabel{NamedFigure::yearly, district.name}},
                              *district.yearly, of_place(of_, FileRule::district));
            } else {
                add(districts_, "district_", i, district.name, district.mills, FileRule::district);
            }
        }
        ledger_.figure(
            {id("districts"), PartLabel{NamedFigure::yearly, MonthPart::district_charges}},
            sum_of_figures(districts_), {}, tax.districts);
    }

  private:
    [[nodiscard]] std::string id(const std::string& name) const { return prefix_ + name; }

    void add_exemptions(const Place& place, bool first_year) {
        for (std::size_t i = 0; i < place.exemptions.size(); ++i) {
            const Exemption& exemption = place.exemptions[i];
            if (first_year && exemption.from_year > 1) continue;
            exemptions_.push_back(id("exemption_") + std::to_string(i + 1));
            const Entered what{exemptions_.back(), NamedLabel{NamedFigure::itself, exemption.name}};
            if (exemption.amount) {
                ledger_.given(what, *exemption.amount, of_place(of_, FileRule::exemption));
                continue;
            }
            ledger_.step(
                what,
                to_dollar(percent_of(figure(id("assessed")), number(exemption.percent.value()))),
                of_place(of_, FileRule::exemption, 19));
        }
    }

    void add(std::vector<std::string>& ids, const char* kind, std::size_t index,
             const std::string& name, Decimal mills, FileRule rule) {
        ids.push_back(id(kind) + std::to_string(index + 1));
        ledger_.step({ids.back(), NamedLabel{NamedFigure::yearly, name}},
                     to_cent(figure(id("taxable")) * number(mills) / number(1000)),
                     of_place(of_, rule, 20));
    }

    const RecheckCase& of_;
    Ledger& ledger_;
    std::string prefix_;
    std::vector<std::string> exemptions_;
    std::vector<std::string> levies_;
    std::vector<std::string> districts_;
};

void add_taxes(const RecheckCase& of, Ledger& ledger) {
    const Place& place = *of.rules.place;
    ledger.given(FigureCode::assessed_percent, place.assessed_percent,
                 of_place(of, FileRule::property_tax));
    TaxChain(of, ledger, "").run("contract_price", of.f.local.settled, false);
    if (!of.f.local.land_only) return;
    ledger.given(FigureCode::land_percent, place.land_only->land_percent,
                 of_place(of, FileRule::land_only));
    ledger.step(FigureCode::land_value,
                to_dollar(percent_of(figure("contract_price"), figure("land_percent"))),
                of_place(of, FileRule::land_only, 19));
    TaxChain(of, ledger, "land_").run("land_value", *of.f.local.land_only, true);
}

void add_premiums(const RecheckCase& of, Ledger& ledger) {
    const Place& place = *of.rules.place;
    const LocalCosts& local = of.f.local;
    ledger.given(FigureCode::dwelling_percent, place.dwelling_percent,
                 of_place(of, FileRule::insurance));
    ledger.figure(FigureCode::dwelling_value,
                  to_dollar(percent_of(figure("contract_price"), figure("dwelling_percent"))),
                  of_place(of, FileRule::insurance, 19), local.dwelling_value);
    const int row = local.homeowner_row.value();
    ledger.given(FigureCode::homeowner_rate, FigureUnit::per_thousand, place.homeowner.value(row),
                 of_table(of, place.homeowner, row,
                          PremiumOfPlace{MonthPart::homeowners_insurance, place.id}));
    for (const MonthPartRow& premium : parts_from<PartSource::insurance>) {
        const Entered what{yearly_id(premium.part), PartLabel{NamedFigure::yearly, premium.part}};
        if (premium.part == MonthPart::homeowners_insurance) {
            ledger.figure(
                what, to_cent(figure("dwelling_value") * figure("homeowner_rate") / number(1000)),
                of_place(of, FileRule::insurance, 20), local.premiums[premium.part]);
        } else {
            ledger.given(what, local.premiums[premium.part],
                         from(PremiumOfPlace{premium.part, place.id}, place.source, place.status));
        }
    }
}

/// What is due by the month: each sum of its own.
void add_dues(const RecheckCase& of, Ledger& ledger) {
    for (const MonthPartRow& row : parts_from<PartSource::dues>) {
        std::vector<std::string> ids;
        for (const Dues& each : of.rules.place->dues) {
            if (each.part != row.part) continue;
            ids.push_back(std::string(row.stem) + "_" + std::to_string(ids.size() + 1));
            ledger.given({ids.back(), NamedLabel{NamedFigure::monthly, each.name}}, each.monthly,
                         of_place(of, FileRule::dues));
        }
        ledger.figure({std::string(row.stem), FigureCode::dues}, sum_of_figures(ids), {},
                      of.f.local.dues[row.part]);
    }
}

/// The month by its parts; while tax is on land alone, all but the taxes stand already.
void add_month(const Monthly& monthly, FigureCode total, const std::string& tax,
               const std::string& prefix, Ledger& ledger) {
    std::vector<std::string> parts{"principal_and_interest"};
    const auto add = [&](const MonthPartRow& row, const std::string& under,
                         const std::string& yearly) {
        parts.push_back(under + std::string(row.stem) + "_month");
        if (ledger.has(parts.back())) return;
        ledger.figure({parts.back(), PartLabel{NamedFigure::monthly, row.part}},
                      to_cent(figure(yearly) / number(12)), rounded_by(21), monthly[row.part]);
    };
    for (const MonthPartRow& row : parts_from<PartSource::tax>) {
        add(row, prefix, tax + yearly_id(row.part));
    }
    for (const MonthPartRow& row : parts_from<PartSource::insurance>) {
        add(row, "", yearly_id(row.part));
    }
    for (const MonthPartRow& row : parts_from<PartSource::dues>) parts.emplace_back(row.stem);
    if (ledger.has("mortgage_insurance")) parts.emplace_back("mortgage_insurance");
    ledger.figure(total, sum_of_figures(parts), {}, monthly.total());
}

} // namespace

std::string yearly_id(MonthPart part) {
    if (part == MonthPart::property_tax) return "levies";
    if (part == MonthPart::district_charges) return "districts";
    return std::string(row_of(part).stem) + "_yearly";
}

void recheck_month(const RecheckCase& of, Ledger& ledger) {
    ledger.section(ProofPart::month);
    add_insurance(of, ledger);
    add_taxes(of, ledger);
    add_premiums(of, ledger);
    add_dues(of, ledger);
    add_month(of.f.monthly, FigureCode::month, "", "", ledger);
    if (!of.f.local.land_only) return;
    add_month(of.f.first_year, FigureCode::first_year_month, "land_", "first_year_", ledger);
}

} // namespace quoin
