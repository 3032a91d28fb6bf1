// Rendering an APR.
#include <quoin/render/apr.hpp>

#include "json_parts.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

const char* const caution =
    "By the actuarial method of 12 CFR 1026, Appendix J, from the flows as they were given. An "
    "estimate, not a federal disclosure.";

} // namespace

std::string text_of(const AprAnswer& answer) {
    Table table({{"", Align::left}, {"", Align::right}});
    table.row({"APR", percent_text(answer.apr, 6)});
    table.row({"advanced", dollars(answer.advanced)});
    table.row({"paid", dollars(answer.paid)});
    table.row({"finance charge", dollars(answer.finance_charge)});
    return table.text() + footing_text({caution});
}

std::string json_text_of(const AprAnswer& answer) {
    return written({{"question", "apr"},
                    {"apr", fixed(answer.apr, 6)},
                    {"advanced", answer.advanced.text()},
                    {"paid", answer.paid.text()},
                    {"finance_charge", answer.finance_charge.text()},
                    {"cautions", cautions_json({caution})}});
}

} // namespace quoin
