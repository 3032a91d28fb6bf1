// Holding an SVG picture (SVG 2, W3C) to a list of what only draws.
#include "harmless_svg.hpp"

#include <algorithm>
#include <map>
#include <vector>

#include <pugixml.hpp>

#include "text/utf8.hpp"

namespace quoin::apps {
namespace {

constexpr int deepest_svg = 64;
/// Elements that are drawn, each `use` with all that it repeats.
constexpr std::size_t most_drawn = 20'000;

constexpr std::string_view svg_namespace = "http://www.w3.org/2000/svg";
constexpr std::string_view link_namespace = "http://www.w3.org/1999/xlink";

// Names with a blank on each side.
constexpr std::string_view svg_elements =
    " svg g defs symbol use title desc path rect circle ellipse line polyline polygon text tspan "
    "linearGradient radialGradient stop clipPath ";
constexpr std::string_view svg_attributes =
    // of any element
    " id class style lang xml:lang xml:space role aria-label aria-hidden transform "
    "transform-origin "
    // where it is and how large
    "version viewBox preserveAspectRatio width height x y x1 y1 x2 y2 cx cy r rx ry fx fy fr dx dy "
    "d points pathLength rotate textLength lengthAdjust offset gradientUnits gradientTransform "
    "spreadMethod clipPathUnits "
    // how it is painted
    "fill fill-opacity fill-rule stroke stroke-width stroke-linecap stroke-linejoin "
    "stroke-miterlimit stroke-dasharray stroke-dashoffset stroke-opacity opacity color display "
    "visibility overflow stop-color stop-opacity paint-order vector-effect shape-rendering "
    "color-interpolation clip-path clip-rule "
    // how letters are set
    "font-family font-size font-style font-weight font-variant font-stretch letter-spacing "
    "word-spacing text-anchor text-decoration text-rendering dominant-baseline "
    "alignment-baseline baseline-shift direction writing-mode ";
/// What a value may call; of `url` only what points into the picture itself.
constexpr std::string_view svg_functions =
    " rgb rgba hsl hsla url matrix scale skewX skewY translate rotate ";

bool has_name(std::string_view list, std::string_view name) {
    return list.find(" " + std::string(name) + " ") != std::string_view::npos;
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

bool is_of_name(char c) {
    return is_letter(c) || (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
}

/// "#roof": an id of the picture itself.
bool is_local(std::string_view text) {
    return text.size() > 1 && text.front() == '#' &&
           std::all_of(text.begin() + 1, text.end(), is_of_name);
}

/// Whether all that a value calls may be called. A backslash could spell a name in another way; a
/// "<" ends a value for some parsers.
bool calls_are_harmless(std::string_view value) {
    if (value.find_first_of("\\<") != std::string_view::npos) return false;
    for (std::size_t open = value.find('('); open != std::string_view::npos;
         open = value.find('(', open + 1)) {
        std::size_t begin = open;
        while (begin > 0 && is_of_name(value[begin - 1])) --begin;
        const std::string_view name = value.substr(begin, open - begin);
        if (!has_name(svg_functions, name)) return false;
        if (name != "url") continue;
        const std::string_view rest = value.substr(open + 1);
        const std::size_t close = rest.find(')');
        if (close == std::string_view::npos || !is_local(rest.substr(0, close))) return false;
    }
    return true;
}

bool is_link(std::string_view name) { return name == "href" || name == "xlink:href"; }

bool is_harmless(std::string_view name, std::string_view value) {
    if (name == "xmlns") return value == svg_namespace;
    if (name == "xmlns:xlink") return value == link_namespace;
    if (is_link(name)) return is_local(value);
    return has_name(svg_attributes, name) && calls_are_harmless(value);
}

std::string markup_of(const pugi::xml_attribute& attribute) {
    return std::string(attribute.name()) + "=\"" + attribute.value() + "\"";
}

/// What cuts others is itself cut by nothing, nor repeats what may be: no cut grows by another.
bool is_in_clip(pugi::xml_node node) {
    for (; node; node = node.parent()) {
        if (std::string_view(node.name()) == "clipPath") return true;
    }
    return false;
}

/// Looks at each node in turn, without calling itself.
class SvgWalk : public pugi::xml_tree_walker {
  public:
    std::optional<SvgFault> fault;
    std::vector<pugi::xml_node> uses;
    std::map<std::string_view, pugi::xml_node> ids; ///< the first of each
    std::size_t drawn = 0;

    bool for_each(pugi::xml_node& node) override {
        look(node);
        return !fault;
    }

  private:
    void look(const pugi::xml_node& node) {
        switch (node.type()) {
        case pugi::node_element:
            return look_at_element(node);
        case pugi::node_pcdata:
        case pugi::node_cdata:
            return;
        case pugi::node_declaration: {
            const std::string_view encoding = node.attribute("encoding").value();
            if (encoding.empty() || encoding == "UTF-8" || encoding == "utf-8") return;
            return found(markup_of(node.attribute("encoding")));
        }
        case pugi::node_doctype:
            return found("<!DOCTYPE>");
        default:
            return found("<?" + std::string(node.name()) + "?>");
        }
    }

    void look_at_element(const pugi::xml_node& node) {
        const std::string name = node.name();
        if (!has_name(svg_elements, name)) return found("<" + name + ">");
        if (depth() > deepest_svg) return found("<" + name + "> × " + std::to_string(depth()));
        for (const pugi::xml_attribute& attribute : node.attributes()) {
            if (!is_harmless(attribute.name(), attribute.value()))
                return found(markup_of(attribute));
        }
        if (is_in_clip(node)) {
            if (name == "use") return found("<use>");
            if (const auto clip = node.attribute("clip-path")) return found(markup_of(clip));
        }
        ++drawn;
        if (name == "use") uses.push_back(node);
        if (const auto id = node.attribute("id")) ids.emplace(id.value(), node);
    }

    void found(std::string part) { fault = SvgFault{std::move(part)}; }
};

/// How many elements stand in one, itself counted; nothing where one of them repeats others, so
/// that no repetition grows by another.
class SizeOf : public pugi::xml_tree_walker {
  public:
    std::size_t elements = 1;
    bool repeats = false;

    bool for_each(pugi::xml_node& node) override {
        if (node.type() == pugi::node_element) ++elements;
        repeats = repeats || std::string_view(node.name()) == "use";
        return !repeats;
    }
};

std::string_view link_of(const pugi::xml_node& node) {
    const auto link = node.attribute("href");
    const std::string_view target = link ? link.value() : node.attribute("xlink:href").value();
    return target.empty() ? target : target.substr(1);
}

/// A short picture may repeat parts of itself without end, or so often that nobody can draw it.
std::optional<SvgFault> repetition_fault(const SvgWalk& walk) {
    std::map<std::string_view, std::size_t> sizes;
    std::size_t drawn = walk.drawn;
    for (const pugi::xml_node& use : walk.uses) {
        const std::string_view link = link_of(use);
        const auto target = walk.ids.find(link);
        if (target == walk.ids.end()) continue; // draws nothing
        auto [size, is_new] = sizes.try_emplace(link, 0);
        if (is_new) {
            SizeOf counted;
            pugi::xml_node node = target->second;
            node.traverse(counted);
            if (counted.repeats || std::string_view(node.name()) == "use") {
                return SvgFault{"<use href=\"#" + std::string(link) + "\">"};
            }
            size->second = counted.elements;
        }
        drawn += size->second;
    }
    if (drawn > most_drawn) return SvgFault{"<use> × " + std::to_string(walk.uses.size())};
    return {};
}

/// Characters that no XML text has; a parser may take the first for its end.
bool has_controls(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte < 0x20 && c != '\t' && c != '\n' && c != '\r';
    });
}

/// One root, `svg` of its namespace.
bool has_svg_root(const pugi::xml_document& document) {
    const auto children = document.children();
    const auto elements = std::count_if(children.begin(), children.end(), [](const auto& child) {
        return child.type() == pugi::node_element;
    });
    const pugi::xml_node root = document.document_element();
    return elements == 1 && std::string_view(root.name()) == "svg" &&
           std::string_view(root.attribute("xmlns").value()) == svg_namespace;
}

} // namespace

std::optional<SvgFault> svg_fault(std::string_view text) {
    constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    if (has_controls(text) || first_bad_byte(text) != text.size()) return SvgFault{};
    pugi::xml_document document;
    constexpr unsigned everything =
        pugi::parse_default | pugi::parse_pi | pugi::parse_doctype | pugi::parse_declaration;
    const auto read =
        document.load_buffer(text.data(), text.size(), everything, pugi::encoding_utf8);
    if (!read || !has_svg_root(document)) return SvgFault{};
    SvgWalk walk;
    document.traverse(walk);
    return walk.fault ? walk.fault : repetition_fault(walk);
}

} // namespace quoin::apps
