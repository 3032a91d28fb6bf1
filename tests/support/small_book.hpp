// A price book with one option of each kind, and changes to it by JSON Patch (RFC 6902).
#pragma once

#include <memory>
#include <string>

#include <quoin/pricebook/price_book.hpp>

#include "findings.hpp"
#include "patched.hpp"

namespace quoin::test {

inline const char* const small_book_text = R"({
  "format": "quoin/pricebook/1",
  "community": {"name": "Three Lots", "builder": "Nobody", "place": "here", "note": "a note"},
  "version": "7", "effective": "2026-01-01", "expires": "2026-12-31",
  "areas": [{"id": "outside", "name": "Outside"}, {"id": "inside", "name": "Inside"}],
  "stages": [{"id": "permit", "name": "Permit"}, {"id": "frame", "name": "Framing"},
             {"id": "paint", "name": "Painting"}],
  "plans": [
    {"id": "small", "name": "Small", "style": "ranch", "base_price": "200000", "bedrooms": "2",
     "bathrooms": "1.5", "square_feet": "1000", "measures": {"floor": "317.5", "rail": "12"},
     "elevations": [{"id": "plain", "name": "Plain", "price": "0"}]},
    {"id": "large", "name": "Large", "base_price": "300000", "bedrooms": "4", "bathrooms": "2",
     "square_feet": "2000", "measures": {"floor": "500"},
     "elevations": [{"id": "plain", "name": "Plain", "price": "0"},
                    {"id": "stone", "name": "Stone", "price": "4500", "note": "a note"}]}],
  "lots": [
    {"id": "1", "premium": "0", "status": "free", "grade": "level", "measures": {"rear_ft": "20"}},
    {"id": "2", "premium": "8000", "status": "held", "grade": "walk-out", "plans": ["large"],
     "flood_zone": true, "measures": {"rear_ft": "40", "width_ft": "70.5"}, "note": "a note"},
    {"id": "3", "premium": "-500", "status": "sold", "grade": "garden"}],
  "included": [
    {"area": "inside", "text": "Plain top", "option": "top", "plans": ["small"]},
    {"area": "outside", "text": "Grass"}],
  "options": [
    {"id": "wood", "name": "Wood floor", "area": "inside", "text": "a text", "note": "a note",
     "unit": "sq ft", "price": "3.33", "quantity": {"from_plan": "floor"}, "cutoff": "paint"},
    {"id": "rail", "name": "Rail", "area": "inside", "unit": "linear ft", "price": "40",
     "quantity": {"from_plan": "rail"}},
    {"id": "top", "name": "Top", "area": "inside",
     "levels": [{"id": "plain", "name": "Plain", "price": "0"},
                {"id": "stone", "name": "Stone", "price": {"small": "2000", "large": "2600"}},
                {"id": "rare", "name": "Rare", "price": {"large": "6100"}, "note": "a note"}],
     "included_level": {"large": "stone", "*": "plain"}},
    {"id": "deck", "name": "Deck", "area": "outside", "one_of": "rear",
     "levels": [{"id": "pine", "name": "Pine", "price": "9000"},
                {"id": "cedar", "name": "Cedar", "price": "12000"}],
     "structural": true, "work": ["structure"], "cutoff": "permit",
     "later": {"estimate": "11000", "note": "a note"}},
    {"id": "porch", "name": "Porch", "area": "outside", "one_of": "rear", "price": "15000",
     "structural": true, "only": {"lot_at_least": {"rear_ft": "30", "width_ft": "70"}}},
    {"id": "lights", "name": "Lights", "area": "inside", "price": "110",
     "quantity": {"min": "2", "max": "10", "step": "2", "usual": "4"}, "work": ["wiring"]},
    {"id": "color", "name": "Color", "area": "inside",
     "choices": [{"id": "white", "name": "White"}, {"id": "gray", "name": "Gray",
                  "note": "a note"}]},
    {"id": "lamps", "name": "Lamps", "area": "inside", "allowance": {"small": "900", "*": "1200"}},
    {"id": "no-lawn", "name": "No lawn", "area": "outside", "price": "-1500"},
    {"id": "door", "name": "Door", "area": "outside", "price": "7000",
     "only": {"grades": ["walk-out", "garden"]}},
    {"id": "steps", "name": "Steps", "area": "outside", "price": "2500",
     "requires": [["deck:cedar", "porch"]], "only": {"lots": ["1", "2"]}},
    {"id": "arch", "name": "Arch", "area": "outside", "price": "3000",
     "only": {"plans": ["large"], "elevations": ["stone"]}},
    {"id": "gas", "name": "Gas", "area": "inside", "price": {"small": "4000"},
     "excludes": ["stove"], "work": ["gas", "plumbing"]},
    {"id": "stove", "name": "Stove", "area": "inside", "price": "2500", "requires": ["flue"]},
    {"id": "flue", "name": "Flue", "area": "inside", "price": "800", "cutoff": "frame"},
    {"id": "warm", "name": "Warm package", "area": "inside", "price": {"small": "4000",
      "*": "3000"},
     "parts": ["stove", "flue", "top:stone"]}
  ],
  "incentives": [
    {"id": "opening", "name": "Opening", "amount": "3000",
     "uses": ["price", "options", "closing costs", "points", "temporary buydown"]},
    {"id": "share", "name": "Share", "percent": "1.5", "of": "options", "uses": ["options"],
     "plans": ["large"], "lots": ["2"], "lender": "Some lender", "expires": "2026-06-30",
     "close_by": "2026-11-30", "conditions": "a text"}],
  "deposits": {"earnest": {"percent": "1"},
               "options": {"structural_percent": "50", "finish_percent": "20"}, "note": "a note"},
  "model": {"plan": "large", "elevation": "stone", "lot": "2", "note": "a note",
            "shows": [{"option": "top", "level": "rare"}, {"option": "lights", "quantity": "6"},
                      {"option": "color", "choice": "gray"}, {"option": "lamps", "spend": "2500"},
                      {"area": "inside", "text": "A sofa"}]}
})";

/// A price book that was read, and everything that was found in it.
struct ReadBook {
    Document document;
    Findings findings;
    PriceBook book;
};

inline ReadBook read_book(const std::string& text, const Document* lots = nullptr) {
    ReadBook read;
    read.document = parse_json(std::make_shared<Source>("book.json", text), read.findings);
    read.book = read_price_book(read.document, lots, read.findings);
    return read;
}

/// The small book with a JSON Patch applied to it.
inline ReadBook patched_book(const std::string& patch, const Document* lots = nullptr) {
    return read_book(patched(small_book_text, patch), lots);
}

/// The small book as it is, to refer to.
inline const PriceBook& small_book() {
    static const PriceBook book = [] {
        ReadBook read = read_book(small_book_text);
        if (!read.findings.none()) throw Refused(std::move(read.findings));
        return std::move(read.book);
    }();
    return book;
}

} // namespace quoin::test
