// Drawing the map of the lots.
#include "site_svg.hpp"

#include <algorithm>

#include "html.hpp"
#include "map_sheet.hpp"
#include "svg.hpp"
#include "words/parts.hpp"
#include "words/site.hpp"
#include <quoin/text/plain.hpp>

namespace quoin {
namespace {

// Heights of letters in hundredths of a foot on the ground.
constexpr std::int64_t number_size = 2000;
constexpr std::int64_t word_size = 1050;
constexpr std::int64_t name_size = 1250;
constexpr std::int64_t usual_depth = 4500; ///< of a house, where nothing tells it
constexpr std::int64_t scale_length = 5000;

/// As long as a name is at most when it is written.
std::int64_t length_of(std::string_view name) {
    return static_cast<std::int64_t>(letters_in(name)) * name_size * 6 / 10;
}

class Drawing {
  public:
    Drawing(const SiteAnswer& answer, const Catalogue& say)
        : answer_(answer), drawn_(*answer.map), sheet_(drawn_.map), say_(say) {}
    /// Of one lot, by its place on the map; of those beside it only their lines.
    Drawing(const SiteAnswer& answer, std::size_t only, const Catalogue& say)
        : answer_(answer), drawn_(*answer.map), sheet_(drawn_.map.lots.at(only)), say_(say),
          only_(only) {}

    [[nodiscard]] std::string svg() const {
        std::string inner;
        for (const Land& land : drawn_.map.land) {
            if (land.kind != LandKind::easement) inner += ground(land);
        }
        for (const Street& street : drawn_.map.streets) inner += road(street);
        for (std::size_t i = 0; i < drawn_.map.lots.size(); ++i) inner += lot(i);
        for (const Land& land : drawn_.map.land) {
            if (land.kind == LandKind::easement) inner += ground(land);
        }
        for (const Land& land : drawn_.map.land) {
            if (!only_) inner += name_of(land);
        }
        for (const Street& street : drawn_.map.streets) inner += name_of(street);
        const std::string named =
            only_ ? "lot-map\" role=\"img\" aria-label=\"" + escaped(said_of(*only_))
                  : "site-map\" role=\"group\" aria-label=\"" + escaped(say_.site.map());
        return "<svg" + std::string(only_ ? "" : " xmlns=\"http://www.w3.org/2000/svg\"") +
               " class=\"" + named + "\" viewBox=\"0 0 " + svg_feet(sheet_.width()) + " " +
               svg_feet(sheet_.height()) + "\" fill=\"none\" stroke=\"currentColor\">" + inner +
               scale() + north() + "</svg>";
    }

  private:
    [[nodiscard]] std::string ground(const Land& land) const {
        const std::string kind = "land " + std::string(code_of(land.kind));
        if (land.kind == LandKind::road) {
            return svg_path(kind, svg_line(sheet_.laid(land.outline), true),
                            "stroke=\"none\" fill=\"currentColor\" fill-opacity=\".12\"");
        }
        return svg_path(kind, svg_line(sheet_.laid(land.outline), true),
                        land.kind == LandKind::easement ? "stroke-dasharray=\"2 2\""
                                                        : "stroke=\"none\"");
    }

    [[nodiscard]] std::string road(const Street& street) const {
        return svg_path("street", svg_line(sheet_.laid(street.line), false),
                        "stroke-opacity=\".12\" stroke-linejoin=\"round\" stroke-width=\"" +
                            svg_feet(street.width) + "\"");
    }

    [[nodiscard]] std::string name_of(const Land& land) const {
        const auto place =
            sheet_.within(sheet_.laid(land.outline), length_of(land.name), name_size / 2);
        if (land.name.empty() || !place) return {};
        return svg_text("land-name", place->middle, name_size, land.name, place->along);
    }

    [[nodiscard]] std::string name_of(const Street& street) const {
        const auto place = sheet_.along(sheet_.laid(street.line), length_of(street.name));
        if (!place) return {};
        return svg_text("street-name", place->middle, name_size, street.name, place->along);
    }

