// Opens the file: unpacks what is in it, begins a worker with the engine, and runs the page. Where
// that cannot be, says why, and the sheet stays as it is.
import {XzReadableStream} from 'xz-decompress';

import type {Beginning, Handed} from './handed';
import {from_letters} from './letters.mjs';
import {home_words} from './words/catalogue';

const text_of = (id: string) => document.getElementById(`quoin-${id}`)?.textContent?.trim() ?? '';

/// Its length in bytes, a colon, the letters (pack.mjs).
async function unpacked_by_xz(text: string): Promise<ArrayBuffer> {
    const [start, length] = /^(\d+):/.exec(text)!;
    const packed = from_letters(text.slice(start.length), Number(length));
    return new Response(new XzReadableStream(new Blob([packed]).stream())).arrayBuffer();
}

async function unpacked(text: string): Promise<ArrayBuffer> {
    const letters = atob(text);
    const packed = new Uint8Array(letters.length);
    for (let i = 0; i < letters.length; i += 1) packed[i] = letters.charCodeAt(i);
    // Holds the bytes to the length and the sum that stand at their end, too.
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
    return new Response(stream).arrayBuffer();
}

const read = (bytes: ArrayBuffer) => JSON.parse(new TextDecoder().decode(bytes));

/// A line of JSON with names and lengths, then the bytes of each.
function parts_in(bytes: ArrayBuffer): Record<string, ArrayBuffer> {
    const end = new Uint8Array(bytes).indexOf(10);
    let at = end + 1;
    const parts: Record<string, ArrayBuffer> = {};
    for (const [name, length] of read(bytes.slice(0, end)).files as [string, number][]) {
        parts[name] = bytes.slice(at, at + length);
        at += length;
    }
    if (at !== bytes.byteLength) throw new Error('not as long as it says');
    return parts;
}

const script_of = (bytes: ArrayBuffer) =>
    URL.createObjectURL(new Blob([bytes], {type: 'text/javascript'}));

let touched: [string, number] | null = null;

/// What is touched before the page is there is done once it is.
function remember({target}: Event): void {
    const button = (target as Element).closest?.('button');
    if (!button) return;
    const kind = button.className.split(' ').pop()!;
    touched = [kind, [...document.querySelectorAll(`#page .${kind}`)].indexOf(button)];
}

/// A tree of its own for the sheet, where the browser does not make one of a template.
function set_sheet_apart(): void {
    const template = document.querySelector<HTMLTemplateElement>('.paper > template');
    if (!template) return;
    template.parentElement!.attachShadow({mode: 'open'}).append(template.content);
    template.remove();
}

/// In both languages: whoever opens it may read but one.
function say_why(why: 'damaged' | 'too_old'): void {
    document.documentElement.classList.remove('opens');
    const message = document.createElement('div');
    message.classList.add('message', 'bad');
    message.setAttribute('role', 'alert');
    for (const [language, words] of Object.entries(home_words)) {
        const line = document.createElement('p');
        line.lang = language;
        line.textContent = words[why];
        message.append(line);
    }
    document.querySelector('.messages')?.append(message);
    if (why === 'damaged') document.querySelector('.bar')?.classList.add('stale');
}

async function handed_over(): Promise<Handed> {
    const [home, parts, state] = await Promise.all([
        unpacked_by_xz(text_of('home')).then(read),
        unpacked_by_xz(text_of('parts')).then(parts_in),
        text_of('state') ? unpacked(text_of('state')).then(read) : null,
    ]);
    const language = document.documentElement.lang;
    const worker_script = script_of(parts['worker.js']);
    const begin = () => {
        const worker = new Worker(worker_script);
        const wasm = parts['quoin.wasm'];
        const beginning: Beginning = {wasm, files: home.files, today: home.facts.as_of, language};
        worker.postMessage(beginning);
        return worker;
    };
    return {
        ...home,
        parts,
        state: state?.changes ?? null,
        state_id: state?.id ?? '',
        language,
        worker: begin(),
        begin,
        touched: () => touched,
        parts_text: text_of('parts'),
        home_text: text_of('home'),
        opener_text: document.getElementById('quoin-opener')!.textContent!,
    };
}

async function open_file(): Promise<void> {
    set_sheet_apart();
    if ([typeof DecompressionStream, typeof WebAssembly, typeof Worker].includes('undefined'))
        return say_why('too_old');
    try {
        window.quoin_handed = await handed_over();
    } catch {
        return say_why('damaged');
    }
    const page = document.createElement('script');
    page.src = script_of(window.quoin_handed.parts['home.js']);
    document.head.append(page);
}

/// The letters are in the file and come within a frame or two: with others first, lines would move.
async function wait_for_letters(): Promise<void> {
    const page = document.documentElement;
    page.classList.add('opens', 'waits');
    const longest = new Promise((resolve) => window.setTimeout(resolve, 3000));
    const letters = ['400 1em "Sans"', '600 1em "Sans"', '500 1em "Serif"'];
    await Promise.race([longest, Promise.all(letters.map((one) => document.fonts.load(one)))]);
    page.classList.remove('waits');
}

void wait_for_letters();
document.addEventListener('click', remember);
document.addEventListener('DOMContentLoaded', () => void open_file());
