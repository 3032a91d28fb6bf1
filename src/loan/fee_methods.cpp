// The names of the fee methods.
#include <quoin/loan/fee_methods.hpp>

#include "fees/table.hpp"

namespace quoin {

FeeMethods fee_methods() {
    FeeMethods methods;
    for (const UpfrontMethod* method : upfront_methods) {
        methods.upfront.emplace_back(method->name, method);
    }
    for (const AnnualMethod* method : annual_methods) {
        methods.annual.emplace_back(method->name, method);
    }
    return methods;
}

} // namespace quoin
