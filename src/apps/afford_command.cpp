// How much home: of an inquiry's buyer, or on figures alone.
#include "afford_command.hpp"

#include <memory>

#include <CLI/CLI.hpp>

#include "clock.hpp"
#include "commands.hpp"
#include "loading.hpp"
#include "plain_afford.hpp"
#include "typed_question.hpp"
#include <quoin/inquiry/asking.hpp>

namespace quoin::apps {
namespace {

struct Options {
    TypedQuestion typed{*find_question("afford")};
    PlainText plain;
};

/// Figures in place of an inquiry.
CLI::Option_group* add_plain_options(CLI::App& command, PlainText& text) {
    CLI::Option_group* plain = command.add_option_group(
        "without a price book",
        "figures in place of an inquiry; what is not given is assumed, and told");
    const auto add = [&](const char* name, std::string& value, const char* what) {
        plain->add_option(name, value, what);
    };
    add("--income", text.income, "gross income a month, in dollars");
    add("--rate", text.rate, "the yearly note rate, in percent");
    add("--debts", text.debts, "payments on debts a month");
    add("--cash", text.cash, "all the cash there is");
    add("--years", text.years, "the term, 30 if not given");
    add("--down", text.down, "the down payment in percent; the program's usual ones if not given");
    plain->add_option("--program", text.programs, "a program by its id; may be repeated");
    add("--property-tax", text.property_tax, "percent of the price a year");
    add("--insurance", text.insurance, "homeowner's insurance, percent of the price a year");
    add("--dues", text.dues, "association dues a month");
    add("--closing-costs", text.closing_costs, "percent of the loan");
    add("--score", text.score, "credit score");
    add("--taxes", text.taxes, "taxes on the income a month, for residual income");
    add("--persons", text.persons, "persons in the household, for residual income");
    add("--region", text.region, "northeast, midwest, south or west, for residual income");
    add("--square-feet", text.square_feet, "living area, for residual income");
    add("--as-of", text.as_of, "the day it is as of; today if not given");
    return plain;
}

std::string plain_afford(const Options& options, const Shared& shared) {
    PlainCase made = plain_case(options.plain, shared.rates, today());
    Asked asked = options.typed.asked_of(made.desk, made.inquiry);
    asked.assumptions = std::move(made.assumptions);
    return options.typed.question.text(std::move(asked), options.typed.form(shared.json));
}

std::string afford_in_book(const Options& options, const Shared& shared) {
    const auto loaded = load_inquiry(options.typed.file, shared.rates);
    return options.typed.text(loaded->desk, loaded->inquiry, shared.json);
}

} // namespace

void add_afford(CLI::App& command, Shared& shared) {
    const auto options = std::make_shared<Options>();
    command.add_option("INQUIRY", options->typed.file, "the buyer's inquiry, a JSON file");
    add_options(command, options->typed);
    const CLI::Option_group* figures = add_plain_options(command, options->plain);
    command.callback([options, figures, &shared] {
        const bool plain = options->typed.file.empty();
        if (!plain && figures->count_all() > 0) {
            throw CLI::ExcludesError("INQUIRY", "figures in place of one, such as --income");
        }
        if (plain && (options->plain.income.empty() || options->plain.rate.empty())) {
            throw CLI::RequiredError("INQUIRY, or --income and --rate,");
        }
        shared.outcome.output =
            plain ? plain_afford(*options, shared) : afford_in_book(*options, shared);
    });
}

} // namespace quoin::apps
