// Every question through the command line: the library's own answer to the letter, and an exit code
// for every way it can end.
#include <shown.hpp>

#include <functional>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/apr.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/payment.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/exact/broken.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/listing.hpp>

#include "apps/command_line.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;
using apps::Result;
using apps::run;

namespace {

using Arguments = std::vector<std::string>;

const std::string example = QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow";
const std::string book_file = example + "/pricebook.json";
const std::string rates_folder = QUOIN_SOURCE_DIR "/rates";
const std::string problem_file = QUOIN_SOURCE_DIR "/examples/apr/long-first-period.json";
const std::vector<std::string> buyers = {
    example + "/buyers/six-programs.json", example + "/buyers/right-under-eighty.json",
    example + "/buyers/short-of-cash.json", example + "/buyers/va-used-before.json"};

/// A command, and the library's answer to the same question in both forms.
struct Expected {
    Arguments command;
    std::string text;
    std::string json;
};

template <class Answer>
Expected expected(Arguments command, const Answer& answer) {
    return {std::move(command), text_of(answer), json_text_of(answer)};
}

std::vector<Expected> questions_of(const std::string& buyer) {
    const auto loaded = apps::load_inquiry(buyer, rates_folder);
    const Sitting sitting = loaded->sitting();
    const AddsAnswer all = adds(sitting, {});
    Findings none;
    const AddsAnswer one = adds(sitting, {*asked_option(loaded->desk.book, "irrigation", none)});
    std::vector<Expected> list = {
        expected({"quote", buyer}, quote(sitting)),
        expected({"compare", buyer}, compare(sitting)),
        expected({"shown", buyer}, *shown(sitting)),
        {{"adds", buyer}, text_of(all, false), json_text_of(all)},
        {{"adds", buyer, "--by-part"}, text_of(all, true), json_text_of(all)},
        {{"adds", buyer, "irrigation"}, text_of(one, true), json_text_of(one)},
    };
    for (std::size_t s = 0; s < loaded->inquiry.scenarios.size(); ++s) {
        const std::string& name = loaded->inquiry.scenarios[s].name;
        list.push_back(expected({"cash", buyer, "--scenario", name}, cash(sitting, s)));
        list.push_back(
            expected({"schedule", buyer, "--scenario", name}, month_by_month(sitting, s)));
        list.push_back(expected({"schedule", buyer, "--scenario", name, "--extra", "125.50"},
                                month_by_month(sitting, s, {money("125.50")})));
    }
    return list;
}

std::vector<Expected> questions_without_buyer() {
    const PriceBook& book = six_programs().desk.book;
    std::vector<Expected> list = {
        expected({"payment", "--loan", "250000", "--rate", "6.5", "--years", "30"},
                 payment({money("250000"), rate("6.5"), Months(360)})),
        expected({"payment", "--loan", "$1,234.56", "--rate", "0", "--months", "7"},
                 payment({money("1234.56"), rate("0"), Months(7)})),
        expected({"apr", problem_file}, apps::load_apr(problem_file)),
    };
    const std::pair<const char*, Listing> listings[] = {
        {"plans", Listing::plans}, {"lots", Listing::lots}, {"options", Listing::options}};
    for (const auto& [word, what] : listings) {
        list.push_back(
            {{"list", word, book_file}, listing_text(book, what).text(), listing_json(book, what)});
    }
    return list;
}

Arguments with(Arguments words, const Arguments& more) {
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

void check_same(const Expected& question) {
    CAPTURE(question.command);
    const Result text = run(with(question.command, {"--rates", rates_folder}));
    CHECK(text.code == apps::done);
    CHECK(text.output == question.text);
    CHECK(text.errors.empty());
    const Result json = run(with({"--json", "--rates", rates_folder}, question.command));
    CHECK(json.code == apps::done);
    CHECK(json.output == question.json);
    CHECK(json.errors.empty());
}

} // namespace

TEST_CASE("Each question about each buyer has the library's answer, as text and as JSON") {
    for (const std::string& buyer : buyers) {
        for (const Expected& question : questions_of(buyer)) check_same(question);
    }
}

TEST_CASE("Questions without a buyer have the library's answer too") {
    for (const Expected& question : questions_without_buyer()) check_same(question);
}

TEST_CASE("Comma-separated values are the library's, and only where they are asked for") {
    const PriceBook& book = six_programs().desk.book;
    CHECK(run({"list", "lots", book_file, "--csv"}).output == listing_csv(book, Listing::lots));
    CHECK(run({"list", "options", book_file, "--csv"}).output ==
          listing_csv(book, Listing::options));
    const std::string& name = six_programs().inquiry.scenarios.front().name;
    const MonthByMonthAnswer months = month_by_month(six_programs().sitting(), 0);
    CHECK(run({"schedule", buyers.front(), "--scenario", name, "--csv", "--rates", rates_folder})
              .output == csv_of(months));
}

TEST_CASE("An appraised value asked for on the command line is the inquiry's") {
    auto loaded = apps::load_inquiry(buyers.front(), rates_folder);
    loaded->inquiry.facts.appraised_value = money("400000");
    const std::string& name = loaded->inquiry.scenarios.front().name;
    CHECK(run({"cash", buyers.front(), "--scenario", name, "--appraised", "400000", "--rates",
               rates_folder})
              .output == text_of(cash(loaded->sitting(), 0)));
}

TEST_CASE("Input that is wrong: code 1, a message, nothing on standard output") {
    const std::string golden = QUOIN_SOURCE_DIR "/tests/errors/";
    const std::string& buyer = buyers.front();
    for (const Arguments& words : {
             Arguments{"quote", "no-such-file.json"},
             Arguments{"quote", buyer, "--rates", "no-such-folder"},
             Arguments{"quote", book_file},
             Arguments{"quote", golden + "not-json/book.json"},
             Arguments{"adds", buyer, "no-such-option"},
             Arguments{"adds", buyer, "recessed-lights=7"},
             Arguments{"cash", buyer, "--scenario", "no such scenario"},
             Arguments{"cash", buyer, "--scenario", "VA, nothing down, first use", "--appraised",
                       "0"},
             Arguments{"schedule", buyer, "--scenario", "no such scenario"},
             Arguments{"schedule", buyer, "--scenario", "VA, nothing down, first use", "--extra",
                       "-1"},
             Arguments{"payment", "--loan", "-1", "--rate", "6", "--years", "30"},
             Arguments{"payment", "--loan", "1", "--rate", "101", "--years", "30"},
             Arguments{"payment", "--loan", "1", "--rate", "6", "--years", "41"},
             Arguments{"apr", book_file},
             Arguments{"list", "lots", buyer},
         }) {
        CAPTURE(words);
        const Result text = run(words);
        CHECK(text.code == apps::input_wrong);
        CHECK(text.output.empty());
        CHECK(text.errors.find("  [") != std::string::npos); // the problem's name, at its end
        const Result json = run(with({"--json"}, words));
        CHECK(json.code == apps::input_wrong);
        CHECK(json.output.empty());
        CHECK(json.errors.find("\"problems\"") != std::string::npos);
    }
}

TEST_CASE("A check lists the sound files on standard output, though others are not") {
    const std::string bad = QUOIN_SOURCE_DIR "/tests/errors/not-json/book.json";
    const Result mixed = run({"check", book_file, bad, "--rates", rates_folder});
    CHECK(mixed.code == apps::input_wrong);
    CHECK(mixed.output == book_file + ": price book, no problems found\n");
    CHECK(mixed.errors.find("[not-json]") != std::string::npos);
    const Result sound =
        run({"check", book_file, buyers.front(), problem_file, "--rates", rates_folder});
    CHECK(sound.code == apps::done);
    CHECK(sound.errors.empty());
    const Result json = run({"check", "--json", book_file, bad, "--rates", rates_folder});
    CHECK(json.code == apps::input_wrong);
    CHECK(json.output.find("\"sound\": true") != std::string::npos);
    CHECK(json.output.find("\"sound\": false") != std::string::npos);
}

TEST_CASE("Wrong use: code 2, a message, nothing on standard output") {
    for (const Arguments& words : {
             Arguments{},
             Arguments{"qoute", buyers.front()},
             Arguments{"quote"},
             Arguments{"quote", buyers.front(), "--no-such-option"},
             Arguments{"quote", buyers.front(), "another"},
             Arguments{"cash", buyers.front()}, // no scenario
             Arguments{"list", "roofs", book_file},
             Arguments{"payment", "--loan", "1", "--rate", "1"},
             Arguments{"payment", "--loan", "1", "--rate", "1", "--years", "1", "--months", "1"},
         }) {
        CAPTURE(words);
        const Result result = run(words);
        CHECK(result.code == apps::use_wrong);
        CHECK(result.output.empty());
        CHECK(result.errors.find("--help") != std::string::npos);
    }
    CHECK(run({"qoute", buyers.front()}).errors.find("did you mean \"quote\"?") !=
          std::string::npos);
    for (const Arguments& words :
         {Arguments{"--help"}, Arguments{"quote", "--help"}, Arguments{"--version"}}) {
        CAPTURE(words);
        const Result result = run(words);
        CHECK(result.code == apps::done);
        CHECK_FALSE(result.output.empty());
        CHECK(result.errors.empty());
    }
}

TEST_CASE("A fault of the program: code 3, and what was answered so far is not written") {
    struct Row {
        const char* what;
        std::function<void()> thrown;
        int code;
    };
    for (const Row& row : {
             Row{"a broken promise", [] { throw Broken("lines must sum"); }, apps::fault},
             Row{"no memory", [] { throw std::bad_alloc(); }, apps::fault},
             Row{"anything else", [] { throw std::runtime_error("?"); }, apps::fault},
             Row{"too large", [] { throw Overflow("a sum"); }, apps::input_wrong},
             Row{"a refusal", [] { throw Refused(Findings{}); }, apps::input_wrong},
             Row{"an interrupt", [] { throw Stopped(); }, apps::stopped},
         }) {
        CAPTURE(row.what);
        const Result result = apps::result_of(
            [&] {
                row.thrown();
                return apps::Outcome{"half an answer"};
            },
            apps::Typed{});
        CHECK(result.code == row.code);
        CHECK(result.output.empty());
    }
    const Result fault =
        apps::result_of([]() -> apps::Outcome { throw Broken("lines must sum"); }, apps::Typed{});
    CHECK(fault.errors.find("a fault of the program, not of your input: lines must sum") !=
          std::string::npos);
    CHECK(apps::result_of([] { return apps::Outcome{}; }, apps::Typed{}).code == apps::done);
}
