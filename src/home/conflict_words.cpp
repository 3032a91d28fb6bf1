// A conflict in words, for messages and for the line beside an option that cannot be had.
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

/// "Kitchen counters: Quartz".
std::string full_name(const PriceBook& book, const OptionRef& ref) {
    const Option& option = at(book.options, ref.option);
    return ref.level ? option.name + ": " + at(option.levels, *ref.level).name : option.name;
}

} // namespace

std::string described(const PriceBook& book, const Conflict& conflict, Naming naming) {
    const Option& option = at(book.options, conflict.of.option);
    const auto refs = [&] {
        std::vector<std::string> names;
        for (const OptionRef& ref : conflict.others) {
            names.push_back(naming == Naming::ids ? name_of(book, ref) : full_name(book, ref));
        }
        return any_of(names);
    };
    switch (conflict.barrier) {
    case Barrier::not_on_plan:
        return "not offered on this plan";
    case Barrier::only:
        return described(book, option.only, conflict.limit);
    case Barrier::past_cutoff:
        return "its cutoff has passed: " + at(book.stages, option.cutoff.value()).name;
    case Barrier::needs:
        return "needs " + refs();
    case Barrier::excludes:
        return "not together with " + refs();
    case Barrier::one_of:
        return "only one of this kind; " + refs() + " is chosen";
    }
    return {};
}

} // namespace quoin
