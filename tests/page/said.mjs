// Whatever the page says to people stands in its catalogue, src/page/words: no sentence stands
// anywhere else in its sources, nor is an entry read while a file is loaded, in whichever language
// was in hand by then.
import {readdirSync, readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {join} from 'node:path';

const folder = new URL('../../src/page/', import.meta.url).pathname;
const ts = createRequire(folder)('typescript');

/// Attributes that are for the machine: names of classes, what a drawing is made of.
const for_machines = new Set(['class', 'viewBox', 'd', 'points', 'preserveAspectRatio']);

/// Words of HTTP and of the browser, and classes, which look like words for people.
const names_of_others = new Set([
    'Content-Type',
    'Quoin-Code',
    'AbortError',
    'Enter',
    'Escape',
    'Tab',
    'looks pictures',
]);

const value = '\0'; // stands for what is put into a text

/// Two words with a blank between them, a word beside a value, or one that begins like a sentence.
function reads_as_words(text) {
    if (names_of_others.has(text.trim())) return false;
    return (
        /\p{L}{2,}[.,:;!?…]? +[\p{L}\0$]/u.test(text) ||
        /[\p{L}\0)%][.,:;!?…]? +\p{L}{2,}/u.test(text) ||
        /^\p{Lu}\p{Ll}+[.…]?$/u.test(text.trim())
    );
}

/// Tags of HTML are for the machine, too.
function text_of(node) {
    return written_in(node)?.replace(/<[^<>]*>/g, '') ?? null;
}

/// The text of a node that holds any, or null.
function written_in(node) {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
    if (ts.isTemplateExpression(node))
        return [node.head.text, ...node.templateSpans.map((one) => one.literal.text)].join(value);
    return null;
}

/// What is for the machine, with all that is in it.
function is_let_through(node) {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return true;
    if (ts.isTypeNode(node) || ts.isRegularExpressionLiteral(node)) return true;
    if (ts.isJsxAttribute(node)) return for_machines.has(node.name.getText());
    if (ts.isNewExpression(node)) return /Error$|^Gone$/.test(node.expression.getText());
    return ts.isCallExpression(node) && /querySelector$/.test(node.expression.getText());
}

/// Letters between tags are for people, one word as well as many.
function is_said(node) {
    if (ts.isJsxText(node)) return /\p{L}/u.test(node.text);
    const text = text_of(node);
    return text !== null && reads_as_words(text);
}

function is_read(node) {
    return (
        ts.isIdentifier(node) && node.text === 'say' && ts.isPropertyAccessExpression(node.parent)
    );
}

/// What is wrong in a source, each with its line.
export function said_in(name, text) {
    const source = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
    const wrong = [];
    const tell = (node, what) => {
        const {line} = source.getLineAndCharacterOfPosition(node.getStart());
        wrong.push(`${name}:${line + 1}: ${what}: ${node.getText().trim().replace(/\s+/g, ' ')}`);
    };
    const walk = (node, called) => {
        if (is_let_through(node)) return;
        if (is_said(node)) tell(node, 'words outside of src/page/words');
        if (is_read(node) && !called) tell(node.parent, 'read while the file is loaded');
        node.forEachChild((one) => walk(one, called || ts.isFunctionLike(node)));
    };
    walk(source, false);
    return wrong;
}

/// What the rule finds and what it lets through.
const tried = {
    'const a = <p>Closed</p>;': 1,
    'const a = <p title="Areas of the home" />;': 1,
    "const a = 'Nothing was changed';": 1,
    "const a = 'Close';": 1,
    'const a = `${count} months`;': 1,
    'const a = `Lot ${lot}`;': 1,
    'const a = `<p class="b c">Lot ${lot}</p>`;': 1,
    'const a = `<p class="b c">${lot}</p>`;': 0,
    'const a = say.tour.title;': 1,
    'const a = () => say.tour.title;': 0,
    'const a = <p class={`row overview-row ${on}`}>{a} ({b})</p>;': 0,
    'const a = `translate(${x} ${y})`;': 0,
    "const a: 'not at all' = kinds['walk_out'];": 0,
    "throw new Error('no answer at all');": 0,
};

const sources = readdirSync(folder, {recursive: true}).filter(
    (name) => /\.tsx?$/.test(name) && !/^(home\/)?words\/|^node_modules\/|^answer_types/.test(name),
);
const wrong = [
    ...Object.entries(tried)
        .filter(([text, count]) => said_in('tried.tsx', text).length !== count)
        .map(([text, count]) => `said.mjs: of what was tried, ${count} are not found: ${text}`),
    ...sources.flatMap((name) => said_in(name, readFileSync(join(folder, name), 'utf8'))),
];
for (const one of wrong) console.log(one);
process.exit(wrong.length === 0 ? 0 : 1);
