// Asks the module what it is told on standard input: one request a line, one reply a line.
//   node asked.mjs BUILD TODAY FOLDER...    FOLDER: examples or rates, held under its own name
import {readFileSync, readdirSync} from 'node:fs';
import {basename, join} from 'node:path';
import {createInterface} from 'node:readline';

const [build, today, ...folders] = process.argv.slice(2);
const {load} = await import(join(build, 'quoin.mjs'));
const engine = await load(readFileSync(join(build, 'quoin.wasm')));

function told({status, type, bytes}) {
    const body = Buffer.from(bytes).toString('base64');
    process.stdout.write(`${JSON.stringify({status, type, body})}\n`);
}

told(engine.reply('GET', '/api/cases', 'en')); // before anything is held
told(engine.open(today, 'es'));
for (const folder of folders) {
    for (const file of readdirSync(folder, {recursive: true, withFileTypes: true})) {
        if (!file.isFile()) continue;
        const path = join(file.parentPath ?? file.path, file.name);
        engine.hold(join(basename(folder), path.slice(folder.length + 1)), readFileSync(path));
    }
}
told(engine.open(today, 'en'));
for await (const line of createInterface({input: process.stdin})) {
    const {method, address, language, body} = JSON.parse(line);
    told(engine.reply(method, address, language, body ?? ''));
}
