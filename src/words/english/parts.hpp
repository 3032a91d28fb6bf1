// The names of what a month, the cash and the closing costs are made of, in English.
#pragma once

#include "words/parts.hpp"

namespace quoin::english {

inline constexpr PartWords parts = {
    .month = {{{MonthPart::principal_and_interest, "principal and interest"},
               {MonthPart::mortgage_insurance, "mortgage insurance"},
               {MonthPart::property_tax, "property tax"},
               {MonthPart::homeowners_insurance, "homeowner's insurance"},
               {MonthPart::flood_insurance, "flood insurance"},
               {MonthPart::wind_insurance, "wind insurance"},
               {MonthPart::association_dues, "association dues"},
               {MonthPart::district_charges, "district charges"}}},
    .cash = {{{CashPart::down_payment, "down payment"},
              {CashPart::upfront_fee, "upfront fee, in cash"},
              {CashPart::points, "points (credit if minus)"},
              {CashPart::principal_reduction, "principal reduced"},
              {CashPart::closing_costs, "closing costs"},
              {CashPart::prepaid_interest, "prepaid interest"},
              {CashPart::prepaid_bills, "prepaid bills"},
              {CashPart::escrow, "escrow, first deposit"},
              {CashPart::buydown, "temporary buydown"},
              {CashPart::credits, "credits"},
              {CashPart::deposits, "less deposits"}}},
    .use = {{{CreditUse::points, "points"},
             {CreditUse::buydown, "the temporary buydown"},
             {CreditUse::upfront_fee, "the upfront fee"},
             {CreditUse::closing_costs, "closing costs"},
             {CreditUse::prepaids, "prepaids and escrow"},
             {CreditUse::down_payment, "the down payment"}}},
    .single_premium = "the single premium",
    .section = {{{CostSection::origination, "origination"},
                 {CostSection::not_shopped_for, "services not shopped for"},
                 {CostSection::shopped_for, "services shopped for"},
                 {CostSection::taxes_and_government, "taxes and government fees"},
                 {CostSection::other, "other"}}},
    .paid_by = {{{PaidBy::buyer, "paid by the buyer"},
                 {PaidBy::seller, "paid by the seller"},
                 {PaidBy::lender, "paid by the lender"}}},
    .due = {{{CashDue::deposits, "deposits paid"},
             {CashDue::earnest_money, "earnest money"},
             {CashDue::option_share, "share of options, at their selection"},
             {CashDue::costs_when_ordered, "costs paid when ordered"},
             {CashDue::closing, "at closing"}}},
    .lot_status = {{{LotStatus::free, "free"},
                    {LotStatus::held, "held"},
                    {LotStatus::sold, "sold"}}},
    .grade = {{{Grade::level, "level"}, {Grade::garden, "garden"}, {Grade::walk_out, "walk-out"}}},
    .unit = {{{Unit::each, "each"},
              {Unit::square_foot, "sq ft"},
              {Unit::linear_foot, "linear ft"}}},
    .of_them = "{} of them",
    .so_much = "{} {}",
};

} // namespace quoin::english
