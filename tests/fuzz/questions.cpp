// Asking every question and rendering each answer.
#include "questions.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/afford.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/fit.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/month_by_month.hpp>
#include <quoin/answers/programs.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/recheck.hpp>
#include <quoin/answers/rooms.hpp>
#include <quoin/answers/sheet.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/answers/site.hpp>
#include <quoin/answers/tour.hpp>
#include <quoin/exact/rounding.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/workbook.hpp>

#include "shipped.hpp"
#include <quoin/inquiry/asking.hpp>

namespace quoin::fuzz {
namespace {

/// An inquiry at its desk and the options it is asked with.
class Asked {
  public:
    Asked(const Desk& at, const Inquiry& about, std::string_view options)
        : desk(at), inquiry(about), sitting(at, about) {
        while (!options.empty()) {
            const std::string_view word = options.substr(0, options.find(' '));
            options.remove_prefix(std::min(options.size(), word.size() + 1));
            const std::size_t sign = word.find('=');
            if (sign != std::string_view::npos) {
                options_.emplace(word.substr(0, sign), word.substr(sign + 1));
            }
        }
    }

    [[nodiscard]] std::string option(std::string_view name, std::string fallback = "") const {
        const auto found = options_.find(name);
        return found == options_.end() ? std::move(fallback) : found->second;
    }
    [[nodiscard]] bool flag(std::string_view name) const { return options_.contains(name); }
    [[nodiscard]] std::vector<std::string> all(std::string_view name) const {
        std::vector<std::string> values;
        const auto [begin, end] = options_.equal_range(name);
        for (auto it = begin; it != end; ++it) values.push_back(it->second);
        return values;
    }
    /// What is asked about: the options named, else the wishes.
    [[nodiscard]] std::vector<Pick> picks() const {
        std::vector<Pick> picks = picks_named(desk.book, all("option"));
        if (picks.empty()) {
            for (const Wish& wish : inquiry.wishes) picks.push_back(wish.pick);
        }
        return picks;
    }
    /// Calls `use` for each scenario; what one of them refuses is no matter for the next.
    template <class Use>
    void each_scenario(const Use& use) const {
        for (std::size_t i = 0; i < inquiry.scenarios.size(); ++i) {
            try {
                use(i);
            } catch (const Refused& refused) {
                render(refused.findings());
            }
        }
    }

    const Desk& desk;
    const Inquiry& inquiry;
    Sitting sitting;

