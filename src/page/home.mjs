// Bundles what a file that is taken home is made of, beside the page of the desk:
//
//   home.js, home.css     the page in it, without fonts
//   worker.js             what has the engine
//   home_documents.json   the text around them, by language: pack.mjs and the program fill it in
import {build} from 'esbuild';
import {createHash} from 'node:crypto';
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';

/// The fonts stand in the document's first style, so that no letter moves once the page is there.
const with_fonts = (style, out) =>
    style.replace(/url\(["']?\/assets\/(\w+\.woff2)["']?\)/g, (_, name) => {
        const bytes = readFileSync(join(out, name));
        return `url(data:font/woff2;base64,${bytes.toString('base64')})`;
    });

const without_fonts = (style) => style.replace(/@font-face\s*\{[^}]*\}/g, '');

/// What a source exports, as it is bundled.
async function exported(settings, source) {
    const {outputFiles} = await build({
        ...settings,
        entryPoints: [source],
        format: 'esm',
        platform: 'node',
        write: false,
    });
    return import(
        `data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`
    );
}

const values = ['title', 'community', 'sheet_style', 'sheet_class', 'sheet', 'price', 'month', 'cash', 'closing', 'terms', 'home', 'state', 'parts']; // prettier-ignore
const place_of = (name) => `{{${name}}}`;
const places = (names) => Object.fromEntries(names.map((name) => [name, place_of(name)]));

/// The document of a language, and the sentences of its bar, with {{names}} where values belong.
function document_in(language, {document_of, closing_html, terms_html, catalogues}, parts) {
    const {common, figures} = catalogues[language];
    const loan = places(['loan', 'rate', 'apr', 'term', 'down', 'down_percent', 'as_of']);
    return {
        document: document_of({language, ...parts, ...places(values)}),
        closing: closing_html(language, '{{closing_name}}', '{{cash_to_close}}'),
        terms: terms_html(language, {...loan, highest: null}),
        terms_adjustable: terms_html(language, {...loan, highest: '{{highest}}'}),
        cash_to_close: common.cash_to_close,
        back_at_closing: common.back_at_closing,
        apr_not_found: common.apr_not_found,
        not_to_be_had: common.not_to_be_had,
        // A day in few letters, by its month.
        days: Array.from({length: 12}, (_, i) =>
            figures.short_date({day: '{{day}}', month: i + 1, year: '{{year}}'}),
        ),
    };
}

/// Nothing is fetched, ever; what runs is the opener, and what it makes.
const policy_of = (opener) =>
    [
        "default-src 'none'",
        `script-src 'sha256-${createHash('sha256').update(opener).digest('base64')}' 'strict-dynamic' blob: 'wasm-unsafe-eval'`,
        'worker-src blob:',
        "style-src 'unsafe-inline'",
        'img-src data: blob:',
        'font-src data:',
        "base-uri 'none'",
        "form-action 'none'",
    ].join('; ');

export async function build_home(settings, out) {
    const home = {...settings, tsconfig: join(settings.absWorkingDir, 'tsconfig.home.json')};
    const scripts = {home: 'home/main.tsx', worker: 'home/worker.ts'};
    const {outputFiles} = await build({
        ...home,
        entryPoints: {...scripts, opener: 'home/opener.ts', first: 'home/first.ts'},
        format: 'iife',
        write: false,
    });
    const made = (name) => outputFiles.find(({path}) => path.endsWith(`/${name}`)).text.trim();
    const opener = made('opener.js').replace(/<\/script/gi, '<\\/script');
    writeFileSync(join(out, 'home.js'), made('home.js'));
    writeFileSync(join(out, 'worker.js'), made('worker.js'));
    writeFileSync(join(out, 'home.css'), without_fonts(made('home.css')));

    const tools = await exported(home, 'home/document.ts');
    const parts = {opener, policy: policy_of(opener), style: with_fonts(made('first.css'), out)};
    const documents = Object.keys(tools.catalogues).map((language) => [
        language,
        document_in(language, tools, parts),
    ]);
    writeFileSync(join(out, 'home_documents.json'), JSON.stringify(Object.fromEntries(documents)));
}
