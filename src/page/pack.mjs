// Packs what is the same in every file that is taken home: a line of JSON with names and lengths, the
// bytes of each behind it, and all of that by gzip, whose length and sum tell what was damaged.
//
//   node pack.mjs FOLDER MODULE    writes FOLDER/home_parts.gz, of what build.mjs made in FOLDER and the
//                                  engine for browsers in MODULE
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {gzipSync} from 'node:zlib';

const [folder, module] = process.argv.slice(2);
const text = (...path) => readFileSync(join(...path));
const files = ['home.js', 'home.css', 'worker.js'].map((name) => [name, text(folder, name)]);
files.push(['quoin.wasm', text(module, 'quoin.wasm')]);
files.push([
    'licenses.txt',
    Buffer.concat([text(folder, 'licenses.txt'), text(module, 'licenses.txt')]),
]);
const head = JSON.stringify({files: files.map(([name, bytes]) => [name, bytes.length])});
const bytes = Buffer.concat([Buffer.from(`${head}\n`), ...files.map(([, one]) => one)]);
writeFileSync(join(folder, 'home_parts.gz'), gzipSync(bytes, {level: 9}));