  private:
    std::multimap<std::string, std::string, std::less<>> options_;
};

/// An answer as text and as JSON.
template <class Answer>
void show(const char* what, const Answer& answer) {
    if (text_of(answer).empty()) throw Find(std::string(what) + ": no text");
    must_be_json(json_text_of(answer), what);
}

void ask_quote(const Asked& a) { show("quote", quote(a.sitting)); }
void ask_compare(const Asked& a) { show("compare", compare(a.sitting)); }
void ask_site(const Asked& a) {
    show("site", site(a.sitting, scenario_or_first(a.inquiry, a.option("scenario"))));
}
void ask_rooms(const Asked& a) { show("rooms", rooms(a.sitting)); }
void ask_programs(const Asked& a) { show("programs", programs(a.sitting)); }

void ask_adds(const Asked& a) {
    const AddsAnswer answer = adds(a.sitting, picks_named(a.desk.book, a.all("option")));
    const bool by_part = a.flag("by-part");
    if (text_of(answer, by_part).empty()) throw Find("adds: no text");
    must_be_json(json_text_of(answer), "adds");
}

void ask_cash(const Asked& a) {
    Inquiry inquiry = a.inquiry;
    if (a.flag("appraised")) {
        inquiry.facts.appraised_value = appraised_value(a.option("appraised"));
    }
    const Sitting sitting(a.desk, inquiry);
    a.each_scenario([&](std::size_t i) { show("cash", cash(sitting, i)); });
}

void ask_credit(const Asked& a) {
    Inquiry inquiry = a.inquiry;
    if (a.flag("instead")) inquiry.selection.incentives.clear();
    const Sitting sitting(a.desk, inquiry);
    const CreditAsk ask = credit_ask(sitting, a.option("amount", "10000"), a.option("years"));
    show("credit", credit(sitting, ask));
}

void ask_shift(const Asked& a) {
    show("shift", shift(a.sitting, shift_ask(a.option("steps", "1"), a.option("step"))));
}

void ask_recheck(const Asked& a) {
    a.each_scenario([&](std::size_t i) {
        const RecheckAnswer answer = recheck(a.sitting, i);
        show("recheck", answer);
        if (answer.scenario.available()) static_cast<void>(workbook_of(answer));
        if (answer.differences() == 0) return;
        for (const RecheckSection& section : answer.sections) {
            for (const RecheckedFigure& figure : section.figures) {
                if (!figure.agrees()) throw Find("recheck: " + figure.id + " differs");
            }
        }
        throw Find("recheck: a month differs");
    });
}

void ask_afford(const Asked& a) {
    const AffordFacts facts =
        afford_facts(a.inquiry, {a.option("reserves"), a.option("step"), a.flag("automated")});
    show("afford", afford(a.sitting, facts));
}

void ask_later(const Asked& a) {
    const LaterFacts facts =
        later_facts({a.option("month"), a.option("loan-rate"), a.option("loan-months")});
    show("later", later(a.sitting, a.picks(), facts));
}

void ask_shown(const Asked& a) {
    const auto answer = shown(a.sitting);
    if (answer) show("shown", *answer);
}

void ask_schedule(const Asked& a) {
    a.each_scenario([&](std::size_t i) {
        const RunText text{a.option("extra"), a.all("index"), a.flag("worst-case")};
        const MonthByMonthAnswer answer = month_by_month(a.sitting, i, run_as(a.sitting, i, text));
        show("schedule", answer);
        if (csv_of(answer).empty()) throw Find("schedule: no CSV");
    });
}

void ask_sheet(const Asked& a) {
    static_cast<void>(html_of(sheet(a.sitting)));
    a.each_scenario([&](std::size_t i) { static_cast<void>(html_of(sheet(a.sitting, i))); });
}

void ask_tour(const Asked& a) {
    show("tour", tour(a.sitting, scenario_or_first(a.inquiry, a.option("scenario"))));
}

void ask_fit(const Asked& a) {
    FitQuestion question;
    question.limits = {limit_given("--monthly", a.option("monthly", "3200")),
                       limit_given("--cash", a.option("cash", "100000"))};
    question.lots = a.flag("lots");
    question.nodes = 50;
    int told = 0; // the first of the scenarios are enough
    show("fit",
         fit(a.sitting, question, [&](const FitProgress& /*progress*/) { return ++told < 200; }));
}

struct Question {
    std::string_view name;
    void (*ask)(const Asked&);
};

const std::vector<Question> all_questions = {
    {"quote", ask_quote},       {"adds", ask_adds},         {"compare", ask_compare},
    {"cash", ask_cash},         {"credit", ask_credit},     {"shift", ask_shift},
    {"recheck", ask_recheck},   {"afford", ask_afford},     {"later", ask_later},
    {"shown", ask_shown},       {"schedule", ask_schedule}, {"sheet", ask_sheet},
    {"tour", ask_tour},         {"fit", ask_fit},           {"site", ask_site},
    {"programs", ask_programs}, {"rooms", ask_rooms},
};

void ask_one(const Question& question, const Asked& asked) {
    try {
        question.ask(asked);
    } catch (const Refused& refused) {
        render(refused.findings());
    } catch (const Overflow&) {
        // told as figures too large to count
    } catch (const Find&) {
        throw;
    } catch (const std::exception& error) {
        throw Find(std::string(question.name) + ": " + error.what());
    }
}

} // namespace

std::vector<std::string_view> asked() {
    std::vector<std::string_view> names;
    for (const Question& question : all_questions) names.push_back(question.name);
    return names;
}

void ask_all(const Desk& desk, const Inquiry& inquiry, std::string_view options) {
    ask(desk, inquiry, options, asked());
}

void ask(const Desk& desk, const Inquiry& inquiry, std::string_view options,
         const std::vector<std::string_view>& names) {
    const Asked asked(desk, inquiry, options);
    for (const Question& question : all_questions) {
        if (std::find(names.begin(), names.end(), question.name) != names.end()) {
            ask_one(question, asked);
        }
    }
}

} // namespace quoin::fuzz
