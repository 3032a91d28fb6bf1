// Every question as text and as JSON: the JSON survives being read, what must stand beside a
// payment stands there, and what is private stands nowhere.
#include <shown.hpp>

#include <functional>

#include <nlohmann/json.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/apr.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/payment.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

#include "homes.hpp"
#include "prose.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

using Json = nlohmann::json;

/// One answer in both forms, and the scenarios whose figures are in it.
struct Rendering {
    std::string question;
    std::string text;
    std::string json;
    std::vector<std::size_t> scenarios;
};

std::vector<std::size_t> all_of(const Sitting& sitting) {
    std::vector<std::size_t> indexes;
    for (std::size_t i = 0; i < sitting.rules().size(); ++i) indexes.push_back(i);
    return indexes;
}

/// The questions that show a payment.
std::vector<Rendering> with_payments(const Sitting& sitting) {
    const auto all = all_of(sitting);
    const QuoteAnswer home = quote(sitting);
    const AddsAnswer added = adds(sitting, {});
    const CompareAnswer compared = compare(sitting);
    std::vector<Rendering> list = {
        {"quote", text_of(home), json_text_of(home), all},
        {"adds", text_of(added, false), json_text_of(added), all},
        {"adds by part", text_of(added, true), json_text_of(added), all},
        {"compare", text_of(compared), json_text_of(compared), all},
    };
    for (const std::size_t one : all) {
        const CashAnswer needed = cash(sitting, one);
        const MonthByMonthAnswer months = month_by_month(sitting, one, {Money::dollars(100)});
        list.push_back({"cash", text_of(needed), json_text_of(needed), {one}});
        list.push_back({"schedule", text_of(months), json_text_of(months), {one}});
    }
    return list;
}

