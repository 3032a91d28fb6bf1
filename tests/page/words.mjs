// How much there is to read on arrival: the words in sight of every view, in both languages, at the
// sizes of a desk, a tablet and a phone.
import {check, open_page, settled, view_number} from './support.mjs';

const views = ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check'];
const sizes = [
    [1180, 820],
    [820, 1180],
    [390, 844],
];
/// The loans are held against each other: their names and terms stand side by side.
const most = (name) => (name === 'Loans' ? 180 : 120);
/// An upright tablet shows half as much again of a view. Two of them run on there: the lots under
/// their map, and the sheet, of whose first page most is in sight.
const upright = {Site: 1.15, Sheet: 1.5};
/// Spanish needs more words for the same: articles, and "de" where English puts two nouns together.
const longer = {'en-US': 1, 'es-US': 1.25};

/// The words in sight: in the view between header and bar, and on the whole screen; and how many
/// the view has above and below.
const words_in_sight = (page) =>
    page.evaluate(() => {
        const main = document.querySelector('main');
        const foot = document.querySelector('.bar').getBoundingClientRect().top;
        const texts = [];
        const gather = (root) => {
            const walker = document.createTreeWalker(root, NodeFilter.SHOW_ALL);
            for (let one = walker.nextNode(); one; one = walker.nextNode()) {
                if (one.nodeType === Node.TEXT_NODE) texts.push(one);
                if (one.shadowRoot) gather(one.shadowRoot);
            }
        };
        gather(document.body);
        const read = () => {
            const found = {sight: 0, screen: 0, all: 0};
            for (const text of texts) {
                const parent = text.parentElement;
                if (!parent.checkVisibility({visibilityProperty: true})) continue;
                if (parent.closest('.sr, .skip, script, style, title')) continue;
                // Of a list that is closed its choice alone is read.
                const option = parent.closest('option');
                if (option && !option.selected) continue;
                const shown = option?.closest('select');
                // The sheet is a document of its own; so is the map, whose names are a picture's.
                const host = text.getRootNode().host;
                if (host && parent.closest('svg')) continue;
                const within = main.contains(host ?? text);
                for (const word of text.data.matchAll(/\S*\p{L}\S*/gu)) {
                    const range = document.createRange();
                    range.setStart(text, word.index);
                    range.setEnd(text, word.index + word[0].length);
                    const box = (shown ?? range).getBoundingClientRect();
                    if (box.width === 0 || box.height === 0) continue;
                    const middle = (box.top + box.bottom) / 2;
                    const seen = middle >= 0 && middle < innerHeight;
                    if (within) found.all += 1;
                    if (seen && within && middle < foot) found.sight += 1;
                    if (seen && (!within || middle < foot)) found.screen += 1;
                }
            }
            return found;
        };
        return {...read(), high: document.documentElement.scrollHeight};
    });

export async function few_words_on_arrival({server, chrome}) {
    for (const locale of Object.keys(longer)) {
        for (const [width, height] of sizes) {
            const context = await chrome.newContext({viewport: {width, height}, locale});
            const page = await open_page(context, server.url);
            await settled(page);
            for (const [number, name] of views.entries()) {
                await view_number(page, number);
                const {sight, screen, all, high} = await words_in_sight(page);
                const where = `${name} in ${locale} at ${width}x${height}`;
                const more = height > width && width > 640 ? (upright[name] ?? 1) : 1;
                const limit = Math.round(most(name) * longer[locale] * more);
                console.log(
                    `  ${where}: ${sight} words of the view in sight, ${screen} on the screen, ` +
                        `${all} in all, ${high} px high`,
                );
                check(`${where}: at most ${limit} words in sight`, sight <= limit, `${sight}`);
            }
            await context.close();
        }
    }
}
