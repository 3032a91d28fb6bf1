// Finding an option, all that was chosen, and the way through the home on small screens.
import {
    areas_of,
    ask,
    check,
    equal,
    exactly,
    kept,
    open_page,
    settled,
    touch,
    view,
    walk,
} from './support.mjs';

const rows_of = (page) =>
    page.$$eval('.area .option', (all) => all.map((one) => one.getAttribute('aria-label')));

const tour_of = async (cases, page) => {
    const {inquiry, hand} = await kept(page);
    return ask(cases, 'tour', inquiry, ['--scenario', hand]);
};

export async function an_option_is_found({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await page.getByLabel('Find an option').click();
    const field = page.locator('.find-option input');
    equal(
        'the field has the keys',
        await field.evaluate((one) => one === document.activeElement),
        true,
    );
    await field.fill('fire');
    await settled(page); // what is looked through is asked about once something is looked for
    equal(
        'by the beginning of a word',
        (await rows_of(page)).join(),
        'Gas fireplace,Fireplace surround',
    );
    await field.fill('FOOTINGS frost');
    equal(
        'by words of what is said of it',
        (await rows_of(page)).join('; '),
        'Rear deck, 12 x 16 ft; Screened porch, 14 x 14 ft',
    );
    check(
        'where it is not available, with the reason',
        (await page.textContent('.barred')).includes('Deeper front porch'),
    );
    await field.fill('12 x 14');
    equal('by numbers', (await rows_of(page)).join(), 'Sunroom, 12 x 14 ft');
    await field.fill('kitchen-isl');
    check(
        'by its id',
        (await rows_of(page)).some((one) => /island/i.test(one)),
    );
    await field.fill('zeppelin');
    equal('nothing', (await rows_of(page)).length, 0);
    check('and says so', (await page.textContent('.found-count')).startsWith('Nothing'));
    await field.fill('charging');
    await touch(page, '240-volt charging outlet');
    await settled(page);
    check('touched where it was found', (await page.textContent('.last')).includes('charging'));
    await field.press('Escape');
    equal('closed again', await page.locator('.find-option').count(), 0);
    await view(page, 'Tour');
    equal(
        'and the tour is where it was',
        (await page.textContent('#area-title')).trim(),
        'Outside and structure',
    );
}

export async function all_that_was_chosen({cases, server, context}) {
    const page = await open_page(context, server.url);
    await walk(page, 'What you chose');
    const tour = await tour_of(cases, page);
    const options = tour.areas.flatMap((area) => area.options);
    const open = ({kind, picked, forms}) =>
        !picked &&
        ['choice', 'allowance'].includes(kind) &&
        forms.some((form) => form.state !== 'unavailable');
    const shown = await rows_of(page);
    equal(
        'each option that is chosen, and each that is still open, once',
        [...shown].sort().join(),
        [...options.filter((one) => one.picked), ...options.filter(open)]
            .map((one) => one.name)
            .sort()
            .join(),
    );
    equal(
        'as many as it says',
        await page.textContent('.all-chosen .count'),
        `${options.filter((one) => one.picked).length}`,
    );
    const deck = tour.areas[0];
    check(
        'an area with what it comes to',
        (await page.locator('.group').first().textContent()).includes(
            `$${Number(deck.price).toLocaleString('en-US')}`,
        ),
        deck.price,
    );
    const {inquiry} = await kept(page);
    await page.click('.take-out');
    await settled(page);
    equal('nothing is left', (await kept(page)).inquiry.selections.length, 0);
    const bare = ask(cases, 'tour', (await kept(page)).inquiry, [
        '--scenario',
        (await kept(page)).hand,
    ]);
    const cents = (text) => BigInt(text.replace('.', ''));
    equal(
        'and the bar says what that changes',
        (await exactly(page, '.last-month')).replace(/[^\d.−-]/g, ''),
        `−${(Number(cents(tour.scenario.monthly.total) - cents(bare.scenario.monthly.total)) / 100).toFixed(2)}`,
    );
    await page.click('.back');
    await settled(page);
    equal('a step back', JSON.stringify((await kept(page)).inquiry), JSON.stringify(inquiry));
    equal(
        'with the same figure the other way',
        (await exactly(page, '.last-month')).replace(/[^\d.+]/g, ''),
        `+${(Number(cents(tour.scenario.monthly.total) - cents(bare.scenario.monthly.total)) / 100).toFixed(2)}`,
    );
}

export async function the_areas_by_thumb({server, chrome}) {
    for (const [width, height] of [
        [390, 844],
        [820, 1180],
    ]) {
        const context = await chrome.newContext({viewport: {width, height}, hasTouch: true});
        const page = await open_page(context, server.url);
        const areas = await areas_of(page);
        await page.click('.open-areas');
        const places = await page.$$eval('.areas-sheet .area-link', (all) =>
            all
                .map((one) => one.getBoundingClientRect())
                .map(({top, bottom, height}) => ({top, bottom, height})),
        );
        equal(`all areas at ${width} px`, places.length, areas.length + 2); // what was chosen, the plan
        check(
            `each in sight at ${width} px`,
            places.every((one) => one.top >= 0 && one.bottom <= height),
        );
        check(
            `each as high as a finger at ${width} px`,
            places.every((one) => Math.round(one.height) >= 44),
        );
        await page.click('.areas-sheet .area-link:has-text("Kitchen")');
        await settled(page);
        equal(
            `one touch away at ${width} px`,
            (await page.textContent('#area-title')).trim(),
            'Kitchen',
        );
        equal(
            `and the sheet is gone at ${width} px`,
            await page.locator('.dialog[open]').count(),
            0,
        );
        await context.close();
    }
}
