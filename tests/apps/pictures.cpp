// The pictures of a price book: which are shown, and what is said of the others.
#include <catch.hpp>

#include <filesystem>
#include <map>

#include "apps/harmless_svg.hpp"
#include "apps/loading.hpp"
#include "apps/pictures.hpp"
#include "support/findings.hpp"
#include "support/scratch.hpp"

using namespace quoin;
using namespace quoin::test;
using apps::PictureKind;
using namespace std::string_literals;

namespace {

namespace fs = std::filesystem;

std::string svg(const std::string& inside, const std::string& more = {}) {
    return R"x(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 160 120")x" + more + ">" +
           inside + "</svg>";
}

/// What a check says of it: "shown", "none" where it is no SVG, or the part that is refused.
std::string judged(const std::string& text) {
    const auto fault = apps::svg_fault(text);
    if (!fault) return "shown";
    return fault->part.empty() ? "none" : fault->part;
}

std::string big32(std::uint32_t number) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8) bytes += static_cast<char>(number >> shift & 0xFF);
    return bytes;
}

std::string png(std::uint32_t width, std::uint32_t height) {
    return "\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR"s + big32(width) + big32(height) +
           "\x08\x02\0\0\0crc."s;
}

std::string kind_and_size(const std::string& bytes) {
    const auto raster = apps::raster_of(bytes);
    if (!raster) return "none";
    const std::map<PictureKind, std::string> names = {
        {PictureKind::png, "png"}, {PictureKind::jpeg, "jpeg"}, {PictureKind::webp, "webp"}};
    return names.at(raster->kind) + " " + std::to_string(raster->width) + " x " +
           std::to_string(raster->height);
}

/// A folder with a book that names pictures.
class Folder {
  public:
    Folder() {
        fs::create_directories(scratch_.path("book/pictures"));
        scratch_.write("outside.svg", svg("<rect/>"));
    }
    void write(const std::string& name, const std::string& bytes) const {
        scratch_.write("book/pictures/" + name, bytes);
    }
    void link(const std::string& name, const std::string& to) const {
        fs::create_symlink(to, scratch_.path("book/pictures/" + name));
    }
    /// Of a book with one option whose levels have these pictures.
    std::vector<apps::Picture> read(const std::vector<std::string>& names, Findings& findings) {
        std::string levels;
        for (const std::string& name : names) {
            levels += (levels.empty() ? "" : ",") + R"x({"picture": "pictures/)x"s + name + "\"}";
        }
        scratch_.write("book/b.json", R"x({"options": [{"levels": [)x" + levels + "]}]}");
        document_ = apps::read_json(scratch_.path("book/b.json"), FileMeant::file, findings);
        return apps::read_pictures(document_, findings);
    }

  private:
    Scratch scratch_;
    Document document_;
};

} // namespace

TEST_CASE("A picture of points is known by its first bytes, and its size is read") {
    CHECK(kind_and_size(png(640, 480)) == "png 640 x 480");
    CHECK(kind_and_size(png(0, 480)) == "none");
    CHECK(kind_and_size(png(640, 480).substr(0, 20)) == "none");
    const std::string jpeg = "\xff\xd8\xff\xe0\0\x04JF\xff\xff\xc2\0\x0b\x08\x01\xe0\x02\x80\x01"s;
    CHECK(kind_and_size(jpeg) == "jpeg 640 x 480");
    CHECK(kind_and_size("\xff\xd8\xff\xe0\0\x01\xff\xc0\0\x0b\x08\x01\xe0\x02\x80\x01"s) == "none");
    CHECK(kind_and_size("\xff\xd8\xff\xda\0\x04JF\xff\xc0\0\x0b\x08\x01\xe0\x02\x80\x01"s) ==
          "none");
    const std::string riff = "RIFF\x40\0\0\0WEBP"s;
    CHECK(kind_and_size(riff + "VP8 \x20\0\0\0\0\0\0\x9d\x01\x2a\x80\x02\xe0\x01"s) ==
          "webp 640 x 480");
    CHECK(kind_and_size(riff + "VP8L\x20\0\0\0\x2f\x7f\xc2\x77\0\0\0\0\0\0"s) == "webp 640 x 480");
    CHECK(kind_and_size(riff + "VP8X\x0a\0\0\0\0\0\0\0\x7f\x02\0\xdf\x01\0"s) == "webp 640 x 480");
    CHECK(kind_and_size(riff + "VP8 "s) == "none");
    CHECK(kind_and_size("GIF89a\x80\x02\xe0\x01"s) == "none");
    CHECK(kind_and_size("") == "none");
}

