// Every public header, in dependency order: the order to read them in, too.
#pragma once

#include <quoin/exact/broken.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/date.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>

#include <quoin/text/findings.hpp>
#include <quoin/text/source.hpp>
#include <quoin/text/value.hpp>
#include <quoin/text/reader.hpp>
#include <quoin/text/problems.hpp>

#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/schedule.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
