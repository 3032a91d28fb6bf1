// The way to the engine at home: workers that have it and all files, asked in its wire form. What may
// take long has a worker of its own, which can be stopped.
import {signal} from '@preact/signals';

import type {Inquiry} from '../engine';
import {handed} from './handed';
import {said} from './say';

interface Waiting {
    resolve: (response: Response) => void;
    reject: (why: Error) => void;
}

/// A worker and who waits for it.
interface Desk {
    worker: Worker;
    waiting: Map<number, Waiting>;
}

let last = 0;
let quick: Desk | null = null;
let slow: Desk | null = null;

/// What has been under way for a while in the worker that can be stopped; empty: nothing.
export const at_work = signal('');

const takes_long = /^\/api\/(fit|credit)\b/;
const a_while = 700; // milliseconds

/// Whoever waits is told; the worker is no more.
function end(desk: Desk, tell: (one: Waiting) => void): void {
    desk.worker.terminate();
    for (const one of desk.waiting.values()) tell(one);
    desk.waiting.clear();
    if (desk === quick) quick = null;
    if (desk === slow) slow = null;
}

function response(status: number, type: string, body: BodyInit): Response {
    return new Response(body, {status, headers: {'Content-Type': type}});
}

function desk_of(worker: Worker): Desk {
    const desk: Desk = {worker, waiting: new Map()};
    const failed = () => end(desk, (one) => one.reject(new Error('the engine has ended')));
    worker.onmessage = ({data}) => {
        if (data.failed) return failed();
        desk.waiting.get(data.id)?.resolve(response(data.status, data.type, data.bytes));
        desk.waiting.delete(data.id);
    };
    worker.onerror = failed;
    return desk;
}

let first: Worker | null = handed.worker;

/// The first begins while the page is still being read.
function quick_desk(): Desk {
    quick ??= desk_of(first ?? handed.begin());
    first = null;
    return quick;
}

const language_of = (init: RequestInit) =>
    (init.headers as Record<string, string>)['Accept-Language'];

function asked(desk: Desk, address: string, init: RequestInit): Promise<Response> {
    last += 1;
    const id = last;
    const language = language_of(init);
    desk.worker.postMessage({id, method: init.method ?? 'GET', address, language, body: init.body});
    return new Promise((resolve, reject) => desk.waiting.set(id, {resolve, reject}));
}

async function asked_for_long(address: string, init: RequestInit): Promise<Response> {
    slow ??= desk_of(handed.begin());
    const desk = slow;
    const question = /^\/api\/(\w+)/.exec(address)![1];
    const late = window.setTimeout(() => {
        at_work.value = question;
    }, a_while);
    try {
        return await asked(desk, address, init);
    } finally {
        window.clearTimeout(late);
        if (desk.waiting.size === 0) at_work.value = '';
    }
}

let sheet_of = '';

/// The sheet of what was sent is in the file: it need not be written again.
export function know_sheet_of(inquiry: Inquiry): void {
    sheet_of = asked_as(
        `/api/sheet?${new URLSearchParams({scenario: handed.facts.hand})}`,
        JSON.stringify(inquiry),
        handed.facts.language,
    );
}

const asked_as = (...words: unknown[]) => words.join('\n');

/// What the engine answers to a question in its wire form.
export async function reach(address: string, init: RequestInit): Promise<Response> {
    if (asked_as(address, init.body, language_of(init)) === sheet_of)
        return response(200, 'text/html', handed.sheet);
    return takes_long.test(address)
        ? asked_for_long(address, init)
        : asked(quick_desk(), address, init);
}

/// Ends what takes long. It is answered as what was refused.
export function stop(): void {
    const {stopped, stopped_advice} = said();
    const problem = {id: 'stopped', found: stopped, expected: '', advice: stopped_advice};
    const told = JSON.stringify({problems: [problem]});
    if (slow) end(slow, (one) => one.resolve(response(503, 'application/json', told)));
    at_work.value = '';
}