    [[nodiscard]] std::string lot(std::size_t index) const {
        const LotOutline& drawn = drawn_.map.lots[index];
        const SiteLot& lot = answer_.lots[drawn.lot.position()];
        const LotView view(drawn);
        if (only_ && *only_ != index) {
            return svg_path("lot-line", svg_line(sheet_.laid(drawn.outline), true));
        }
        const bool open = lot.lot.status == LotStatus::free;
        std::string kind = "lot " + std::string(code_of(lot.lot.status));
        if (lot.chosen) kind += " chosen";
        if (open && !lot.fits) kind += " small";
        std::string inner = svg_path("lot-line", svg_line(sheet_.laid(drawn.outline), true),
                                     "fill=\"currentColor\" fill-opacity=\"0\"");
        inner += fall(lot.lot.grade, drawn, view);
        if (lot.chosen) inner += setback(drawn, view);
        if (open || lot.chosen) inner += house(lot, index);
        const Point middle = middle_of(drawn, view, index);
        inner += svg_text("lot-number", middle, number_size, lot.lot.id);
        if (only_) return svg_group(kind, inner);
        const std::string word = word_of(lot);
        if (!word.empty()) {
            inner +=
                svg_text("lot-word", {middle.x, middle.y + number_size * 9 / 10}, word_size, word);
        }
        return svg_group(kind, inner,
                         "data-lot=\"" + escaped(lot.lot.id) +
                             "\" role=\"button\" tabindex=\"0\" aria-label=\"" +
                             escaped(said_of(index)) + "\"");
    }

    [[nodiscard]] std::string said_of(std::size_t index) const {
        const SiteLot& lot = answer_.lots[drawn_.map.lots[index].lot.position()];
        const std::string word = word_of(lot);
        return say_.site.map_lot(lot.lot.id, word.empty() ? say_.parts.lot_status(lot.lot.status)
                                                          : std::string_view(word));
    }

    /// What has to be said of a lot besides its number.
    [[nodiscard]] std::string word_of(const SiteLot& lot) const {
        if (lot.chosen) return std::string(say_.site.your_lot());
        if (lot.lot.status != LotStatus::free) {
            return std::string(say_.parts.lot_status(lot.lot.status));
        }
        return lot.fits ? std::string() : std::string(say_.site.too_small());
    }

    [[nodiscard]] const Outline& house_on(std::size_t index) const {
        return drawn_.houses.at(index);
    }

    [[nodiscard]] std::string house(const SiteLot& lot, std::size_t index) const {
        const Outline& house = house_on(index);
        if (house.empty()) return {};
        return svg_path("house", svg_line(sheet_.laid(house), true),
                        lot.fits ? "fill=\"currentColor\" fill-opacity=\".08\""
                                 : "stroke-dasharray=\"4 3\"");
    }

    /// The middle of the house; without one, a little behind the setback line.
    [[nodiscard]] Point middle_of(const LotOutline& lot, const LotView& view,
                                  std::size_t index) const {
        const std::int64_t across = view.across(lot.front_setback).value_or(Interval{}).middle();
        const Outline& house = house_on(index);
        if (house.empty() || house[1] == house[2]) {
            return sheet_.laid(view.on_sheet(Point{across, lot.front_setback + number_size}));
        }
        return sheet_.laid(Point{(house[0].x + house[2].x) / 2, (house[0].y + house[2].y) / 2});
    }

    [[nodiscard]] std::string setback(const LotOutline& lot, const LotView& view) const {
        const auto line = view.across(lot.front_setback);
        if (!line) return {};
        const Outline ends{{line->from, lot.front_setback}, {line->to, lot.front_setback}};
        return svg_path("setback", svg_line(sheet_.laid(view.on_sheet(ends)), false),
                        "stroke-dasharray=\"5 3\"");
    }

