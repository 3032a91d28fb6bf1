// Files that are taken home, as the command writes them; and the same with something in it changed.
import {execFileSync} from 'node:child_process';
import {existsSync, mkdtempSync, readFileSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';

import {from_letters, to_letters} from '../../src/page/home/letters.mjs';
import {program} from './support.mjs';

/// A build without emscripten has no engine for browsers.
export const can_be_built = existsSync(join(process.env.QUOIN_BUILD, 'browser', 'quoin.wasm'));

function take_home(inquiry, ...options) {
    execFileSync(program, ['take-home', inquiry, ...options], {stdio: ['ignore', 'ignore', 2]});
}

/// A folder with what of the desk goes home with a buyer, as the command writes it.
export function desk_at_home(inquiry) {
    const folder = join(mkdtempSync(join(tmpdir(), 'quoin-home-')), 'desk');
    take_home(inquiry, '--desk', folder);
    process.on('exit', () => rmSync(dirname(folder), {recursive: true}));
    return {
        folder,
        of: inquiry,
        rates: join(folder, 'rates'),
        inquiry: join(folder, 'inquiry.json'),
    };
}

/// The xz format by Python's own library.
const by_xz = (what, bytes) =>
    execFileSync(
        'python3',
        ['-c', `import lzma, sys; sys.stdout.buffer.write(lzma.${what}(sys.stdin.buffer.read()))`],
        {input: bytes, maxBuffer: 1 << 28},
    );

const home_part = /(<script type="text\/plain" id="quoin-home">)([^<]*)/;

/// What is this buyer's in a file: facts, files, the sheet.
export function home_in(html) {
    const [, , text] = home_part.exec(html);
    const colon = text.indexOf(':');
    const packed = from_letters(text.slice(colon + 1), Number(text.slice(0, colon)));
    return JSON.parse(by_xz('decompress', packed));
}

export function with_home(html, home) {
    const packed = by_xz('compress', JSON.stringify(home));
    return html.replace(home_part, (_, begin) => `${begin}${packed.length}:${to_letters(packed)}`);
}

/// `facts`: other days than those of the example. `without`: files that are left out.
export function home_file(desk, {language = 'en', facts = null, without = null} = {}) {
    const file = join(desk.folder, `../home.${language}.html`);
    take_home(desk.of, '--language', language, '--force', '-o', file);
    const html = readFileSync(file, 'utf8');
    if (!facts && !without) return html;
    const home = home_in(html);
    Object.assign(home.facts, facts ?? {});
    for (const name of Object.keys(home.files)) if (without?.test(name)) delete home.files[name];
    return with_home(html, home);
}
