// Reading an inquiry: who and when, then the home, then the ways to pay.
#include <quoin/inquiry/inquiry.hpp>

#include <algorithm>

#include "inquiry_parts.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/text/names.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {

void not_negative(Reader& item, std::string_view key, Money amount) {
    if (amount >= Money{}) return;
    item.report(problems::amount_below_zero(item.spot(key)));
}

namespace {

void read_dates(Reader& root, const PriceBook& book, Inquiry& inquiry) {
    Findings& findings = root.findings();
    const std::size_t before = findings.problems().size();
    inquiry.as_of = root.date("as_of");
    inquiry.contract = root.maybe_date("contract").value_or(inquiry.as_of);
    inquiry.closing = root.date("closing");
    if (findings.problems().size() > before) return; // what is no date is neither early nor late
    if (inquiry.closing < inquiry.contract) {
        findings.add(problems::dates_reversed(root.spot("closing"), "contract", "closing"));
    }
    if (inquiry.as_of > book.expires) {
        findings.add(problems::book_expired(root.spot("as_of"), inquiry.as_of, book.expires));
    }
    if (inquiry.as_of < book.effective) {
        findings.add(problems::book_not_yet(root.spot("as_of"), inquiry.as_of, book.effective));
    }
}

/// A monthly amount in an object of its own, such as "income": {"monthly": "9800"}.
std::optional<Money> monthly_of(Reader& root, std::string_view key) {
    std::optional<Money> amount;
    root.object(key, [&](Reader& item) {
        amount = item.money("monthly");
        not_negative(item, "monthly", *amount);
    });
    return amount;
}

const Words<CreditFrom> credit_from_words = {{CreditFrom::builder, "builder"},
                                             {CreditFrom::seller, "seller"},
                                             {CreditFrom::lender, "lender"},
                                             {CreditFrom::program, "program"}};

std::vector<CreditUse> read_credit_uses(Reader& item, CreditFrom from) {
    auto uses = item.words<CreditUse>("uses", caps::credit_uses);
    const bool down = std::find(uses.begin(), uses.end(), CreditUse::down_payment) != uses.end();
    if (uses.empty()) {
        item.report(problems::credit_without_use(item.here()));
    } else if (down && from != CreditFrom::program) {
        // Interested parties and lenders may not fund the down payment (Fannie Mae B3-4.1-02).
        item.report(problems::credit_use_not_allowed(item.spot("uses")));
    }
    return uses;
}

void read_credits(Reader& root, Inquiry& inquiry) {
    root.each(
        "credits",
        [&](Reader& item) {
            Credit credit;
            credit.name = item.name("name");
            credit.from = item.word("from", credit_from_words);
            credit.amount = item.money("amount");
            credit.uses = read_credit_uses(item, credit.from);
            not_negative(item, "amount", credit.amount);
            inquiry.facts.credits.push_back(std::move(credit));
        },
        false, caps::credits);
}

void read_facts(Reader& root, Inquiry& inquiry) {
    inquiry.buyer = root.name("buyer");
    inquiry.prepared_by = root.name_or("prepared_by", "");
    inquiry.originator = root.name_or("originator", "");
    inquiry.facts.appraised_value = root.maybe_money("appraised_value");
    inquiry.facts.deposits_paid = root.maybe_money("deposits_paid");
    read_credits(root, inquiry);
    inquiry.score = root.maybe_whole("score", 300, 850);
    inquiry.monthly_income = monthly_of(root, "income");
    inquiry.monthly_debts = monthly_of(root, "debts");
    inquiry.monthly_taxes = monthly_of(root, "income_taxes");
    inquiry.cash = root.maybe_money("cash");
    not_negative(root, "cash", inquiry.cash.value_or(Money{}));
    not_negative(root, "deposits_paid", inquiry.facts.deposits_paid.value_or(Money{}));
    inquiry.household = root.maybe_whole("household", 1, 20);
    if (inquiry.facts.appraised_value && *inquiry.facts.appraised_value <= Money{}) {
        root.report(problems::amount_not_above_zero(root.spot("appraised_value")));
    }
}

/// The rate sheet and the place an inquiry uses must be among the lending data.
void check_sources(Reader& root, const Desk& desk, Inquiry& inquiry) {
    inquiry.rates = root.name_or("rates", "");
    inquiry.place = root.name_or("place", "");
    const Lending& lending = desk.lending;
    Findings& findings = root.findings();
    const bool dated = inquiry.as_of != Date{}; // else that has been said
    if (inquiry.rates.empty() && dated && inquiry.sheet(lending) == nullptr) {
        findings.add(problems::rates_missing(root.spot("as_of"), inquiry.as_of));
    }
    look_up(lending.sheets, Noun::rate_sheet, inquiry.rates, root.spot("rates"), findings);
    const std::string& place = inquiry.place.empty() ? desk.book.community.place : inquiry.place;
    look_up(lending.places, Noun::place, place, root.spot("place"), findings);
}

} // namespace

Decimal Inquiry::worth_of(const Wish& wish) const {
    if (wish.weight) return *wish.weight;
    const auto dearer = std::count_if(wishes.begin(), wishes.end(),
                                      [&](const Wish& other) { return other.rank < wish.rank; });
    const auto worth = static_cast<std::int64_t>(wishes.size()) - dearer;
    ensure(worth > 0, "every wish is worth something");
    return Decimal::whole(worth);
}

const RateSheet* Inquiry::sheet(const Lending& lending) const {
    return lending.sheet({rates, as_of});
}

const Scenario* Inquiry::find_scenario(std::string_view name) const {
    for (const Scenario& scenario : scenarios) {
        if (scenario.name == name) return &scenario;
    }
    return nullptr;
}

std::optional<std::string> price_book_of(const Document& document) {
    const Value* path = document.root.find("price_book");
    if (path == nullptr || path->kind != Value::Kind::text) return std::nullopt;
    return path->literal;
}

std::optional<SheetAsked> sheet_asked(const Document& document) {
    Findings findings;
    Reader root(document.root, Path{}, findings);
    SheetAsked asked{root.name_or("rates", ""), root.date("as_of")};
    if (!findings.none()) return std::nullopt;
    return asked;
}

Inquiry read_inquiry(const Document& document, const Desk& desk, Findings& findings) {
    Inquiry inquiry;
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return inquiry;
    if (!root.format_is("quoin/inquiry/1")) return inquiry;
    inquiry.price_book = root.text("price_book");
    read_dates(root, desk.book, inquiry);
    read_facts(root, inquiry);
    check_sources(root, desk, inquiry);
    read_home(root, desk, inquiry);
    read_scenarios(root, desk.lending, inquiry);
    root.finish();
    return inquiry;
}

} // namespace quoin
