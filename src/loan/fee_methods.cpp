// The names of the fee methods.
#include <quoin/loan/fee_methods.hpp>

#include "fees/table.hpp"

namespace quoin {

FeeMethods fee_methods() {
    FeeMethods methods;
    for (const UpfrontMethod* method : upfront_methods) {
        methods.upfront.push_back({method, method->name});
    }
    for (const AnnualMethod* method : annual_methods) {
        methods.annual.push_back({method, method->name});
    }
    return methods;
}

} // namespace quoin
