// Reading a place.
#include <quoin/lending/place.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/problems.hpp>

#include "not_negative.hpp"

namespace quoin {
namespace {

const Words<Status> status_words = {{Status::sample, "sample"}, {Status::published, "published"}};
const Words<LimitArea> area_words = {{LimitArea::baseline, "baseline"},
                                     {LimitArea::ceiling, "ceiling"}};
/// "07-31": a day that every year has.
std::optional<TaxDue> read_day(const Spot& spot, Findings& findings) {
    const auto text = as_text(spot, findings);
    if (!text) return std::nullopt;
    const auto date = Date::parse("2027-" + *text); // a year without 29 February
    if (!date) {
        findings.add(problems::not_a_day(spot));
        return std::nullopt;
    }
    return TaxDue{date->month(), date->day(), {}};
}

Percent share_of(Reader& item, std::string_view key) {
    return not_negative(item, key, item.percent(key));
}

Decimal mills_of(Reader& item) { return not_negative(item, "mills", item.decimal("mills")); }

void read_due(Reader& tax, Place& place) {
    Percent together;
    tax.each("due", [&](Reader& item) {
        auto due = item.has("on") ? read_day(item.spot("on"), item.findings()) : std::nullopt;
        if (!item.has("on")) item.report(problems::member_missing(item.here(), "on"));
        const Percent share = share_of(item, "percent");
        together = together + share;
        if (!due) return;
        due->share = share;
        place.tax_due.push_back(*due);
    });
    if (tax.has("due") && tax.sound() && together != Percent(Decimal::whole(100))) {
        tax.report(problems::tax_shares_not_whole(tax.here()));
    }
}

Exemption read_exemption(Reader& item) {
    Exemption exemption;
    exemption.name = item.name("name");
    exemption.amount = not_negative(item, "amount", item.maybe_money("amount"));
    if (!exemption.amount) exemption.percent = share_of(item, "percent");
    exemption.from_year = item.maybe_whole("from_year", 1, 5).value_or(1);
    return exemption;
}

void read_tax(Reader& root, Place& place) {
    root.object(
        "property_tax",
        [&](Reader& tax) {
            place.assessed_percent = share_of(tax, "assessed_percent");
            place.levies = tax.list("levies", [](Reader& item) {
                return Levy{item.name("name"), mills_of(item)};
            });
            place.exemptions = tax.list("exemptions", read_exemption);
            read_due(tax, place);
            tax.object("land_only", [&](Reader& item) {
                place.land_only = LandOnly{share_of(item, "land_percent"),
                                           item.maybe_whole("months", 1, 36).value_or(12)};
            });
        },
        true);
}

Money yearly_of(Reader& insurance, std::string_view key) {
    Money yearly;
    insurance.object(
        key, [&](Reader& item) { yearly = not_negative(item, "yearly", item.money("yearly")); });
    return yearly;
}

void read_insurance(Reader& root, Place& place) {
    root.object(
        "insurance",
        [&](Reader& insurance) {
            place.dwelling_percent = share_of(insurance, "dwelling_percent");
            insurance.object(
                "homeowner", [&](Reader& item) { place.homeowner = read_table_not_negative(item); },
                true);
            for (const MonthPartRow& row : parts_from<PartSource::insurance>) {
                if (row.part == MonthPart::homeowners_insurance) continue;
                place.premiums[row.part] = yearly_of(insurance, row.stem);
            }
        },
        true);
}

} // namespace

Place read_place(const Document& document, Findings& findings) {
    Place place;
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return place;
    if (!root.format_is("quoin/place/1")) return place;
    place.id = root.id("id");
    place.name = root.name("name");
    place.status = root.word("status", status_words);
    place.source = root.text("source");
    place.loan_limit_area = root.word("loan_limit_area", area_words);
    if (root.has("region")) place.region = root.word<Region>("region");
    place.rural_eligible = root.flag_or("rural_eligible", false);
    read_tax(root, place);
    root.each("districts", [&](Reader& item) {
        District district;
        district.name = item.name("name");
        district.yearly = not_negative(item, "yearly", item.maybe_money("yearly"));
        if (!district.yearly) district.mills = mills_of(item);
        place.districts.push_back(std::move(district));
    });
    read_insurance(root, place);
    root.object("escrow", [&](Reader& item) {
        EscrowTerms& terms = place.escrow;
        terms.cushion_months = item.maybe_whole("cushion_months", 0, 2).value_or(2);
        // the renewal falls due no earlier than the first payment: what is neither paid at closing
        // nor out of the escrow account would be paid by nobody
        terms.prepaid_insurance_months =
            item.maybe_whole("prepaid_insurance_months", 2, 24).value_or(12);
    });
    for (const MonthPartRow& row : parts_from<PartSource::dues>) {
        root.each(row.stem, [&](Reader& item) {
            place.dues.push_back({item.name("name"),
                                  not_negative(item, "monthly", item.money("monthly")), row.part});
        });
    }
    place.closing_costs = root.list("closing_costs", read_closing_cost);
    root.finish();
    return place;
}

} // namespace quoin