    /// Contour lines across the yard behind the home, more where it falls more, and the way down.
    [[nodiscard]] std::string fall(Grade grade, const LotOutline& lot, const LotView& view) const {
        const int lines = grade == Grade::level ? 0 : grade == Grade::garden ? 2 : 4;
        const auto across = view.across(lot.front_setback);
        if (lines == 0 || !across) return {};
        const std::int64_t x = across->middle();
        const std::int64_t front = lot.front_setback;
        const Outline spot{{x, front}, {x, front}, {x, front}, {x, front}};
        const std::int64_t end = front + view.behind(spot);
        const std::int64_t begin =
            std::min(front + (drawn_.house.depth > 0 ? drawn_.house.depth : usual_depth), end);
        std::string data;
        for (int i = 1; i <= lines; ++i) {
            data += contour(view, begin + (end - begin) * i / (lines + 1), (end - begin) / 8);
        }
        const std::int64_t tip = end - (end - begin) / 10;
        const std::int64_t wing = 350;
        data +=
            svg_line(sheet_.laid(view.on_sheet(Outline{{x, begin + (end - begin) / 8}, {x, tip}})),
                     false) +
            svg_line(sheet_.laid(view.on_sheet(
                         Outline{{x - wing, tip - wing}, {x, tip}, {x + wing, tip - wing}})),
                     false);
        return svg_path("fall", data, "stroke-opacity=\".45\"");
    }

    /// A line across the lot at a depth, bent downhill in its middle.
    [[nodiscard]] std::string contour(const LotView& view, std::int64_t depth,
                                      std::int64_t bend) const {
        const auto across = view.across(depth);
        if (!across) return {};
        const std::int64_t inset = across->length() / 8;
        const Outline ends =
            sheet_.laid(view.on_sheet(Outline{{across->from + inset, depth - bend / 2},
                                              {across->middle(), depth + bend},
                                              {across->to - inset, depth - bend / 2}}));
        return "M" + svg_place(ends[0]) + "Q" + svg_place(ends[1]) + " " + svg_place(ends[2]);
    }

    [[nodiscard]] std::string scale() const {
        const std::int64_t y = sheet_.height() - 1400;
        const std::int64_t x = 1500;
        const std::int64_t tick = 300;
        const Outline bar{
            {x, y - tick}, {x, y}, {x + scale_length, y}, {x + scale_length, y - tick}};
        return svg_group("scale",
                         svg_path("scale-bar", svg_line(bar, false)) +
                             svg_text("scale-words", {x + scale_length / 2, y - 900}, word_size,
                                      say_.site.scale(static_cast<int>(scale_length / 100))));
    }

    [[nodiscard]] std::string north() const {
        const Point at{sheet_.width() - 2600, sheet_.height() - 2100};
        const Outline arrow{{0, -900}, {450, 600}, {0, 300}, {-450, 600}};
        const std::string needle =
            svg_path("needle", svg_line(arrow, true), "fill=\"currentColor\"");
        return svg_group(
            "north", svg_group("turned", needle,
                               "transform=\"translate(" + svg_place(at) + ") rotate(" +
                                   std::to_string(drawn_.map.north) + ")\"") +
                         svg_text("north-word", {at.x + 1300, at.y}, word_size, say_.site.north()));
    }

    const SiteAnswer& answer_;
    const SiteDrawn& drawn_;
    MapSheet sheet_;
    const Catalogue& say_;
    std::optional<std::size_t> only_;
};

} // namespace

std::string site_svg(const SiteAnswer& answer, const Catalogue& say) {
    return Drawing(answer, say).svg();
}

std::string lot_svg(const SiteAnswer& answer, const Catalogue& say) {
    if (!answer.map) return {};
    const auto& lots = answer.map->map.lots;
    const auto drawn = std::find_if(lots.begin(), lots.end(), [&](const LotOutline& lot) {
        return answer.lots[lot.lot.position()].chosen;
    });
    if (drawn == lots.end()) return {};
    return Drawing(answer, static_cast<std::size_t>(drawn - lots.begin()), say).svg();
}

} // namespace quoin
