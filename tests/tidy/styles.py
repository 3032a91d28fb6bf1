"""House rules of the page's styles: what is drawn from tokens.css, and what lies beside its part."""

import re

PAGE = "src/page"
TOKENS = f"{PAGE}/tokens.css"
SHARED = {"tokens.css", "base.css", "large_text.css"}
MOST = {"space": 8, "type": 7}
ONE_OF_EACH = ("radius", "regular", "strong")

DECLARATION = re.compile(r"(?<=[{;])\s*([\w-]+)\s*:([^;{}]*)(?=[;}])")
COMMENT = re.compile(r"/\*.*?\*/", re.S)
VARIABLE = re.compile(r"var\(\s*--([\w-]+)\s*\)")
# A hairline, and shares of the screen, are no spaces of their own.
LENGTH = re.compile(r"(?<![\w.#])-?(?:\d*\.)?\d+(?:px|rem|em|pt|pc|mm|cm|in|ch|ex|q)\b", re.I)
HAIRLINE = re.compile(r"(?<![\w.])-?[12]px\b")
COLOR = re.compile(
    r"#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch)\(|(?<![\w-])(?:black|white|silver|"
    r"gr[ae]y|red|maroon|yellow|olive|lime|green|aqua|teal|blue|navy|fuchsia|purple|orange|brown|"
    r"pink|gold|tan|beige|ivory)(?![\w-])", re.I)


def is_space(name):
    return re.fullmatch(r"(padding|margin)(-[\w-]+)?|gap|row-gap|column-gap", name) is not None


def fault_of(name, value):
    """What a declaration names of its own, or nothing."""
    bare = VARIABLE.sub("", value)
    used = VARIABLE.findall(value)
    if COLOR.search(bare):
        return "a color; use one of"
    if is_space(name) and LENGTH.search(HAIRLINE.sub("", bare)):
        return "a space; use a --space- of"
    if name == "font" and bare.strip() != "inherit":
        return "a font; use `inherit`, or a --type- of"
    if name == "font-size" and (LENGTH.search(bare) or re.search(r"\d%", bare) or any(
            not each.startswith("type-") for each in used)):
        return "a size of letters; use a --type- of"
    if name.endswith("radius") and (LENGTH.search(bare) or any(each != "radius" for each in used)):
        return "a radius; use --radius of"
    if name == "font-weight" and (re.search(r"\d|bold|light", bare) or any(
            each not in ("regular", "strong") for each in used)):
        return "a weight; use --regular or --strong of"
    return None


def blank(match):
    return re.sub(r"[^\n]", " ", match.group())


def check_declarations(report, path, known):
    text = COMMENT.sub(blank, path.read_text(encoding="utf-8", errors="replace"))
    text = re.sub(r"@page\s*\{[^}]*\}", blank, text)  # the edge of a sheet of paper
    own = set(re.findall(r"(?<=[{;])\s*--([\w-]+)\s*:", text))
    for match in DECLARATION.finditer(text):
        name, value = match.group(1), match.group(2)
        line = text.count("\n", 0, match.start(1)) + 1
        fault = fault_of(name, value)
        if fault:
            report.error(path, line, f"`{name}` names {fault} tokens.css instead")
        for each in VARIABLE.findall(value):
            if is_space(name) and each not in known:
                report.error(path, line, f"--{each} is no space; use a --space- of tokens.css instead")
            elif each not in known and each not in own:
                report.error(path, line, f"--{each} is nowhere; use one of tokens.css instead")


def check_tokens(report, path):
    """The names that tokens.css gives; it has few of a kind."""
    text = COMMENT.sub(blank, path.read_text(encoding="utf-8", errors="replace"))
    known = set(re.findall(r"--([\w-]+)\s*:", text))
    for kind, most in MOST.items():
        count = sum(each.startswith(f"{kind}-") for each in known)
        if count > most:
            report.error(path, 1, f"{count} of --{kind}-; use at most {most} instead")
    for each in ONE_OF_EACH:
        others = [name for name in known if name.startswith(f"{each}-")]
        if others:
            report.error(path, 1, f"--{others[0]} beside --{each}; use the one instead")
    return known


def check_place(report, path, folder):
    """A style lies beside the part that it dresses, or several that say so; none lies unused."""
    if path.parent == folder and path.name in SHARED:
        return
    wanted = re.compile(r"^import '(?:\.{1,2}/)(?:[\w]+/)*" + re.escape(path.name) + "';", re.M)
    users = [each for each in sorted(folder.glob("*/**/*.tsx"))
             if wanted.search(each.read_text(encoding="utf-8", errors="replace"))]
    if path.parent == folder:
        report.error(path, 1, "a style of no part; use one beside the part instead")
    elif not users:
        report.error(path, 1, "no part has this style; use `import './"
                     f"{path.name}';` in the part beside it instead")


def check_styles(report, root):
    """Every style of the page; a tree without a page has none."""
    folder, tokens = root / PAGE, root / TOKENS
    styles = [each for each in sorted(folder.rglob("*.css"))
              if "node_modules" not in each.relative_to(folder).parts]
    if not styles:
        return
    if not tokens.exists():
        report.error(styles[0], 1, f"no {TOKENS}; use one for what styles share instead")
        return
    known = check_tokens(report, tokens)
    for path in styles:
        check_place(report, path, folder)
        if path != tokens:
            check_declarations(report, path, known)
