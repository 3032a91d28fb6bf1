// Rendering the quick answer.
#include <quoin/render/payment.hpp>

#include <fmt/format.h>

#include "json_parts.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

const char* const caution =
    "An estimate of principal and interest alone, with no points or fees, so that the APR equals "
    "the "
    "rate: not a Loan Estimate, not an approval, not an offer to lend. Taxes, insurance, dues and "
    "mortgage insurance come on top. A licensed loan originator gives an offer.";

} // namespace

std::string text_of(const PaymentAnswer& a) {
    Table table({{"", Align::left}, {"", Align::right}});
    table.row({"loan", dollars(a.terms.loan)});
    table.row({"note rate", percent_text(a.terms.rate.percent(), 3)});
    table.row({"term", term_text(a.terms.term)});
    table.rule();
    table.row({"payment a month", dollars(a.payment)});
    table.row({"payments", std::to_string(a.months)});
    table.row({"last payment", dollars(a.last_payment)});
    table.row({"total interest", dollars(a.total_interest)});
    table.row({"total of payments", dollars(a.total_of_payments)});
    return table.text() + footing_text({caution});
}

std::string json_text_of(const PaymentAnswer& a) {
    return written({{"question", "payment"},
                    {"loan", a.terms.loan.text()},
                    {"rate", a.terms.rate.text()},
                    {"apr", apr_json(a.terms.rate)},
                    {"term_months", a.terms.term.count()},
                    {"payment", a.payment.text()},
                    {"total_interest", a.total_interest.text()},
                    {"total_of_payments", a.total_of_payments.text()},
                    {"last_payment", a.last_payment.text()},
                    {"months", a.months},
                    {"cautions", cautions_json({caution})}});
}

} // namespace quoin
