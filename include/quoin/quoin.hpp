// Every public header, in dependency order: the order to read them in, too.
#pragma once

#include <quoin/exact/rounding.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/amounts.hpp>
#include <quoin/exact/broken.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/date.hpp>
#include <quoin/exact/index.hpp>
#include <quoin/exact/rate.hpp>

#include <quoin/text/caps.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/ids.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/text/leading_texts.hpp>
#include <quoin/text/source.hpp>
#include <quoin/text/spot.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/value.hpp>
#include <quoin/text/reader.hpp>
#include <quoin/text/names.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/text/problem_words.hpp>

#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/only.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/pricebook/price_book.hpp>

#include <quoin/lending/adjustable_plan.hpp>
#include <quoin/lending/dated.hpp>
#include <quoin/lending/band_table.hpp>
#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/month_part.hpp>
#include <quoin/lending/residual_income.hpp>
#include <quoin/lending/place.hpp>
#include <quoin/lending/program_policy.hpp>
#include <quoin/lending/ratio_limits.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>
#include <quoin/lending/editions.hpp>
#include <quoin/lending/reading.hpp>

#include <quoin/home/selection.hpp>
#include <quoin/home/priced_home.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/home/standing.hpp>

#include <quoin/loan/actuarial.hpp>
#include <quoin/loan/schedule.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/buydown.hpp>
#include <quoin/loan/cash_to_close.hpp>
#include <quoin/loan/closing_costs.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/loan/escrow.hpp>
#include <quoin/loan/formula.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/loan/monthly.hpp>
#include <quoin/loan/local_costs.hpp>
#include <quoin/loan/scenario.hpp>
#include <quoin/loan/watch.hpp>
#include <quoin/loan/scenario_rules.hpp>
#include <quoin/loan/housing_escrow.hpp>
#include <quoin/loan/prepaids.hpp>
#include <quoin/loan/loan_figures.hpp>
#include <quoin/loan/least_figures.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/qualifying.hpp>

#include <quoin/inquiry/asks.hpp>
#include <quoin/inquiry/lending.hpp>
#include <quoin/inquiry/desk.hpp>
#include <quoin/inquiry/inquiry.hpp>
#include <quoin/inquiry/sitting.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/inquiry/first_inquiry.hpp>
#include <quoin/inquiry/incentive_rules.hpp>
#include <quoin/inquiry/typed.hpp>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/adjustable_answer.hpp>
#include <quoin/answers/cost_of_credit.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/answers/adds.hpp>
#include <quoin/answers/afford.hpp>
#include <quoin/answers/apr.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/cost_order.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/fit.hpp>
#include <quoin/answers/incentive_offers.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/payment.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/sheet.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/answers/tour.hpp>

#include <quoin/words/catalogue.hpp>
#include <quoin/words/figures.hpp>

#include <quoin/render/answers.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/listing.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/render/shape.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/render/workbook.hpp>
#include <quoin/render/written_mark.hpp>

#include <quoin/questions/questions.hpp>
