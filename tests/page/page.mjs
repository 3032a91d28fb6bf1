// Runs the tests of the page, each in a fresh browser profile.
import {rmSync} from 'node:fs';

import {check, case_folder, Server, browser, summary} from './support.mjs';
import * as budget from './budget.mjs';
import * as buyers from './buyers.mjs';
import * as charts from './charts.mjs';
import * as codes from './codes.mjs';
import * as figures from './figures.mjs';
import * as finds from './finds.mjs';
import {every_part_has_its_place, pictures_of_every_part} from './gallery.mjs';
import * as firefox from './firefox.mjs';
import * as home from './home.mjs';
import * as keys from './keys.mjs';
import * as loans from './loans.mjs';
import * as looks from './looks.mjs';
import * as mishaps from './mishaps.mjs';
import * as moves from './moves.mjs';
import * as pace from './pace.mjs';
import * as returns from './returns.mjs';
import * as sees from './sees.mjs';
import * as speaks from './speaks.mjs';
import * as speed from './speed.mjs';
import * as terms from './terms.mjs';
import * as touches from './touches.mjs';
import * as typing from './typing.mjs';
import * as visits from './visits.mjs';
import * as wishes from './wishes.mjs';
import * as words from './words.mjs';

// Two halves that take about as long and run side by side; and what is run by hand alone.
const halves = {
    shown: {
        ...figures,
        ...budget,
        ...charts,
        ...keys,
        ...loans,
        ...looks,
        ...speaks,
        ...terms,
        ...words,
        ...speed,
    },
    used: {
        ...buyers,
        ...finds,
        ...wishes,
        ...touches,
        ...typing,
        ...codes,
        ...mishaps,
        ...moves,
        ...returns,
        every_part_has_its_place,
        ...sees,
        ...visits,
        ...firefox,
        ...home,
    },
    gallery: {pictures_of_every_part}, // by hand
    speed: pace, // by hand
};

/// The tests of these names; a half's name stands for all of it.
function chosen(names) {
    const all = Object.assign({}, ...Object.values(halves));
    const unknown = names.filter((name) => !(name in halves) && !(name in all));
    if (unknown.length > 0) throw new Error(`no test of the page: ${unknown.join(', ')}`);
    return Object.assign({}, ...names.map((name) => halves[name] ?? {[name]: all[name]}));
}

const tests = chosen(process.argv.slice(2));
const cases = case_folder();
const chrome = await browser();
let fine = false;
try {
    for (const [name, test] of Object.entries(tests)) {
        const began = Date.now();
        const server = await new Server(cases).start();
        const context = await chrome.newContext({
            viewport: {width: 1440, height: 900},
        });
        try {
            await test({cases, server, context, chrome});
        } catch (error) {
            check(
                name,
                false,
                `${error.message.split('\n').slice(0, 3).join(' ')} ${/\w+\.mjs:\d+/.exec(error.stack.split('support.mjs').pop()) ?? ''}`,
            );
        }
        await context.close();
        await server.stop();
        console.log(`${name}: ${((Date.now() - began) / 1000).toFixed(1)} s`);
    }
    fine = summary();
} finally {
    await chrome.close();
    rmSync(cases.folder, {recursive: true});
}
process.exit(fine ? 0 : 1);
