// The purchase of sample forms H-24(B) and H-25(B), 12 CFR 1026, Appendix H, as files people write:
// 180,000 for the home, 162,000 borrowed for 30 years at 3.875% with a quarter of a point.
#pragma once

#include <memory>
#include <string>

#include <quoin/answers/cash.hpp>
#include <quoin/lending/reading.hpp>

#include "files.hpp"
#include "patched.hpp"

namespace quoin::test {

inline const char* const form_book_text = R"({
  "format": "quoin/pricebook/1",
  "community": {"name": "Sample form", "builder": "Seller", "place": "form"},
  "version": "1", "effective": "2013-01-01", "expires": "2013-12-31",
  "areas": [{"id": "all", "name": "All of it"}],
  "plans": [{"id": "home", "name": "Home", "base_price": "180000", "bedrooms": 3, "bathrooms": 2,
             "square_feet": 1500, "elevations": [{"id": "front", "name": "Front", "price": "0"}]}],
  "lots": [{"id": "1", "premium": "0", "status": "free", "grade": "level"}],
  "deposits": {"earnest": {"amount": "10000"}}
})";

/// Yearly 1,263.60 of tax (12 x 105.30) and 1,209.96 of insurance (12 x 100.83).
inline const char* const form_place_text = R"({
  "format": "quoin/place/1", "id": "form", "name": "Sample form", "status": "sample",
  "source": "12 CFR 1026, Appendix H", "loan_limit_area": "baseline",
  "property_tax": {"assessed_percent": "100", "levies": [{"name": "Tax", "mills": "7.02"}]},
  "insurance": {"dwelling_percent": "100",
    "homeowner": {"status": "sample", "source": "the form", "value": "per thousand",
                  "dimensions": [], "rows": [{"value": "6.722"}]}},
  "escrow": {"cushion_months": 1, "prepaid_insurance_months": 12},
  "dues": [], "closing_costs": []
})";

/// Sections A to C, E and H of the Loan Estimate. Which of them are finance charges (12 CFR 1026.4)
/// the form does not print: what the lender asks for itself and what serves through the life of the
/// loan, with points and prepaid interest, make the 4.274% that it prints.
inline const char* const estimate_costs_text = R"([
  {"name": "Appraisal", "section": "services not shopped for", "amount": "405"},
  {"name": "Credit report", "section": "services not shopped for", "amount": "30"},
  {"name": "Flood determination", "section": "services not shopped for", "amount": "20"},
  {"name": "Flood monitoring", "section": "services not shopped for", "amount": "32",
   "finance_charge": true},
  {"name": "Tax monitoring", "section": "services not shopped for", "amount": "75",
   "finance_charge": true},
  {"name": "Tax status research", "section": "services not shopped for", "amount": "110"},
  {"name": "Pest inspection", "section": "services shopped for", "amount": "135"},
  {"name": "Survey", "section": "services shopped for", "amount": "65"},
  {"name": "Title, insurance binder", "section": "services shopped for", "amount": "700"},
  {"name": "Title, lender's policy", "section": "services shopped for", "amount": "535"},
  {"name": "Title, settlement agent", "section": "services shopped for", "amount": "502"},
  {"name": "Title, search", "section": "services shopped for", "amount": "1261"},
  {"name": "Recording", "section": "taxes and government fees", "amount": "85"},
  {"name": "Title, owner's policy", "section": "other", "amount": "1017"}
])";

/// The same of the Closing Disclosure, with what the seller and others pay.
inline const char* const closing_costs_text = R"([
  {"name": "Appraisal", "section": "services not shopped for", "amount": "405.00",
   "paid_by": "lender"},
  {"name": "Credit report", "section": "services not shopped for", "amount": "29.80",
   "paid": "before closing"},
  {"name": "Flood determination", "section": "services not shopped for", "amount": "20.00"},
  {"name": "Flood monitoring", "section": "services not shopped for", "amount": "31.75",
   "finance_charge": true},
  {"name": "Tax monitoring", "section": "services not shopped for", "amount": "75.00",
   "finance_charge": true},
  {"name": "Tax status research", "section": "services not shopped for", "amount": "80.00"},
  {"name": "Pest inspection", "section": "services shopped for", "amount": "120.50"},
  {"name": "Survey", "section": "services shopped for", "amount": "85.00"},
  {"name": "Title, insurance binder", "section": "services shopped for", "amount": "650.00"},
  {"name": "Title, lender's policy", "section": "services shopped for", "amount": "500.00"},
  {"name": "Title, settlement agent", "section": "services shopped for", "amount": "500.00"},
  {"name": "Title, search", "section": "services shopped for", "amount": "800.00"},
  {"name": "Recording, deed", "section": "taxes and government fees", "amount": "40.00"},
  {"name": "Recording, mortgage", "section": "taxes and government fees", "amount": "45.00"},
  {"name": "Transfer tax", "section": "taxes and government fees", "amount": "950.00",
   "paid_by": "seller"},
  {"name": "Association, capital", "section": "other", "amount": "500.00"},
  {"name": "Association, processing", "section": "other", "amount": "150.00"},
  {"name": "Home inspection", "section": "other", "amount": "750.00"},
  {"name": "Home inspection, second half", "section": "other", "amount": "750.00",
   "paid_by": "seller", "paid": "before closing"},
  {"name": "Home warranty", "section": "other", "amount": "450.00", "paid_by": "seller"},
  {"name": "Commission, buyer's side", "section": "other", "amount": "5700.00",
   "paid_by": "seller"},
  {"name": "Commission, seller's side", "section": "other", "amount": "5700.00",
   "paid_by": "seller"},
  {"name": "Title, owner's policy", "section": "other", "amount": "1000.00"}
])";

