// The table of what may go home with a buyer.
#include "what_goes.hpp"

namespace quoin::apps {
namespace {

/// Their names are those of the files' parts, which others call their own by.
namespace goes {

const Members by_any_name = {{"*"}};
const Members monthly = {{"monthly"}};

// The price book.

const Members looks_and_price = {{"id"},  {"name"}, {"picture"}, {"color"}, {"price", by_any_name},
                                 {"note"}};
const Members plan = {{"id"},
                      {"name"},
                      {"style"},
                      {"base_price"},
                      {"bedrooms"},
                      {"bathrooms"},
                      {"note"},
                      {"square_feet"},
                      {"drawing"},
                      {"elevations", looks_and_price},
                      {"measures", by_any_name}};
/// Its first price is that of an elevation: the reader asks for one.
const Members other_plan = {{"id"},
                            {"name"},
                            {"base_price"},
                            {"bedrooms"},
                            {"bathrooms"},
                            {"square_feet"},
                            {"elevations", {{"id"}, {"name"}, {"price"}}}};
const Members lot = {{"id"},    {"premium"},    {"status"}, {"grade"},
                     {"plans"}, {"flood_zone"}, {"note"},   {"measures", by_any_name}};
const Members option = {
    {"id"},
    {"name"},
    {"area"},
    {"text"},
    {"note"},
    {"picture"},
    {"color"},
    {"price", by_any_name},
    {"levels", looks_and_price},
    {"included_level", by_any_name},
    {"choices", {{"id"}, {"name"}, {"note"}, {"picture"}, {"color"}}},
    {"allowance", by_any_name},
    {"parts"},
    {"unit"},
    {"quantity", {{"from_plan"}, {"min"}, {"max"}, {"step"}, {"usual"}}},
    {"requires"},
    {"excludes"},
    {"one_of"},
    {"only", {{"plans"}, {"elevations"}, {"lots"}, {"grades"}, {"lot_at_least", by_any_name}}},
    {"cutoff"},
    {"structural"},
    {"work"},
    {"later", {{"estimate"}, {"each"}, {"note"}}},
};
const Members incentive = {{"id"},     {"name"},    {"amount"},   {"percent"},
                           {"of"},     {"uses"},    {"plans"},    {"lots"},
                           {"lender"}, {"expires"}, {"close_by"}, {"conditions"}};
const Members price_book = {
    {"format"},
    {"community", {{"name"}, {"builder"}, {"place"}, {"note"}, {"color"}}},
    {"map"},
    {"version"},
    {"effective"},
    {"expires"},
    {"areas", {{"id"}, {"name"}}},
    {"stages", {{"id"}, {"name"}}},
    {"plans", plan}, // the buyer's own; of the others less
    {"lots", lot},
    {"included", {{"area"}, {"text"}, {"option"}, {"plans"}}},
    {"options", option},
    {"incentives", incentive},
    {"deposits",
     {{"earnest", {{"amount"}, {"percent"}}},
      {"options", {{"structural_percent"}, {"finish_percent"}}},
      {"note"}}},
    {"model",
     {{"plan"},
      {"elevation"},
      {"lot"},
      {"note"},
      {"shows", {{"option"}, {"level"}, {"choice"}, {"quantity"}, {"spend"}, {"area"}, {"text"}}}}},
};

// What is drawn.

const Members rooms = {{"id"}, {"name"}, {"area"}, {"living"}, {"open"}, {"measures"}, {"outline"}};
const Members openings = {{"id"}, {"kind"}, {"from"}, {"to"}, {"opens"}};
const Members stairs = {{"id"}, {"to"}, {"from"}, {"toward"}, {"outline"}};
const Members symbols = {{"id"}, {"kind"}, {"outline"}};
const Members condition = {{"option"}, {"level"}, {"choice"}, {"elevation"}, {"grade"}};
const Members drawing = {
    {"format"},
    {"floors",
     {{"id"},
      {"name"},
      {"rooms", rooms},
      {"openings", openings},
      {"stairs", stairs},
      {"symbols", symbols}}},
    {"changes",
     {{"when", condition},
      {"unless", condition},
      {"floor"},
      {"removes"},
      {"rooms", rooms},
      {"openings", openings},
      {"stairs", stairs},
      {"symbols", symbols},
      {"not_priced"}}},
};
const Members site_map = {
    {"format"},
    {"north"},
    {"streets", {{"name"}, {"line"}, {"width"}}},
    {"land", {{"name"}, {"kind"}, {"outline"}}},
    {"lots", {{"lot"}, {"outline"}, {"front"}, {"setbacks", {{"front"}, {"side"}, {"rear"}}}}},
};
const Members map_in_degrees = {
    {"type"},
    {"features",
     {{"type"},
      {"geometry", {{"type"}, {"coordinates"}}},
      {"properties",
       {{"lot"},
        {"front"},
        {"front_setback_ft"},
        {"side_setback_ft"},
        {"rear_setback_ft"},
        {"street"},
        {"width_ft"},
        {"land"},
        {"name"}}}}},
};

// What a loan is made by.

const Members bands = {{"ltv"},   {"down"},  {"term"},           {"base_loan"}, {"loan"},
                       {"score"}, {"price"}, {"dwelling_value"}, {"use"},       {"area"}};
const Members row = {{"ltv"},   {"down"},           {"term"}, {"base_loan"}, {"loan"},  {"score"},
                     {"price"}, {"dwelling_value"}, {"use"},  {"area"},      {"value"}, {"values"}};
const Members table = {{"effective"},     {"until"},
                       {"after"},         {"dated_by"},
                       {"status"},        {"source"},
                       {"value"},         {"dimensions"},
                       {"covers", bands}, {"across", {{"dimension"}, {"bands"}}},
                       {"rows", row}};
const Members adjustment = {
    {"name"},     {"programs"},   {"effective"},     {"until"},
    {"after"},    {"dated_by"},   {"status"},        {"source"},
    {"value"},    {"dimensions"}, {"covers", bands}, {"across", {{"dimension"}, {"bands"}}},
    {"rows", row}};
const Members closing_cost = {{"name"},
                              {"section"},
                              {"amount"},
                              {"percent_of_loan"},
                              {"percent_of_price"},
                              {"per_thousand_of_price"},
                              {"per_thousand_of_loan"},
                              {"tiers", {{"up_to"}, {"per_thousand"}}},
                              {"of"},
                              {"title_policy"},
                              {"simultaneous"},
                              {"finance_charge"},
                              {"paid"},
                              {"paid_by"}};
const Members fee = {{"name"}, {"method"}};
const Members program = {
    {"format"},
    {"id"},
    {"name"},
    {"kind"},
    {"policy",
     {{"contribution_cap_of"},
      {"contributions_counted"},
      {"lender_credit_left"},
      {"places"},
      {"buyers"},
      {"usual_down"}}},
    {"summary"},
    {"catch"},
    {"terms_months"}, // those in play
    {"loan_rounding"},
    {"upfront", fee},
    {"annual", fee},
    {"adjustable",
     {{"initial_months"},
      {"reset_months"},
      {"caps", {{"first"}, {"periodic"}, {"life"}}},
      {"qualifying", {{"over_initial"}, {"source"}}},
      {"source"}}},
    {"ratios",
     {{"front"},
      {"back"},
      {"back_automated"},
      {"automated"},
      {"back_unless_residual"},
      {"rounding"},
      {"effective"},
      {"until"},
      {"after"},
      {"status"},
      {"source"}}},
    {"residual_income",
     {{"upkeep_per_square_foot"},
      {"most_persons"},
      {"guides",
       {{"loan_up_to"}, {"northeast"}, {"midwest"}, {"south"}, {"west"}, {"each_further"}}},
      {"effective"},
      {"until"},
      {"after"},
      {"status"},
      {"source"}}},
    {"rules",
     {{"maximum_ltv", table},
      {"loan_limit", table},
      {"upfront_fee", table},
      {"annual_fee", table},
      {"annual_fee_months", table},
      {"contribution_cap", table}}},
};
const Members rate_sheet = {
    {"format"},
    {"id"},
    {"date"},
    {"good_through"},
    {"status"},
    {"may_be_shared"},
    {"lender", {{"name"}, {"license"}}},
    {"note"},
    {"index", {{"name"}, {"value"}, {"date"}}},
    {"ladders", // those in play; of a sheet that may not be shared, the rungs in use
     {{"program"}, {"months"}, {"lock_days"}, {"margin"}, {"rungs", {{"rate"}, {"points"}}}}},
    {"adjustments", adjustment}, // likewise, and what follows
    {"mortgage_insurance", table},
    {"single_premium", table},
    {"costs", closing_cost},
    {"per_diem_year"},
};
const Members place = {
    {"format"},
    {"id"},
    {"name"},
    {"status"},
    {"source"},
    {"loan_limit_area"},
    {"region"},
    {"rural_eligible"},
    {"property_tax",
     {{"assessed_percent"},
      {"levies", {{"name"}, {"mills"}}},
      {"exemptions", {{"name"}, {"amount"}, {"percent"}, {"from_year"}}},
      {"due", {{"on"}, {"percent"}}},
      {"land_only", {{"land_percent"}, {"months"}}}}},
    {"districts", {{"name"}, {"mills"}, {"yearly"}}},
    {"insurance",
     {{"dwelling_percent"}, {"homeowner", table}, {"flood", {{"yearly"}}}, {"wind", {{"yearly"}}}}},
    {"escrow", {{"cushion_months"}, {"prepaid_insurance_months"}}},
    {"dues", {{"name"}, {"monthly"}}},
    {"closing_costs", closing_cost},
};

// What the buyer asks: all of it is the buyer's own, and what is private goes only when ticked.

const Members pick = {{"option"}, {"level"}, {"choice"}, {"quantity"}, {"spend"}};
const Members inquiry = {
    {"format"},
    {"price_book"}, // the book that goes along
    {"buyer"},
    {"originator"}, // whom the buyer is to ask; who prepared it stays
    {"as_of"},
    {"contract"},
    {"closing"},
    {"rates"},
    {"place"},
    {"plan"},
    {"elevation"},
    {"lot"},
    {"stage"},
    {"selections", pick},
    {"wishes",
     {{"option"}, {"level"}, {"choice"}, {"quantity"}, {"spend"}, {"rank"}, {"weight"}, {"must"}}},
    {"requests", {{"area"}, {"text"}, {"estimate"}}},
    {"incentives", {{"id"}, {"use"}, {"amount"}}},
    {"credits", {{"name"}, {"from"}, {"amount"}, {"uses"}}},
    {"appraised_value"},
    {"deposits_paid"},
    {"score"},                 // if ticked; else one that gives the same figures
    {"income", monthly},       // if ticked
    {"income_taxes", monthly}, // with the income
    {"household"},             // with the income
    {"debts", monthly},        // if ticked
    {"cash"},                  // if ticked
    {"scenarios",
     {{"name"},
      {"program"},
      {"years"},
      {"months"},
      {"lock_days"},
      {"down", {{"percent"}, {"amount"}, {"cash"}}}, // cash: if ticked
      {"rate", {{"points"}, {"note"}, {"quoted"}}},
      {"score"}, // as above
      {"fee"},
      {"use"},
      {"mi_ends"},
      {"mi_premium"},
      {"buydown"},
      {"escrow"},
      {"extra_principal"}}},
};

const Members nothing = {};

} // namespace goes
} // namespace

const Members& may_go(FileKind kind) {
    switch (kind) {
    case FileKind::price_book:
        return goes::price_book;
    case FileKind::inquiry:
        return goes::inquiry;
    case FileKind::program:
        return goes::program;
    case FileKind::rate_sheet:
        return goes::rate_sheet;
    case FileKind::place:
        return goes::place;
    case FileKind::drawing:
        return goes::drawing;
    case FileKind::site_map:
        return goes::site_map;
    case FileKind::apr_problem:
    case FileKind::unknown:
        return goes::nothing;
    }
    return goes::nothing;
}

const Members& may_go_of_other_plans() { return goes::other_plan; }

const Members& may_go_of_lots() { return goes::lot; }

const Members& may_go_of_map_in_degrees() { return goes::map_in_degrees; }

} // namespace quoin::apps
