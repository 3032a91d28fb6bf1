// Five things that people come for, acted on a tablet: touches, scrolls, words in sight until each is
// done. Seconds by a fixed model, to compare one page with another: no clock.
import {readFileSync} from 'node:fs';

import {check, kept, open_file, open_page, settled} from './support.mjs';

const seconds = {touch: 1, scroll: 1, key: 0.3, word: 0.05};

/// One way through the page, counted as it is gone.
class Visit {
    constructor(page) {
        this.page = page;
        Object.assign(this, {touches: 0, scrolls: 0, keys: 0, words: 0});
    }

    /// What can be read without scrolling, above the bar.
    async look() {
        this.words += await this.page.evaluate(() => {
            const low = document.querySelector('.bar').getBoundingClientRect().top;
            const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            let words = 0;
            while (walker.nextNode()) {
                const {data, parentElement: by} = walker.currentNode;
                if (!data.trim() || by.closest('.bar, .sr') || !by.checkVisibility()) continue;
                const range = document.createRange();
                range.selectNodeContents(walker.currentNode);
                const {top, bottom, width} = range.getBoundingClientRect();
                if (width === 0 || bottom <= 0 || top >= low) continue;
                words += data.trim().split(/\s+/).length;
            }
            return words;
        });
    }

    /// Scrolls by four fifths of what is in sight until it is there.
    async seek(target) {
        const one = target.filter({visible: true}).first();
        for (let tries = 0; tries < 30; tries += 1) {
            await this.look();
            const box = await one.boundingBox();
            const [low, high] = await this.page.evaluate(() => [
                document.querySelector('.bar').getBoundingClientRect().top,
                innerHeight * 0.8,
            ]);
            if (box && box.y >= 0 && box.y + Math.min(box.height, 40) <= low) return one;
            await this.page.mouse.wheel(0, box && box.y < 0 ? -high : high);
            this.scrolls += 1;
            await this.page.waitForTimeout(100);
        }
        throw new Error('not to be found by scrolling');
    }

    async touch(target) {
        const one = await this.seek(target);
        const box = await one.boundingBox();
        await this.page.mouse.click(
            box.x + Math.min(box.width / 2, 60),
            box.y + Math.min(box.height / 2, 20),
        );
        this.touches += 1;
        await settled(this.page);
    }

    async type(target, text) {
        await this.touch(target);
        await this.page.keyboard.press('Control+a');
        await this.page.keyboard.type(text);
        await this.page.keyboard.press('Enter');
        this.keys += text.length + 1;
        await settled(this.page);
    }

    took() {
        const {touches, scrolls, keys, words} = this;
        return (
            touches * seconds.touch +
            scrolls * seconds.scroll +
            keys * seconds.key +
            words * seconds.word
        );
    }
}

const button = (page, name) => page.locator('button').filter({hasText: name});
const row = (page, name) =>
    page.locator('.row-label').filter({has: page.locator(`.row-title:text-is("${name}")`)});

/// Each with what has to be so afterwards, and the touches that it may take.
const visits = {
    'a fireplace added': {
        most: 2,
        go: async (visit, page) => {
            await visit.touch(button(page, 'Great room and dining'));
            await visit.touch(row(page, 'Gas fireplace'));
        },
        done: ({selections}) => JSON.stringify(selections).includes('fireplace'),
    },
    'a better counter': {
        most: 3,
        go: async (visit, page) => {
            await visit.touch(button(page, /^Kitchen/));
            const head = page.locator('.group-head').filter({hasText: 'ounter'});
            if (await head.count()) await visit.touch(head);
            await visit.touch(row(page, 'Granite'));
        },
        done: ({selections}) => JSON.stringify(selections).includes('granite'),
    },
    'a walk-out lot taken': {
        most: 3,
        go: async (visit, page) => {
            await visit.touch(button(page, 'Site'));
            const drawn = page.locator('.map .lot[data-lot="9"]');
            if (await drawn.count()) {
                await visit.touch(drawn);
                await visit.touch(page.locator('.lot-card .main-button'));
            } else {
                await visit.touch(row(page, 'Lot 9'));
            }
        },
        done: ({lot}) => lot === '9',
    },
    'ten percent down': {
        most: 3,
        go: async (visit, page) => {
            await visit.touch(button(page, 'Loans'));
            await visit.touch(page.locator('.loan-row .fold-opener'));
            await visit.type(page.getByLabel('Down payment', {exact: true}), '10');
        },
        done: ({scenarios}) => scenarios[0].down.percent === '10',
    },
    'what fits at $150 more a month': {
        most: 3,
        go: async (visit, page) => {
            await visit.touch(button(page, 'Budget'));
            const part = page.locator('.fold-opener').filter({hasText: 'Wishes'});
            if (await part.count()) await visit.touch(part);
            await visit.type(page.getByLabel('Monthly payment, at most', {exact: true}), '3350');
            await visit.seek(page.locator('.fit'));
        },
        done: () => true,
    },
};

/// A home that nothing is chosen in yet, on a lot that is no walk-out.
function bare_home(six) {
    const inquiry = JSON.parse(readFileSync(six, 'utf8'));
    const wishes = inquiry.wishes.filter(({option}) => option !== 'boulder-steps');
    return {
        ...inquiry,
        lot: '12',
        selections: [],
        requests: [],
        wishes,
        price_book: 'pricebook.json',
    };
}

export async function five_visits_take_few_touches({cases, server, chrome}) {
    console.log('  touches, scrolls, keys, words in sight, seconds of the model');
    for (const [name, {go, done, most}] of Object.entries(visits)) {
        const context = await chrome.newContext({viewport: {width: 1180, height: 820}});
        const page = await open_page(context, server.url);
        await open_file(page, bare_home(cases.six));
        const visit = new Visit(page);
        await go(visit, page);
        const {inquiry} = await kept(page);
        check(`${name}: done`, done(inquiry));
        check(`${name}: ${most} touches at most`, visit.touches <= most, visit.touches);
        console.log(
            `  ${name}: ${visit.touches}, ${visit.scrolls}, ${visit.keys}, ${visit.words}, ` +
                visit.took().toFixed(0),
        );
        await context.close();
    }
}
