// How much home: of an inquiry's buyer, or on figures alone.
#include "afford_command.hpp"

#include <memory>

#include <CLI/CLI.hpp>

#include <quoin/render/afford.hpp>

#include "asking.hpp"
#include "clock.hpp"
#include "commands.hpp"
#include "interruption.hpp"
#include "loading.hpp"
#include "plain_afford.hpp"

namespace quoin::apps {
namespace {

struct Options {
    std::string file;
    AffordText text;
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

AffordAnswer plain_afford(const PlainText& plain, const AffordText& text,
                          const std::string& rates) {
    const PlainCase made = plain_case(plain, rates, today());
    AffordAnswer answer = afford(Sitting(made.desk, made.inquiry, &not_interrupted()),
                                 afford_facts(made.inquiry, text));
    answer.assumptions = made.assumptions;
    return answer;
}

} // namespace

void add_afford(CLI::App& command, Shared& shared) {
    const auto options = std::make_shared<Options>();
    command.add_option("INQUIRY", options->file, "the buyer's inquiry, a JSON file");
    command.add_option("--reserves", options->text.reserves,
                       "months of the payment to be left over in cash, 0 to 24");
    command.add_option("--step", options->text.step,
                       "the higher price to ask about, in dollars more");
    command.add_flag(
        "--automated", options->text.automated,
        "a file that automated underwriting accepts: its ratio, none where none is published");
    const CLI::Option_group* figures = add_plain_options(command, options->plain);
    command.callback([options, figures, &shared] {
        const bool plain = options->file.empty();
        if (!plain && figures->count_all() > 0) {
            throw CLI::ExcludesError("INQUIRY", "figures in place of one, such as --income");
        }
        if (plain && (options->plain.income.empty() || options->plain.rate.empty())) {
            throw CLI::RequiredError("INQUIRY, or --income and --rate,");
        }
        const auto loaded = plain ? nullptr : load_inquiry(options->file, shared.rates);
        const AffordAnswer answer =
            plain ? plain_afford(options->plain, options->text, shared.rates)
                  : afford(loaded->sitting(), afford_facts(loaded->inquiry, options->text));
        shared.outcome.output = shared.json ? json_text_of(answer) : text_of(answer);
    });
}

} // namespace quoin::apps