/// Every question there is.
std::vector<Rendering> every(const Sitting& sitting) {
    std::vector<Rendering> list = with_payments(sitting);
    const ShownAnswer model = shown(sitting).value();
    list.push_back({"shown", text_of(model), json_text_of(model), {}});
    const PaymentAnswer quick = payment({Money::dollars(250'000), rate("6.5"), Months(360)});
    list.push_back({"payment", text_of(quick), json_text_of(quick), {}});
    Findings findings;
    const AprAnswer apr = read_and_solve_apr(
        json(R"({"unit_periods_per_year": 12, "advances": [{"amount": "6000", "periods": 0}],
                 "payments": [{"amount": "200", "periods": 1, "count": 36}]})"),
        findings);
    list.push_back({"apr", text_of(apr), json_text_of(apr), {}});
    return list;
}

/// Calls `use` on every object anywhere in a JSON value.
void each_object(const Json& json, const std::function<void(const Json&)>& use) {
    if (json.is_object()) use(json);
    for (const Json& item : json) {
        if (item.is_structured()) each_object(item, use);
    }
}

const char* const sentences[] = {
    "This is an estimate", "It is not a Loan Estimate, an approval or an offer to lend",
    "licensed loan originator", "You may choose any lender", "These are sample rates"};

} // namespace

TEST_CASE("JSON out, in and out again is the same text") {
    Homes homes(11);
    for (int i = 0; i < 6; ++i) {
        const Inquiry inquiry = i == 0 ? six_programs().inquiry : homes.next();
        for (const Rendering& r : every(Sitting(six_programs().desk, inquiry))) {
            CAPTURE(r.question, i);
            REQUIRE(write_json(json(r.json).root) + "\n" == r.json);
        }
    }
}

TEST_CASE("What must stand beside a payment stands in every text that shows one") {
    const Sitting sitting = six_programs().sitting();
    const QuoteAnswer answer = quote(sitting);
    for (const Rendering& r : with_payments(sitting)) {
        const std::string text = unwrapped(r.text);
        CAPTURE(r.question);
        for (const char* words : sentences) {
            CAPTURE(words);
            CHECK(text.find(words) != std::string::npos);
        }
        std::vector<std::string> beside = {english_date(answer.heading.as_of),
                                           english_date(answer.heading.rates_date)};
        for (const std::size_t s : r.scenarios) {
            const ScenarioTerms& terms = answer.scenarios[s].terms;
            beside.push_back(terms.name.substr(0, terms.name.find(' ')));
            beside.push_back(percent_text(terms.rate.percent(), 3));
            beside.push_back(disclosed_text(terms.apr.value().percent()));
            beside.push_back(term_text(terms.term));
            beside.push_back(dollars(terms.down_payment));
            beside.push_back(percent_text(terms.down_percent.value(), 2));
        }
        for (const std::string& words : beside) {
            CAPTURE(words);
            CHECK(text.find(words) != std::string::npos);
        }
    }
}

TEST_CASE("What must stand beside a payment stands in every JSON that shows one") {
    const Sitting sitting = six_programs().sitting();
    for (const Rendering& r : with_payments(sitting)) {
        CAPTURE(r.question);
        const Json json = Json::parse(r.json);
        const std::string cautions = json["cautions"].dump();
        for (const char* words : sentences) {
            CAPTURE(words);
            CHECK(cautions.find(words) != std::string::npos);
        }
        for (const char* date : {"as_of", "closing", "rates_date", "rates_good_through"}) {
            CHECK(Date::parse(json["heading"][date].get<std::string>()).has_value());
        }
        std::size_t told = 0;
        each_object(json, [&](const Json& object) {
            if (!object.contains("terms")) return;
            ++told;
            const Json& terms = object["terms"];
            CHECK(Rate::percent(decimal(terms["rate"].get<std::string>().c_str())).has_value());
            CHECK(Decimal::parse(terms["apr"].get<std::string>()).has_value());
            CHECK(terms["months"].get<int>() > 0);
            CHECK(Money::parse(terms["down_payment"].get<std::string>()).has_value());
            CHECK(Decimal::parse(terms["down_percent"].get<std::string>()).has_value());
            CHECK(object.contains("monthly"));
        });
        CHECK(told == r.scenarios.size());
    }
}

TEST_CASE("The quick answer has its rate, APR, term and caution, in both forms") {
    const PaymentAnswer answer = payment({Money::dollars(250'000), rate("6.5"), Months(360)});
    const std::string text = unwrapped(text_of(answer));
    for (const char* words : {"6.500%", "30 years", "the APR equals the interest rate",
                              "not a Loan Estimate, an approval or an offer to lend"}) {
        CAPTURE(words);
        CHECK(text.find(words) != std::string::npos);
    }
    const Json json = Json::parse(json_text_of(answer));
    CHECK(json["rate"] == "6.5");
    CHECK(json["apr"] == "6.5");
    CHECK(json["term_months"] == 360);
    CHECK(json["cautions"].size() == 1);
}

TEST_CASE("A scenario that cannot be had shows why, and no figures") {
    Inquiry inquiry = six_programs().inquiry;
    for (Scenario& scenario : inquiry.scenarios) scenario.term = Months(300);
    const Sitting sitting(six_programs().desk, inquiry);
    const char* const why = "the program has no loans with this term";
    for (const Rendering& r : with_payments(sitting)) {
        CAPTURE(r.question);
        CHECK(unwrapped(r.text).find(why) != std::string::npos);
        CHECK(r.json.find("term_not_offered") != std::string::npos);
    }
    const Json json = Json::parse(json_text_of(compare(sitting)));
    for (const Json& scenario : json["scenarios"]) {
        CHECK(scenario["available"] == false);
        CHECK_FALSE(scenario.contains("monthly"));
        CHECK_FALSE(scenario.contains("cash"));
    }
}

TEST_CASE("Income, debts, cash and household are in no rendering") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.monthly_income = Money::cents(7'654'321);
    inquiry.monthly_debts = Money::cents(8'765'432);
    inquiry.cash = Money::cents(9'876'543);
    inquiry.household = 17;
    const Sitting sitting(six_programs().desk, inquiry);
    const Sitting plain = six_programs().sitting();
    const auto with = every(sitting);
    const auto without = every(plain);
    REQUIRE(with.size() == without.size());
    for (std::size_t i = 0; i < with.size(); ++i) {
        CAPTURE(with[i].question);
        for (const char* amount :
             {"76,543.21", "76543.21", "87,654.32", "87654.32", "98,765.43", "98765.43"}) {
            CAPTURE(amount);
            CHECK(with[i].text.find(amount) == std::string::npos);
            CHECK(with[i].json.find(amount) == std::string::npos);
        }
        // Whatever the private figures are, not a letter of an answer depends on them.
        CHECK(with[i].text == without[i].text);
        CHECK(with[i].json == without[i].json);
    }
    const std::string csv = csv_of(month_by_month(sitting, 0));
    CHECK(csv == csv_of(month_by_month(plain, 0)));
}

TEST_CASE("Work that needs a permit is said where it is shown, and for whom terms are") {
    const Sitting sitting = six_programs().sitting();
    const Rendering home = with_payments(sitting).front();
    CHECK(unwrapped(home.text).find(work_caution().words) != std::string::npos);
    CHECK(unwrapped(home.text).find(agent_caution().words) != std::string::npos);
    CHECK(home.json.find(work_caution().words) != std::string::npos);
}

TEST_CASE("A lock that ends before the closing, and rates past their day, are said") {
    Inquiry inquiry = six_programs().inquiry;
    for (Scenario& scenario : inquiry.scenarios) scenario.lock_days = 60;
    inquiry.as_of = date("2026-12-28");
    const std::string text = unwrapped(text_of(quote(Sitting(six_programs().desk, inquiry))));
    CHECK(text.find("A 60-day rate lock taken now ends on February 26, 2027, before closing") !=
          std::string::npos);
    CHECK(text.find("that day has passed; ask for new rates") != std::string::npos);
    const std::string fresh = unwrapped(text_of(quote(six_programs().sitting())));
    CHECK(fresh.find("before closing") == std::string::npos);
    CHECK(fresh.find("that day has passed") == std::string::npos);
}
