// An answer in one line: beside a payment, nothing is missing that may not be.
#include <shown.hpp>

#include <algorithm>
#include <array>

#include <quoin/answers/quote.hpp>
#include <quoin/questions/questions.hpp>
#include <quoin/words/figures.hpp>

#include "asked.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t end = text.find('\n', from);
        lines.push_back(text.substr(from, end - from));
        from = end + 1;
    }
    return lines;
}

std::string brief(const Question& question, const apps::Loaded& loaded, Language language,
                  std::optional<std::size_t> width = {}) {
    Asked asked{loaded.desk, loaded.inquiry, given_for(question, loaded.inquiry.scenarios.front())};
    asked.language = language;
    asked.width = width;
    return question.text(std::move(asked), Form::brief);
}

/// What has to stand on a line that tells a payment.
struct Beside {
    const char* month;
    const char* apr;
    const char* term;
    const char* estimate;
};
constexpr std::array<std::pair<Language, Beside>, 2> in_each = {{
    {Language::english, {" a month", " APR)", " years", "estimate with sample rates, November"}},
    {Language::spanish, {" al mes", "(APR ", " años", "estimado con tasas de muestra, 24 de"}},
}};

bool is_told(const std::string& line, const std::string& what) {
    return line.find(what) != std::string::npos;
}

} // namespace

TEST_CASE("A brief answer is a line for each loan, with all that a payment rests on") {
    std::size_t asked = 0;
    for (const Question& question : questions()) {
        if (!question.has(Form::brief)) continue;
        ++asked;
        CAPTURE(question.name);
        for (const auto& [language, beside] : in_each) {
            const std::string text = brief(question, six_programs(), language);
            CHECK_FALSE(text.empty());
            for (const std::string& line : lines_of(text)) {
                CAPTURE(line);
                if (!is_told(line, beside.month)) continue;
                CHECK(is_told(line, "%"));
                CHECK(is_told(line, beside.apr));
                CHECK(is_told(line, beside.term));
                CHECK(is_told(line, beside.estimate));
            }
        }
    }
    CHECK(asked == 9);
}

TEST_CASE("A brief quote is the quote's own figures, and its terms") {
    const QuoteAnswer answer = quote(six_programs().sitting());
    const auto lines = lines_of(brief(*find_question("quote"), six_programs(), Language::english));
    REQUIRE(lines.size() == answer.scenarios.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const ScenarioAnswer& s = answer.scenarios[i];
        CAPTURE(lines[i]);
        CHECK(lines[i].starts_with(dollars(answer.contract_price) + " "));
        for (const std::string& told :
             {dollars(s.monthly.total()) + " a month", dollars(s.cash.needed()) + " cash needed",
              s.terms.name + ": " + rate_text(s.terms.rate),
              dollars(s.terms.down_payment) + " down", disclosed_text(s.terms.apr->percent())}) {
            CHECK(is_told(lines[i], told));
        }
    }
}

TEST_CASE("Where a width is told, a brief answer is broken to it, else not at all") {
    const Question& question = *find_question("quote");
    for (const std::string& line :
         lines_of(brief(question, six_programs(), Language::english, 60))) {
        const auto letters = std::count_if(line.begin(), line.end(), [](char byte) {
            return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; // not within a letter
        });
        CHECK(letters <= 60);
    }
    CHECK(brief(question, six_programs(), Language::english, 60).size() >
          brief(question, six_programs(), Language::english).size());
}
