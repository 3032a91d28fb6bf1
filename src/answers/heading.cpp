// Gathering the heading of an answer.
#include <quoin/answers/heading.hpp>

namespace quoin {

Heading heading_of(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    const Inquiry& inquiry = sitting.inquiry();
    const Plan& plan = at(book.plans, inquiry.selection.plan);
    const RateSheet& sheet = sitting.sheet();
    Heading h;
    h.community = book.community.name;
    h.builder = book.community.builder;
    h.buyer = inquiry.buyer;
    h.prepared_by = inquiry.prepared_by;
    h.originator = inquiry.originator;
    h.plan = plan.name;
    h.style = plan.style;
    h.square_feet = plan.square_feet;
    h.elevation = at(plan.elevations, inquiry.selection.elevation).name;
    h.lot = at(book.lots, inquiry.selection.lot).id;
    h.price_book_version = book.version;
    h.price_book_expires = book.expires;
    h.as_of = inquiry.as_of;
    h.contract = inquiry.contract;
    h.closing = inquiry.closing;
    h.place = sitting.place().name;
    h.sample_place = sitting.place().status == Status::sample;
    h.rate_sheet = sheet.id;
    h.rates_date = sheet.date;
    h.rates_good_through = sheet.good_through;
    h.lender = sheet.lender;
    h.license = sheet.license;
    h.sample_rates = sheet.sample;
    return h;
}

} // namespace quoin