/// Section A is the lender's own: a quarter of a point, application and underwriting fees. The
/// form's 82.35 a month of mortgage insurance is 0.61% of the loan a year.
inline const char* const form_sheet_text = R"({
  "format": "quoin/rates/1", "id": "form", "date": "2013-02-15", "good_through": "2013-04-16",
  "status": "sample", "lender": {"name": "Lender", "license": "none"},
  "ladders": [{"program": "conventional", "months": 360, "lock_days": 60,
               "rungs": [{"rate": "3.875", "points": "0.25"}]}],
  "mortgage_insurance": [
    {"status": "sample", "source": "the form", "value": "percent", "dimensions": ["ltv"],
     "rows": [{"ltv": "> 80, <= 97", "value": "0.61"}]}],
  "per_diem_year": "360",
  "costs": [
    {"name": "Application fee", "section": "origination", "amount": "300"},
    {"name": "Underwriting fee", "section": "origination", "amount": "1097",
     "finance_charge": true}]
})";

inline const char* const form_inquiry_text = R"({
  "format": "quoin/inquiry/1", "price_book": "book.json", "buyer": "Sample form",
  "as_of": "2013-02-15", "contract": "2013-02-15", "closing": "2013-04-15",
  "plan": "home", "elevation": "front", "lot": "1", "selections": [], "score": 720,
  "scenarios": [{"name": "form", "program": "conventional", "years": 30, "lock_days": 60,
                 "down": {"amount": "18000"}, "rate": {"note": "3.875"}}]
})";

/// Those files read together, with the shipped loan programs.
struct FormPurchase {
    Desk desk;
    Inquiry inquiry;

    FormPurchase(const std::string& place, const std::string& asked) {
        Findings findings;
        desk.book = read_price_book(json(form_book_text), nullptr, findings);
        desk.lending.programs = six_programs().desk.lending.programs;
        // The forms are of 2013: what the first table says is taken to have been so before it.
        for (LoanProgram& program : desk.lending.programs) {
            for (std::vector<BandTable>& tables : program.rules) {
                if (!tables.empty()) tables.front().effective.reset();
            }
        }
        desk.lending.sheets = {read_rate_sheet(json(form_sheet_text), findings)};
        desk.lending.places = {read_place(json(place), findings)};
        inquiry = read_inquiry(json(asked), desk, findings);
        if (!findings.none()) throw Refused(std::move(findings));
    }
    [[nodiscard]] CashAnswer answer() const { return cash(Sitting(desk, inquiry), 0); }
};

/// H-24(B). It prints 15 days of interest, so the closing is on the sixteenth. Half a year of
/// insurance is paid at closing and the days of the bills are not printed.
inline FormPurchase loan_estimate() {
    const std::string place =
        patched(form_place_text, "[" + op_replace("/escrow/prepaid_insurance_months", "6") + "," +
                                     op_replace("/closing_costs", estimate_costs_text) + "]");
    const std::string asked =
        patched(form_inquiry_text, "[" + op_replace("/closing", R"("2013-04-16")") + "]");
    return {place, asked};
}

/// H-25(B), closed on 15 April 2013. It prints half a year of tax paid at closing and two months
/// of tax and of insurance into escrow, but neither the bills' days nor the cushion: here the bills
/// come at the ends of April and October, the policy renews on the closing's day, each item is a
/// month short before its bill, and a cushion of one month makes the two.
inline FormPurchase closing_disclosure() {
    const std::string due =
        R"([{"on": "04-30", "percent": "50"}, {"on": "10-31", "percent": "50"}])";
    const std::string dues = R"([{"name": "Association", "monthly": "150"}])";
    const std::string place = patched(
        form_place_text, "[" + op_add("/property_tax/due", due) + "," + op_replace("/dues", dues) +
                             "," + op_replace("/closing_costs", closing_costs_text) + "]");
    const std::string credit = R"([{"name": "Seller credit", "from": "seller", "amount": "2500",
                                    "uses": ["closing costs", "prepaids"]}])";
    return {place, patched(form_inquiry_text, "[" + op_add("/credits", credit) + "]")};
}

} // namespace quoin::test
