// The command line: the same answers as the library, exit codes, nothing half-written.
#include <shown.hpp>

#include <fstream>

#include <quoin/answers/quote.hpp>
#include <quoin/render/answers.hpp>

#include "apps/command_line.hpp"
#include "support/files.hpp"
#include "support/scratch.hpp"

using namespace quoin;
using namespace quoin::test;
using apps::run;

namespace {

const std::string buyer = QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/six-programs.json";
const std::string rates = QUOIN_SOURCE_DIR "/rates";
const char* const first_home = QUOIN_SOURCE_DIR "/examples/first-home";

std::string read_all(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Whatever a file holds, the program answers or refuses; it never fails of its own.
void check_outcome(const apps::Result& result) {
    const bool answered = result.code == apps::done && !result.output.empty();
    const bool refused =
        result.code == apps::input_wrong && result.output.empty() && !result.errors.empty();
    CHECK((answered || refused));
}

} // namespace

TEST_CASE("The command line gives the library's answer") {
    const apps::Result result = run({"quote", buyer, "--rates", rates, "--json"});
    CHECK(result.code == apps::done);
    CHECK(result.output == json_text_of(quote(six_programs().sitting())));
    CHECK(result.errors.empty());
}

TEST_CASE("Exit codes: done, input wrong, use wrong") {
    CHECK(run({"payment", "--loan", "1", "--rate", "1", "--years", "1"}).code == apps::done);
    const apps::Result wrong = run({"quote", "no-such-file.json"});
    CHECK(wrong.code == apps::input_wrong);
    CHECK(wrong.output.empty());
    CHECK(run({"quote"}).code == apps::use_wrong);
    CHECK(run({"--help"}).code == apps::done);
    // Beyond what can be counted: an input that is wrong, not a fault.
    CHECK(run({"payment", "--loan", "9223372036854775807", "--rate", "1", "--years", "1"}).code ==
          apps::input_wrong);
}

TEST_CASE("A file cut off anywhere is refused or read, with nothing half-written") {
    const Scratch scratch(first_home);
    for (const char* name : {"buyer.json", "pricebook.json"}) {
        const std::string whole = read_all(scratch.path(name));
        for (std::size_t end = 0; end < whole.size(); end += 97) {
            CAPTURE(name, end);
            scratch.write(name, whole.substr(0, end));
            check_outcome(run({"quote", scratch.path("buyer.json"), "--rates", rates}));
        }
        scratch.write(name, whole);
    }
}

TEST_CASE("A file with any byte changed is refused or read") {
    const Scratch scratch(first_home);
    for (const char* name : {"buyer.json", "pricebook.json"}) {
        const std::string whole = read_all(scratch.path(name));
        for (std::size_t at = 0; at < whole.size(); at += 41) {
            for (const char byte : {'"', '9', '\xff', ' '}) {
                std::string changed = whole;
                changed[at] = byte;
                CAPTURE(name, at, byte);
                scratch.write(name, changed);
                check_outcome(run({"adds", scratch.path("buyer.json"), "--rates", rates}));
            }
        }
        scratch.write(name, whole);
    }
}

TEST_CASE("What only the whole program can do is left to it, before anything is read") {
    for (const std::vector<std::string>& words : {
             std::vector<std::string>{"serve"},
             {"serve", "no-such-folder", "--port", "0"},
             {"recheck", "no-such-file.json", "--scenario", "any", "--workbook", "a.xlsx"},
         }) {
        CAPTURE(words);
        const apps::Result result = run(words);
        CHECK(result.left_to_whole);
        CHECK(result.output.empty());
        CHECK(result.errors.empty());
    }
    // Wrong use, and all that needs no such thing, is told at once.
    for (const std::vector<std::string>& words : {
             std::vector<std::string>{"serve", "--port", "70000"},
             {"serve", "--help"},
             {"recheck", "no-such-file.json", "--scenario", "any"},
             {"recheck", "no-such-file.json", "--scenario", "any", "--workbook", "a.txt"},
         }) {
        CAPTURE(words);
        CHECK_FALSE(run(words).left_to_whole);
    }
    // The whole program leaves nothing to another.
    CHECK_FALSE(run({"recheck", "no-such-file.json", "--scenario", "any", "--workbook", "a.xlsx"},
                    &apps::all_of_it)
                    .left_to_whole);
}
