// The worker that has the engine: begins with the module and the files, then answers one question
// after the other, as the program at the desk answers them.
import {load} from '../../apps/browser/quoin.mjs';
import type {Beginning, Packed} from './handed';

type Engine = Awaited<ReturnType<typeof load>>;

const bytes_of = (file: Packed): Uint8Array =>
    typeof file === 'string'
        ? new TextEncoder().encode(file)
        : Uint8Array.from(atob(file.base64), (letter) => letter.charCodeAt(0));

async function begin({wasm, files, today, language}: Beginning): Promise<Engine> {
    const engine = await load(wasm);
    for (const [path, file] of Object.entries(files)) engine.hold(path, bytes_of(file));
    engine.open(today, language);
    return engine;
}

const tell = (message: unknown, hand_over: Transferable[] = []) =>
    (postMessage as (message: unknown, hand_over: Transferable[]) => void)(message, hand_over);

let engine: Promise<Engine>;

async function answer({id, method, address, language, body}: Record<string, any>): Promise<void> {
    const {status, type, bytes} = (await engine).reply(method, address, language, body);
    tell({id, status, type, bytes}, [bytes.buffer]);
}

onmessage = ({data}) => {
    if (data.wasm) engine = begin(data);
    else answer(data).catch(() => tell({failed: true}));
};
