// Why a conflict stands in an option's way, for messages and for the line beside an option that
// cannot be had.
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

/// "Kitchen counters: Quartz".
std::string full_name(const PriceBook& book, const OptionRef& ref) {
    const Option& option = at(book.options, ref.option);
    return ref.level ? option.name + ": " + at(option.levels, *ref.level).name : option.name;
}

} // namespace

WhyNot why_not(const PriceBook& book, const Conflict& conflict, Naming naming) {
    using Kind = WhyNot::Kind;
    const Option& option = at(book.options, conflict.of.option);
    const auto others = [&](Kind kind) {
        WhyNot why{.kind = kind};
        for (const OptionRef& ref : conflict.others) {
            why.names.push_back(naming == Naming::ids ? name_of(book, ref) : full_name(book, ref));
        }
        return why;
    };
    switch (conflict.barrier) {
    case Barrier::not_on_plan:
        return {.kind = Kind::not_on_plan};
    case Barrier::only:
        return why_not(book, option.only, conflict.limit);
    case Barrier::past_cutoff:
        return {.kind = Kind::past_cutoff, .names = {at(book.stages, option.cutoff.value()).name}};
    case Barrier::needs:
        return others(Kind::needs);
    case Barrier::excludes:
        return others(Kind::excludes);
    case Barrier::one_of:
        return others(Kind::one_of_kind);
    }
    return {};
}

} // namespace quoin
