// For whoever sees less: forced colors, text of twice the size; and every view on paper.
import {execFileSync} from 'node:child_process';
import {join} from 'node:path';

import {browser, check, equal, open_page, open_some, shots, view} from './support.mjs';

const views = ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check'];

/// How a part is drawn where its own colors are not.
const drawn = (page, where) =>
    page.$$eval(where, (all) =>
        all.map((one) => {
            const style = getComputedStyle(one);
            return ['fontWeight', 'borderBottomWidth', 'borderLeftWidth', 'textDecorationLine']
                .map((name) => style[name])
                .join(' ');
        }),
    );

export async function forced_colors_keep_what_is_told_apart({server, chrome}) {
    for (const colorScheme of ['light', 'dark']) {
        const context = await chrome.newContext({
            viewport: {width: 1180, height: 820},
            colorScheme,
            forcedColors: 'active',
        });
        const page = await open_page(context, server.url);
        const apart = async (name, one, others) => {
            const [[mine], theirs] = [await drawn(page, one), await drawn(page, others)];
            check(
                `${name} is told apart, ${colorScheme}`,
                mine && theirs.length > 0 && !theirs.includes(mine),
                `${mine}; ${theirs[0]}`,
            );
        };
        await apart('the view in hand', '.view[aria-current]', '.view:not([aria-current])');
        await apart(
            'the area in hand',
            '.areas .area-link[aria-current]:not(.areas-top *)',
            '.areas .area-link:not([aria-current], .areas-top *)',
        );
        await apart(
            'what is chosen',
            ':is(.row, .group-head).on .row-title',
            ':is(.row, .group-head):not(.on) .row-title',
        );
        await apart(
            'the language in hand',
            '.language[aria-pressed="true"]',
            '.language[aria-pressed="false"]',
        );
        await view(page, 'Site');
        const states = await page.$$eval('.map .lot', (all) =>
            all.map((one) => one.textContent.trim()),
        );
        check(
            'a lot that cannot be taken says so in words',
            ['sold', 'reserved', 'your lot'].every((word) =>
                states.some((text) => text.includes(word)),
            ),
            states.join(),
        );
        for (const name of ['Loans', 'Schedule', 'Budget']) {
            await view(page, name);
            await page.screenshot({
                path: join(shots, `forced-${name.toLowerCase()}-${colorScheme}.png`),
            });
        }
        equal('nothing went wrong', page.wrong.join('; '), '');
        await context.close();
    }
}

/// What runs out of the page, is cut, or lies under the bar for good.
const crowded = (page) =>
    page.evaluate(() => {
        const hides = (style, way) => !['visible', 'auto', 'scroll'].includes(style[way]);
        const cut = [...document.querySelectorAll('.top *, .main *, .bar *')].filter((one) => {
            if (one.getClientRects().length === 0 || one.matches('.sr, .sr *, select, svg *'))
                return false;
            const style = getComputedStyle(one);
            return (
                one.textContent.trim() !== '' &&
                ((hides(style, 'overflowX') && one.scrollWidth > one.clientWidth + 2) ||
                    (hides(style, 'overflowY') && one.scrollHeight > one.clientHeight + 3))
            );
        });
        const bar = document.querySelector('.bar');
        return {
            letters: parseFloat(getComputedStyle(document.querySelector('.main')).fontSize),
            wide: document.documentElement.scrollWidth - innerWidth,
            cut: cut.map((one) => `${one.className}: ${one.textContent.slice(0, 30)}`),
            sticks: getComputedStyle(bar).position === 'fixed',
            takes: bar.offsetHeight / innerHeight,
        };
    });

/// The text size that a reader sets in the browser, not a magnified page.
export async function text_of_twice_the_size({server}) {
    const chrome = await browser(['--blink-settings=defaultFontSize=32']);
    try {
        for (const [width, height] of [
            [1180, 820],
            [390, 844],
        ]) {
            const context = await chrome.newContext({viewport: {width, height}});
            const page = await open_page(context, server.url);
            for (const name of views) {
                await view(page, name);
                await open_some(page);
                const seen = await crowded(page);
                const where = `${name} at ${width} x ${height}, text of twice the size`;
                check(`${where}: it is`, seen.letters >= 32, seen.letters);
                check(`${where}: nothing runs out of the page`, seen.wide <= 0, `${seen.wide} px`);
                check(
                    `${where}: nothing is cut`,
                    seen.cut.length === 0,
                    seen.cut.slice(0, 4).join('; '),
                );
                check(
                    `${where}: the bar leaves room`,
                    !seen.sticks || seen.takes < 0.2,
                    `${Math.round(seen.takes * 100)} %`,
                );
            }
            await context.close();
        }
    } finally {
        await chrome.close();
    }
}

const pdf = (tool, ...words) => execFileSync(tool, words, {encoding: 'utf8'});

export async function every_view_on_paper({server, context}) {
    const page = await open_page(context, server.url);
    for (const name of views) {
        await view(page, name);
        const where = name === 'Sheet' ? '.paper' : '.main h2';
        const [title] = (await page.locator(where).first().innerText()).split('\n');
        const path = join(shots, `paper-${name.toLowerCase()}.pdf`);
        await page.pdf({path, format: 'Letter'});
        const text = pdf('pdftotext', '-layout', path, '-').replace(/\s+/g, ' ');
        check(`${name} on paper has its title`, text.includes(title), title);
        check(`${name} on paper has no buttons`, !/\b(Undo|Redo)\b|This buyer…/.test(text));
        check(
            `${name} on paper is an estimate`,
            /not an? .{0,40}(approval|offer)/i.test(text),
            text.slice(0, 200),
        );
        const pages = Number(/Pages:\s+(\d+)/.exec(pdf('pdfinfo', path))[1]);
        check(`${name} on paper takes a few sheets`, pages <= 12, pages);
        console.log(`  ${name}: ${pages} sheets of paper`);
    }
}
