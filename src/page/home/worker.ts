// The worker that has the engine: begins with the module and the files, then answers one question
// after the other, as the program at the desk answers them.
import {load} from '../../apps/browser/quoin.mjs';
import type {Beginning, Packed} from './handed';
import {from_letters} from './letters.mjs';

type Engine = Awaited<ReturnType<typeof load>>;

const bytes_of = (file: Packed): Uint8Array =>
    typeof file === 'string'
        ? new TextEncoder().encode(file)
        : from_letters(file.letters, file.size);

async function begin({wasm, files, today, language}: Beginning): Promise<Engine> {
    const engine = await load(wasm);
    for (const [path, file] of Object.entries(files)) engine.hold(path, bytes_of(file));
    const opened = engine.open(today, language);
    // Where it finds no home, every question is answered with the reason.
    return opened.status === 200 ? engine : {...engine, reply: () => ({...opened})};
}

const tell = postMessage as (message: unknown) => void;

let engine: Promise<Engine>;

async function answer({id, method, address, language, body}: Record<string, any>): Promise<void> {
    tell({id, ...(await engine).reply(method, address, language, body)});
}

onmessage = ({data}) => {
    if (data.wasm) engine = begin(data);
    else answer(data).catch(() => tell({failed: true}));
};
