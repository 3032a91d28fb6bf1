// How soon figures follow a touch, and how large the page is.
import {get} from 'node:http';

import {check, open_page, paints_soon} from './support.mjs';

export async function from_touch_to_figures({server, context}) {
    const page = await open_page(context, server.url);
    await paints_soon(page, 'touch to painted figures', async (i) => {
        await page.click(`.area-link:not(.areas-top *) >> nth=${i % 2 === 0 ? 1 : 0}`); // both have upgrades to touch
        return {
            element: '.option.upgrade .row:not(.fixed) input',
            figure: '.bar [data-figure="contract_price"]',
        };
    });
}

/// Bytes as they travel.
function weight(url) {
    return new Promise((resolve, reject) => {
        get(url, {headers: {'Accept-Encoding': 'gzip'}}, (response) => {
            let bytes = 0;
            const chunks = [];
            response.on('data', (chunk) => {
                bytes += chunk.length;
                chunks.push(chunk);
            });
            response.on('end', () =>
                resolve({
                    bytes,
                    packed: response.headers['content-encoding'] === 'gzip',
                    text: Buffer.concat(chunks).toString('latin1'),
                }),
            );
        }).on('error', reject);
    });
}

export async function weight_of_the_page({server, context}) {
    const page = await context.newPage();
    const fetched = new Set();
    page.on('request', (request) => fetched.add(request.url()));
    await page.goto(server.url);
    await page.waitForSelector('.bar');
    const files = [...fetched].filter((url) => url.startsWith('http') && !url.includes('/api/'));
    let sum = 0;
    for (const url of files) sum += (await weight(url)).bytes;
    console.log(`  ${files.length} files, ${(sum / 1000).toFixed(1)} kB as they travel`);
    check('the page is within 140 kB', sum > 20000 && sum <= 140000, `${sum} bytes`);
    check(
        'everything comes from here',
        files.every((url) => url.startsWith(server.url.replace(/\/$/, ''))),
        files.join(),
    );
}
