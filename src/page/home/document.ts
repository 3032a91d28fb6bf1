// The text of a file that is taken home: the sheet, with the frame of the page around it in the very
// places where the page will have it, and what the page is unpacked from. Three have a use for it:
// build.mjs, which leaves places for values; a copy of the file; and the tests.
import {catalogues} from '../words/catalogue';
import type {Language} from '../words/catalogue';
import type {Part} from '../words/phrase';
import {views} from './views';
import {home_words} from './words/catalogue';

export {catalogues};

/// Text of HTML unless it says otherwise.
export interface Written {
    language: Language;
    policy: string;
    style: string; ///< CSS
    opener: string; ///< JavaScript
    title: string;
    community: string;
    sheet_style: string; ///< CSS of the sheet
    sheet_class: string;
    sheet: string; ///< what stands in its <main>
    price: string;
    month: string;
    cash: string;
    closing: string; ///< closing_html, or nothing
    terms: string;
    home: string; ///< packed by xz, in letters
    state: string; ///< base64 of gzip, or nothing
    parts: string; ///< as home
}

export const escaped = (text: string): string =>
    text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

/// A sentence in which pieces of HTML stand for what is marked.
const html_of = (pieces: Part[]): string =>
    pieces
        .flat(9)
        .filter((piece) => piece !== false && piece !== null && piece !== undefined)
        .join('');

/// The loan's terms, of values that are HTML. `highest`: of a rate that changes.
export function terms_html(
    language: Language,
    values: Record<'loan' | 'rate' | 'apr' | 'term' | 'down' | 'down_percent' | 'as_of', string> & {
        highest: string | null;
    },
): string {
    const {common, terms} = catalogues[language];
    return html_of(
        terms.in_short({
            ...values,
            apr: `${common.apr} ${values.apr}`,
            roomy: (words: Part) => `<span class="terms-roomy">${html_of([words])}</span>`,
        }),
    );
}

/// The cash to close beneath the cash, of values that are HTML.
export function closing_html(language: Language, name: string, amount: string): string {
    const of_it = catalogues[language].common.of_it({
        name,
        amount: `<span class="amount">${amount}</span>`,
    });
    return `<dd class="closing">${html_of(of_it)}</dd>`;
}

const figure = (kind: string, name: string, amount: string, more = '') =>
    `<div class="figure ${kind}"><dt>${escaped(name)}</dt>` +
    `<dd><span class="amount">${amount}</span></dd>${more}</div>`;

function head({language, community}: Written): string {
    const {frame} = catalogues[language];
    const languages = Object.entries(catalogues).map(
        ([code, {frame: own}]) =>
            `<button class="language" lang="${code}" aria-pressed="${code === language}">` +
            `${escaped(own.own_name)}</button>`,
    );
    const names = views.map(
        (one) =>
            `<button class="view"${one === 'sheet' ? ' aria-current="page"' : ''}>` +
            `<span class="view-name">${escaped(frame.views[one].name)}</span></button>`,
    );
    return (
        `<header class="top"><div class="whose"><p class="community">${community}</p></div>` +
        `<div class="buyers"><button class="step">${escaped(home_words[language].menu)}</button></div>` +
        `<div class="languages">${languages.join('')}</div>` +
        `<nav class="views">${names.join('')}</nav></header>`
    );
}

function bar({language, price, month, cash, closing, terms}: Written): string {
    const {common, frame} = catalogues[language];
    return (
        `<footer class="bar"><dl class="figures">` +
        figure('price', common.contract_price, price) +
        figure('month', common.a_month, month) +
        figure('cash', common.all_cash_needed, cash, closing) +
        `</dl><div class="last"></div><div class="steps">` +
        `<button class="step choose-loan">${escaped(frame.loan)}</button>` +
        `<button class="step back" disabled><svg class="icon" width="22" height="22"></svg>` +
        `<span class="step-word">${escaped(common.undo)}</span></button><button class="step again" disabled>${escaped(common.redo)}</button></div>` +
        `<p class="terms">${terms}</p></footer>`
    );
}

function sheet({language, sheet_style, sheet_class, sheet: inside}: Written): string {
    const say = catalogues[language].sheet;
    return (
        `<main id="main" class="main in-sheet"><div class="sheet-page"><div class="sheet-tools">` +
        `<h2>${escaped(home_words[language].sheet)}</h2>` +
        `<button class="main-button">${escaped(say.print)}</button></div>` +
        `<div class="paper"><template shadowrootmode="open"><style>${sheet_style}</style>` +
        `<article class="${sheet_class}">${inside}</article></template></div></div></main>`
    );
}

export function document_of(written: Written): string {
    const {language, policy, style, opener, title, home, state, parts} = written;
    const packed = (id: string, text: string) =>
        `<script type="text/plain" id="quoin-${id}">${text}</script>\n`;
    return (
        `<!doctype html>\n<html lang="${language}">\n<head>\n<meta charset="utf-8">\n` +
        `<meta name="viewport" content="width=device-width, initial-scale=1">\n` +
        `<meta name="color-scheme" content="light dark">\n` +
        `<meta http-equiv="Content-Security-Policy" content="${policy}">\n` +
        `<meta name="referrer" content="no-referrer">\n<meta name="generator" content="quoin">\n` +
        `<title>${title}</title>\n<style id="quoin-style">${style}</style>\n` +
        `<script id="quoin-opener">${opener}</script>\n</head>\n<body>\n` +
        `<div id="page">${head(written)}<div class="messages"></div>${sheet(written)}` +
        `${bar(written)}</div>\n` +
        packed('home', home) +
        packed('state', state) +
        packed('parts', parts) +
        '</body>\n</html>\n'
    );
}
