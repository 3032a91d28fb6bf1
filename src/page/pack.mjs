// Packs what is the same in every file that is taken home, in two steps with xz between them (which
// the build does, cmake/browser_module.cmake):
//
//   node pack.mjs FOLDER MODULE    writes FOLDER/home_parts, of what build.mjs made in FOLDER and the engine
//                                  for browsers in MODULE: a line of JSON with names and lengths, and
//                                  the bytes of each behind it
//   node pack.mjs FOLDER           writes FOLDER/home_parts.txt, of FOLDER/home_parts.xz: the number of
//                                  its bytes, a colon, the bytes in letters
import {readFileSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';

import {to_letters} from './home/letters.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const [folder, module] = process.argv.slice(2);
const text = (...path) => readFileSync(join(...path));

function gathered() {
    const files = ['home.js', 'home.css', 'worker.js'].map((name) => [name, text(folder, name)]);
    files.push(['quoin.wasm', text(module, 'quoin.wasm')]);
    const licenses = Buffer.concat([
        text(folder, 'licenses.txt'),
        text(module, 'licenses.txt'),
        text(here, 'home', 'licenses.txt'),
    ]);
    files.push(['licenses.txt', licenses]);
    const head = JSON.stringify({files: files.map(([name, bytes]) => [name, bytes.length])});
    return Buffer.concat([Buffer.from(`${head}\n`), ...files.map(([, one]) => one)]);
}

if (module) {
    writeFileSync(join(folder, 'home_parts'), gathered());
} else {
    const packed = text(folder, 'home_parts.xz');
    writeFileSync(join(folder, 'home_parts.txt'), `${packed.length}:${to_letters(packed)}`);
}
