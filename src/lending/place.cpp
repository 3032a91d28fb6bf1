// Reading a place.
#include <quoin/lending/place.hpp>

#include <quoin/text/problems.hpp>

namespace quoin {
namespace {

const Words<Status> status_words = {{"sample", Status::sample}, {"published", Status::published}};
const Words<LimitArea> area_words = {{"baseline", LimitArea::baseline},
                                     {"ceiling", LimitArea::ceiling}};
const Words<CostSection> section_words = {
    {"origination", CostSection::origination},
    {"services not shopped for", CostSection::not_shopped_for},
    {"services shopped for", CostSection::shopped_for},
    {"taxes and government fees", CostSection::taxes_and_government},
    {"other", CostSection::other}};

void read_tax(Reader& root, Place& place) {
    root.object(
        "property_tax",
        [&](Reader& tax) {
            place.assessed_percent = tax.percent("assessed_percent");
            tax.each("levies", [&](Reader& item) {
                place.levies.push_back({item.text("name"), item.decimal("mills")});
            });
            tax.each("exemptions", [&](Reader& item) {
                Exemption exemption;
                exemption.name = item.text("name");
                exemption.amount = item.maybe_money("amount");
                if (!exemption.amount) exemption.percent = item.percent("percent");
                exemption.from_year = item.maybe_whole("from_year", 1, 5).value_or(1);
                place.exemptions.push_back(std::move(exemption));
            });
            tax.object("land_only", [&](Reader& item) {
                place.land_only = LandOnly{item.percent("land_percent"),
                                           item.maybe_whole("months", 1, 36).value_or(12)};
            });
        },
        true);
}

Money yearly_of(Reader& insurance, std::string_view key) {
    Money yearly;
    insurance.object(key, [&](Reader& item) { yearly = item.money("yearly"); });
    return yearly;
}

void read_insurance(Reader& root, Place& place) {
    root.object(
        "insurance",
        [&](Reader& insurance) {
            place.dwelling_percent = insurance.percent("dwelling_percent");
            insurance.object(
                "homeowner", [&](Reader& item) { place.homeowner = read_band_table(item); }, true);
            place.flood_yearly = yearly_of(insurance, "flood");
            place.wind_yearly = yearly_of(insurance, "wind");
        },
        true);
}

ClosingCost read_cost(Reader& item) {
    ClosingCost cost;
    int bases = 0;
    cost.name = item.text("name");
    cost.section = item.word("section", section_words);
    const auto amount = item.maybe_money("amount");
    cost.amount = amount.value_or(Money{});
    bases += amount.has_value();
    const auto decimal = [&](std::string_view key) {
        const auto given = item.maybe_decimal(key);
        bases += given.has_value();
        return given.value_or(Decimal{});
    };
    cost.percent_of_loan = Percent(decimal("percent_of_loan"));
    cost.percent_of_price = Percent(decimal("percent_of_price"));
    cost.per_thousand_of_loan = decimal("per_thousand_of_loan");
    cost.per_thousand_of_price = decimal("per_thousand_of_price");
    if (bases != 1) {
        item.findings().add(problems::members_conflict(
            item.here(), "one of \"amount\", \"percent_of_loan\", \"percent_of_price\", "
                         "\"per_thousand_of_loan\" and \"per_thousand_of_price\""));
    }
    cost.finance_charge = item.flag_or("finance_charge", false);
    cost.paid_by_seller =
        item.word_or("paid_by", Words<bool>{{"buyer", false}, {"seller", true}}, false);
    return cost;
}

} // namespace

std::string_view name_of(CostSection section) { return name_in(section_words, section); }

Place read_place(const Document& document, Findings& findings) {
    Place place;
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return place;
    if (root.text("format") != "quoin/place/1") {
        findings.add(problems::format_unknown(root.spot("format"), "\"quoin/place/1\""));
        return place;
    }
    place.id = root.id("id");
    place.name = root.text("name");
    place.status = root.word("status", status_words);
    place.source = root.text("source");
    place.loan_limit_area = root.word("loan_limit_area", area_words);
    place.rural_eligible = root.flag_or("rural_eligible", false);
    read_tax(root, place);
    root.each("districts", [&](Reader& item) {
        District district;
        district.name = item.text("name");
        district.yearly = item.maybe_money("yearly");
        if (!district.yearly) district.mills = item.decimal("mills");
        place.districts.push_back(std::move(district));
    });
    read_insurance(root, place);
    root.each("dues", [&](Reader& item) {
        place.dues.push_back({item.text("name"), item.money("monthly")});
    });
    root.each("closing_costs",
              [&](Reader& item) { place.closing_costs.push_back(read_cost(item)); });
    root.finish();
    return place;
}

} // namespace quoin
