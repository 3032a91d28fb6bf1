// Every public header, in dependency order: the order to read them in, too.
#pragma once

#include <quoin/exact/broken.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/date.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/exact/index.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>

#include <quoin/text/findings.hpp>
#include <quoin/text/source.hpp>
#include <quoin/text/value.hpp>
#include <quoin/text/reader.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/names.hpp>

#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/pricebook/price_book.hpp>

#include <quoin/lending/adjustable_plan.hpp>
#include <quoin/lending/band_table.hpp>
#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/place.hpp>
#include <quoin/lending/ratio_limits.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>

#include <quoin/home/selection.hpp>
#include <quoin/home/priced_home.hpp>
#include <quoin/home/rules.hpp>

#include <quoin/loan/actuarial.hpp>
#include <quoin/loan/schedule.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/buydown.hpp>
#include <quoin/loan/closing_costs.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/loan/escrow.hpp>
#include <quoin/loan/local_costs.hpp>
#include <quoin/loan/prepaids.hpp>
#include <quoin/loan/scenario.hpp>
#include <quoin/loan/scenario_rules.hpp>
#include <quoin/loan/housing_escrow.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
#include <quoin/loan/loan_figures.hpp>

#include <quoin/answers/lending.hpp>
#include <quoin/answers/desk.hpp>
#include <quoin/answers/inquiry.hpp>
#include <quoin/answers/sitting.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/adjustable_answer.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/answers/adds.hpp>
#include <quoin/answers/afford.hpp>
#include <quoin/answers/apr.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/formula.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/payment.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/sheet.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/answers/tour.hpp>

#include <quoin/render/adds.hpp>
#include <quoin/render/afford.hpp>
#include <quoin/render/apr.hpp>
#include <quoin/render/cash.hpp>
#include <quoin/render/compare.hpp>
#include <quoin/render/format.hpp>
#include <quoin/render/later.hpp>
#include <quoin/render/listing.hpp>
#include <quoin/render/month_by_month.hpp>
#include <quoin/render/payment.hpp>
#include <quoin/render/problems.hpp>
#include <quoin/render/programs.hpp>
#include <quoin/render/quote.hpp>
#include <quoin/render/recheck.hpp>
#include <quoin/render/sheet.hpp>
#include <quoin/render/shown.hpp>
#include <quoin/render/site.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/tour.hpp>
#include <quoin/render/words.hpp>
#include <quoin/render/workbook.hpp>