TEST_CASE("An SVG picture of shapes, texts, colors and parts of its own is shown") {
    for (const std::string& inside : {
             ""s,
             R"x(<title>Deck &amp; stairs</title><!-- drawn by hand --><path d="M0 0h9v9z"/>)x"s,
             R"x(<defs><linearGradient id="a"><stop offset="0" stop-color="#fff"/>)x"
             R"x(</linearGradient></defs><rect fill="url(#a)" transform="rotate(9 1,2)"/>)x"s,
             R"x(<g id="w"><rect/></g><use href="#w" x="9"/><use href="#w" y="9"/>)x"s,
             R"x(<text font-family="serif" style="fill: rgb(1, 2, 3)">14 × 12 <tspan/></text>)x"s,
             R"x(<use href="#none"/>)x"s,
             R"x(<clipPath id="c"><circle r="3"/></clipPath><g clip-path="url(#c)"/>)x"s,
         }) {
        CHECK(judged(svg(inside)) == "shown");
    }
    CHECK(judged("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg("")) == "shown");
    CHECK(judged("\xef\xbb\xbf" + svg("")) == "shown");
    const std::string linked = R"x(<g id="w"/><use xlink:href="#w"/>)x";
    CHECK(judged(svg(linked, R"x( xmlns:xlink="http://www.w3.org/1999/xlink")x")) == "shown");
}

TEST_CASE("What an SVG picture could run, move or fetch is told by its name") {
    const std::vector<std::pair<std::string, std::string>> parts = {
        {"<script>1</script>", "<script>"},
        {"<g><g><script/></g></g>", "<script>"},
        {"<x:script/>", "<x:script>"},
        {"<style>@import 'a.css'</style>", "<style>"},
        {"<foreignObject/>", "<foreignObject>"},
        {R"x(<image href="#a"/>)x", "<image>"},
        {R"x(<a href="#a"/>)x", "<a>"},
        {"<animate/>", "<animate>"},
        {R"x(<clipPath clip-path="url(#a)"/>)x", R"x(clip-path="url(#a)")x"},
        {R"x(<clipPath><g><g clip-path="url(#a)"/></g></clipPath>)x", R"x(clip-path="url(#a)")x"},
        {R"x(<g id="a"/><clipPath><use href="#a"/></clipPath>)x", "<use>"},
        {R"x(<set attributeName="href"/>)x", "<set>"},
        {R"x(<rect onload="1"/>)x", R"x(onload="1")x"},
        {R"x(<rect ONLOAD="1"/>)x", R"x(ONLOAD="1")x"},
        {R"x(<use href="other.svg#a"/>)x", R"x(href="other.svg#a")x"},
        {R"x(<use href=" #a"/>)x", R"x(href=" #a")x"},
        {R"x(<use href="javascript:1"/>)x", R"x(href="javascript:1")x"},
        {R"x(<use xlink:href="//host/a.svg#a"/>)x", R"x(xlink:href="//host/a.svg#a")x"},
        {R"x(<use href="data:image/svg+xml,#a"/>)x", R"x(href="data:image/svg+xml,#a")x"},
        {R"x(<rect fill="url(http://host/a)"/>)x", R"x(fill="url(http://host/a)")x"},
        {R"x(<rect fill="&#117;rl(http://host/a)"/>)x", R"x(fill="url(http://host/a)")x"},
        {R"x(<rect fill="url(#a) url(b)"/>)x", R"x(fill="url(#a) url(b)")x"},
        {R"x(<rect fill="url(#a"/>)x", R"x(fill="url(#a")x"},
        {R"x(<rect fill="u\72l(a)"/>)x", R"x(fill="u\72l(a)")x"},
        {R"x(<rect fill="<script>"/>)x", R"x(fill="<script>")x"},
        {R"x(<rect fill="URL(a)"/>)x", R"x(fill="URL(a)")x"},
        {R"x(<rect style="background: image-set('a')"/>)x",
         R"x(style="background: image-set('a')")x"},
        {R"x(<rect filter="url(#a)"/>)x", R"x(filter="url(#a)")x"},
        {R"x(<g xmlns="http://www.w3.org/1999/xhtml"/>)x",
         R"x(xmlns="http://www.w3.org/1999/xhtml")x"},
        {R"x(<g xmlns:h="http://www.w3.org/1999/xhtml"/>)x",
         R"x(xmlns:h="http://www.w3.org/1999/xhtml")x"},
        {R"x(<?xml-stylesheet href="a.css"?>)x", "<?xml-stylesheet?>"},
    };
    for (const auto& [inside, part] : parts) CHECK(judged(svg(inside)) == part);
    CHECK(judged("<!DOCTYPE svg [<!ENTITY a \"b\">]>" + svg("")) == "<!DOCTYPE>");
    CHECK(judged(R"x(<?xml version="1.0" encoding="UTF-7"?>)x" + svg("")) ==
          R"x(encoding="UTF-7")x");
    CHECK(judged(R"x(<?xml-stylesheet href="a.css"?>)x" + svg("")) == "<?xml-stylesheet?>");
}

TEST_CASE("What is no SVG picture is told as none") {
    for (const std::string& text : {
             ""s,
             "no picture"s,
             "<html/>"s,
             "<svg/>"s,
             "<svg"s,
             svg("<g>"),
             svg("") + svg(""),
             svg("") + "\0<script/>"s,
             svg("\xff"),
             "\xff\xfe<\0s\0v\0g\0"s,
             R"x(<svg xmlns="http://www.w3.org/1999/xhtml"/>)x"s,
         }) {
        CHECK(judged(text) == "none");
    }
}

TEST_CASE("An SVG picture cannot repeat itself without end, nor nest or draw more than is shown") {
    CHECK(judged(svg(R"x(<g id="a"><use href="#a"/></g>)x")) == R"x(<use href="#a">)x");
    CHECK(judged(svg(R"x(<use id="a" href="#a"/>)x")) == R"x(<use href="#a">)x");
    CHECK(judged(svg(R"x(<g id="a"/><g id="b"><use href="#a"/></g><use href="#b"/>)x")) ==
          R"x(<use href="#b">)x");
    std::string many = R"x(<g id="a">)x";
    for (int i = 0; i < 200; ++i) many += "<rect/>";
    many += "</g>";
    const std::string once = many;
    for (int i = 0; i < 50; ++i) many += R"x(<use href="#a"/>)x";
    CHECK(judged(svg(many)) == "shown");
    for (int i = 0; i < 50; ++i) many += R"x(<use href="#a"/>)x";
    CHECK(judged(svg(many)) == "<use> × 100");
    std::string deep;
    for (int i = 0; i < 60; ++i) deep += "<g>";
    std::string end;
    for (int i = 0; i < 60; ++i) end += "</g>";
    CHECK(judged(svg(deep + end)) == "shown");
    CHECK(judged(svg(deep + deep + end + end)).starts_with("<g> × "));
}

TEST_CASE("Sound pictures are read once, each fault is told where the book names the file") {
    Folder folder;
    folder.write("a.svg", svg("<rect/>"));
    folder.write("b.png", png(4000, 4000));
    folder.write("wide.png", png(8001, 2000));
    folder.write("text.svg", "no picture");
    folder.write("moving.svg", svg("<animate/>"));
    folder.write("long.svg", svg("<title>" + std::string(61'000, 'x') + "</title>"));
    folder.write("heavy.png", png(10, 10) + std::string(401'000, 'x'));
    folder.link("out.svg", "../../outside.svg");
    folder.link("in.svg", "a.svg");
    Findings findings;
    const auto pictures =
        folder.read({"a.svg", "b.png", "a.svg", "wide.png", "text.svg", "moving.svg", "long.svg",
                     "heavy.png", "out.svg", "in.svg", "gone.svg", "text.svg"},
                    findings);
    INFO(listing(findings));
    std::vector<std::string> files;
    for (const apps::Picture& picture : pictures) files.push_back(picture.file);
    CHECK(files == std::vector<std::string>{"pictures/a.svg", "pictures/b.png", "pictures/in.svg"});
    CHECK(problem_ids(findings) == Ids{"picture-too-large", "not-a-picture", "picture-active",
                                       "picture-too-large", "picture-too-large", "file-elsewhere",
                                       "file-missing"});
    CHECK(findings.problems().front().path == "/options/0/levels/3/picture");
}

TEST_CASE("A book tells of no picture that is not there") {
    PriceBook book;
    book.options.resize(1);
    book.options[0].look = {"here.svg", "#112233"};
    book.options[0].levels.resize(1);
    book.options[0].levels[0].look = {"gone.svg", "#445566"};
    apps::keep_pictures(book, {{"here.svg", PictureKind::svg, nullptr}});
    CHECK(book.options[0].look.picture == "here.svg");
    CHECK(book.options[0].levels[0].look.picture.empty());
    CHECK(book.options[0].levels[0].look.color == "#445566");
}
