// The gallery: every part of the page in every state (src/page/gallery), which the program does not
// carry. What it shows is the program's: its answers about the example are kept in the build folder
// and asked anew where the program has changed.
import {existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {join} from 'node:path';

import {check, program, root, until} from './support.mjs';

const pages = join(root, 'src/page');
const folder = join(process.env.QUOIN_BUILD, 'page-gallery');
const answers = join(folder, 'answers.json');

/// The gallery as a script and a style, and which file imports which.
async function bundled() {
    const {build} = createRequire(join(pages, 'build.mjs'))('esbuild');
    const {metafile} = await build({
        absWorkingDir: pages,
        entryPoints: {gallery: 'gallery/main.tsx'},
        outdir: folder,
        bundle: true,
        format: 'esm',
        jsx: 'automatic',
        jsxImportSource: 'preact',
        external: ['/assets/*'],
        metafile: true,
        logLevel: 'warning',
    });
    return metafile.inputs;
}

/// What was asked before of this very program.
function kept_answers() {
    const fresh = existsSync(answers) && statSync(answers).mtimeMs > statSync(program).mtimeMs;
    return new Map(fresh ? JSON.parse(readFileSync(answers, 'utf8')) : []);
}

/// The gallery as a page of the program, whose questions are answered from what is kept.
async function opened(chrome, server, options) {
    const context = await chrome.newContext({...options, bypassCSP: true});
    const page = await context.newPage();
    const kept = kept_answers();
    page.wrong = [];
    page.on('pageerror', (error) => page.wrong.push(error.message));
    page.on('console', (message) => {
        // A refusal of the program is an answer; none at all is told below.
        if (message.type() !== 'error' || /Failed to load resource/.test(message.text())) return;
        page.wrong.push(message.text());
    });
    await page.route('**/gallery/*', (route) => {
        const name = new URL(route.request().url()).pathname.split('/').pop();
        const file = name === 'index.html' ? join(pages, 'gallery', name) : join(folder, name);
        return route.fulfill({path: file});
    });
    let under_way = 0;
    await page.route('**/api/**', async (route) => {
        const asked = route.request();
        if (new URL(asked.url()).pathname.startsWith('/api/picture')) return route.continue();
        const words = asked.headers()['accept-language'] ?? '';
        const key = [
            words,
            asked.method(),
            new URL(asked.url()).pathname,
            new URL(asked.url()).search,
            asked.postData(),
        ].join('\n');
        under_way += 1;
        try {
            if (!kept.has(key)) {
                const answer = await route.fetch();
                kept.set(key, {status: answer.status(), body: await answer.text()});
            }
            const {status, body} = kept.get(key);
            if (status !== 200 && status !== 422) page.wrong.push(`${status}: ${key}`);
            await route.fulfill({status, body, contentType: 'application/json'});
        } finally {
            under_way -= 1;
        }
    });
    await page.goto(`${server.url}gallery/index.html`);
    await until(page, () => Boolean(window.gallery));
    const still = async () => {
        do {
            await page.evaluate(
                () => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20))),
            );
        } while (under_way > 0);
    };
    const done = async () => {
        writeFileSync(answers, JSON.stringify([...kept]));
        await context.close();
    };
    return {page, still, done};
}

/// Each place in its turn; where something was touched, the next one begins on a fresh page.
async function walked({page, still}, at) {
    const places = await page.evaluate(() => window.gallery.places);
    for (const place of places) {
        await page
            .evaluate(({part, state}) => window.gallery.show(part, state), place)
            .catch((error) => page.wrong.push(error.message.split('\n')[0]));
        await still();
        await still();
        await at(place);
        if (!place.touched) continue;
        await page.reload();
        await until(page, () => Boolean(window.gallery));
    }
    return places;
}

/// The parts by their files: "bar", "chart/axis".
function parts_of(under = '') {
    return readdirSync(join(pages, 'parts', under), {withFileTypes: true}).flatMap((one) => {
        if (one.isDirectory()) return parts_of(`${under}${one.name}/`);
        return one.name.endsWith('.tsx') ? [`${under}${one.name.slice(0, -4)}`] : [];
    });
}

/// Whether a part is drawn by another, as far as its imports tell.
function comes_with(inputs, part, other) {
    const seen = new Set();
    const left = [`parts/${other}.tsx`];
    while (left.length > 0) {
        const file = left.pop();
        if (seen.has(file)) continue;
        seen.add(file);
        left.push(...(inputs[file]?.imports ?? []).map((one) => one.path));
    }
    return seen.has(`parts/${part}.tsx`);
}

export async function every_part_has_its_place({server, chrome}) {
    mkdirSync(folder, {recursive: true});
    const inputs = await bundled();
    const gallery = await opened(chrome, server, {viewport: {width: 1180, height: 820}});
    const {page} = gallery;
    const places = await walked(gallery, async ({part, state}) => {
        const drawn = await page.evaluate(() =>
            [...document.querySelectorAll('#gallery *')].some(
                (one) => one.getBoundingClientRect().height > 0 && !one.matches('main'),
            ),
        );
        check(`gallery, ${part}, ${state}: something is drawn`, drawn);
        check(
            `gallery, ${part}, ${state}: no error`,
            page.wrong.length === 0,
            page.wrong.join('; '),
        );
        page.wrong.length = 0;
    });
    const inside = await page.evaluate(() => window.gallery.inside);
    const shown = new Set(places.map((one) => one.part));
    for (const part of parts_of()) {
        const other = inside[part];
        check(
            `gallery: ${part}.tsx has a place`,
            shown.has(part) || (shown.has(other) && comes_with(inputs, part, other)),
        );
    }
    const known = new Set(parts_of());
    for (const part of [...shown, ...Object.keys(inside)]) {
        check(`gallery: a place of ${part}, which is a part`, known.has(part));
    }
    await gallery.done();
}

/// By hand: a picture of each at five sizes, in light and in the dark.
export async function pictures_of_every_part({server, chrome}) {
    mkdirSync(folder, {recursive: true});
    await bundled();
    const sizes = (process.env.QUOIN_SIZES ?? '390x844,844x390,820x1180,1180x820,1440x900').split(
        ',',
    );
    for (const size of sizes) {
        const [width, height] = size.split('x').map(Number);
        for (const colorScheme of ['light', 'dark']) {
            const viewport = {width, height};
            const gallery = await opened(chrome, server, {viewport, colorScheme});
            await walked(gallery, ({part, state}) =>
                gallery.page.screenshot({
                    path: join(folder, `${part}-${state}-${size}-${colorScheme}.png`),
                }),
            );
            await gallery.done();
        }
    }
    check(
        'pictures of every part',
        readdirSync(folder).some((one) => one.endsWith('.png')),
    );
    console.log(`  in ${folder}`);
}
