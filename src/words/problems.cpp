// Filling a problem's sentences with its arguments.
#include <quoin/words/problem_words.hpp>

#include <fmt/args.h>

#include <quoin/text/caps.hpp>
#include <quoin/text/plain.hpp>
#include <quoin/words/reasons.hpp>

#include "parts.hpp"
#include "problems.hpp"
#include "reasons.hpp"

namespace quoin {
namespace {

/// An argument as a pattern takes it: problem_rows::Taken has its type.
class Taking {
  public:
    explicit Taking(const Catalogue& catalogue) : catalogue_(catalogue), say_(catalogue.problems) {}

    std::string_view operator()(const std::string& text) const { return text; }
    std::int64_t operator()(std::int64_t number) const { return number; }
    std::string operator()(const Decimal& figure) const { return figure.text(); }
    Date operator()(const Date& day) const { return day; }
    NounForms operator()(Noun noun) const { return say_.noun(noun); }
    std::string_view operator()(const NearName& near) const { return near.name; }
    std::string_view operator()(const About& thing) const { return thing.told; }
    NamesInWords operator()(const std::vector<std::string>& names) const {
        return {&names, &catalogue_.reasons.either};
    }
    std::string operator()(FileMeant what) const { return say_.file(what); }
    std::string operator()(LotStatus status) const { return catalogue_.parts.lot_status(status); }
    std::string operator()(const WhyNot& why) const { return words_of(why, catalogue_); }
    std::string operator()(const Wanted& wanted) const { return words_of(wanted, catalogue_); }
    std::string operator()(const FoundValue& value) const {
        switch (value.kind) {
        case FoundValue::Kind::nothing:
            return say_.value.nothing();
        case FoundValue::Kind::null:
            return say_.value.null();
        case FoundValue::Kind::list:
            return say_.value.list();
        case FoundValue::Kind::object:
            return say_.value.object();
        case FoundValue::Kind::text:
            return say_.value.text(value.literal);
        case FoundValue::Kind::literal:
            break;
        }
        return value.literal;
    }

  private:
    const Catalogue& catalogue_;
    const ProblemsWords& say_;
};

template <class Argument>
void take(const Taking& taking, const Argument& argument,
          fmt::dynamic_format_arg_store<fmt::format_context>& into) {
    using Type = typename problem_rows::Taken<Argument>::Type;
    static_assert(std::is_same_v<decltype(taking(argument)), Type>);
    into.push_back(taking(argument));
}

std::string filled(std::string_view pattern,
                   const fmt::dynamic_format_arg_store<fmt::format_context>& arguments) {
    return cut(fmt::vformat(pattern, arguments), caps::line);
}

} // namespace

ProblemWords words_of(const Problem& problem, const Catalogue& say) {
    const Taking taking(say);
    fmt::dynamic_format_arg_store<fmt::format_context> arguments;
    std::string near;
    for (const Argument& argument : problem.arguments) {
        std::visit([&](const auto& each) { take(taking, each, arguments); }, argument);
        if (const auto* name = std::get_if<NearName>(&argument)) near = name->name;
    }
    const ProblemRows::Row& row = say.problems.rows[problem.id];
    const std::string of_it = filled(row.found, arguments);
    return {cut(filled(row.name, arguments) + of_it, caps::line), of_it,
            filled(row.expected, arguments),
            near.empty() ? filled(row.advice, arguments)
                         : cut(say.problems.did_you_mean(near), caps::line)};
}

} // namespace quoin
