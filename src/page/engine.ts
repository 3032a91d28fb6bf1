// The only door to the engine: every figure on the page comes through ask(), and every sentence of
// the engine in the language in hand.
import {reach} from '#side/reach';

import type {TermCode} from './answer_types';
import {language} from './language';

export interface Problem {
    id: string;
    path?: string;
    found: string;
    expected: string;
    advice: string;
    /// The thing of the price book that it is about, and what was found of it, in words that follow
    /// its name.
    about?: {what: 'option' | 'plan' | 'lot' | 'incentive'; id: string; found: string};
}

/// What a buyer asks about, in the wire form of an inquiry file.
export type Inquiry = Record<string, any>;
export type Options = Record<string, string | string[]>;

/// The engine has read the question and says what is wrong with it.
export class Refused extends Error {
    constructor(
        public problems: Problem[],
        public status: number,
    ) {
        super(problems[0]?.found ?? 'refused');
    }
}

/// No answer at all: the program has ended, or cannot be reached.
export class Gone extends Error {}

function headers(): Record<string, string> {
    return {'Accept-Language': language.peek()};
}

async function answer_of<T>(response: Response): Promise<T> {
    let body: any;
    try {
        body = await response.json();
    } catch {
        throw new Gone(`no answer that can be read (${response.status})`);
    }
    if (!response.ok) throw new Refused(body.problems ?? [], response.status);
    return body as T;
}

async function reached(address: string, init: RequestInit): Promise<Response> {
    try {
        return await reach(address, {cache: 'no-store', ...init});
    } catch (error) {
        if ((error as Error).name === 'AbortError') throw error;
        throw new Gone('the program cannot be reached');
    }
}

export interface Cases {
    price_books: {
        id: string;
        community: string;
        builder: string;
        version: string;
        effective: string;
        expires: string;
        areas: string[]; ///< ids
        inquiries: {id: string; buyer: string; inquiry: Inquiry}[];
        pictures: {file: string; address: string}[];
        first: Inquiry | null; ///< a bare home, to begin a new buyer with
    }[];
    questions: {name: string}[];
}

export async function cases(): Promise<Cases> {
    return answer_of<Cases>(await reached('/api/cases', {headers: headers()}));
}

export interface ExplainedTerm {
    term: TermCode;
    name: string;
    meaning: string;
    source: string; ///< the regulation that names it; empty: none does
}

const glossaries = new Map<string, Promise<ExplainedTerm[]>>();

/// What the words mean, in the language in hand: asked once in each, kept unless it failed.
export function terms(): Promise<ExplainedTerm[]> {
    const asked_in = language.peek();
    const before = glossaries.get(asked_in);
    if (before) return before;
    const answer = reached('/api/terms', {headers: headers()})
        .then((response) => answer_of<{terms: ExplainedTerm[]}>(response))
        .then((all) => all.terms);
    glossaries.set(asked_in, answer);
    answer.catch(() => glossaries.delete(asked_in));
    return answer;
}

function address_of(question: string, options: Options): string {
    const query = new URLSearchParams();
    for (const [name, value] of Object.entries(options)) {
        for (const one of Array.isArray(value) ? value : [value]) query.append(name, one);
    }
    const text = query.toString();
    return `/api/${question}${text ? `?${text}` : ''}`;
}

function post(address: string, body: string): Promise<Response> {
    return reached(address, {
        method: 'POST',
        headers: {...headers(), 'Content-Type': 'application/json'},
        body,
    });
}

/// A question whose answer is a file, such as the workbook.
export async function ask_file(
    question: string,
    inquiry: Inquiry,
    options: Options = {},
): Promise<Blob> {
    const response = await post(address_of(question, options), JSON.stringify(inquiry));
    return response.ok ? response.blob() : answer_of<Blob>(response);
}

const kept = new Map<string, Promise<any>>();

/// The same question twice in one language is asked once; an answer that failed is not kept.
function ask_once<T>(
    question: string,
    inquiry: Inquiry,
    options: Options,
    read: (response: Response) => Promise<T>,
): Promise<T> {
    const body = JSON.stringify(inquiry);
    const address = address_of(question, options);
    const key = `${language.peek()}\n${address}\n${body}`;
    const before = kept.get(key);
    if (before) return before;
    const answer = post(address, body).then(read);
    kept.set(key, answer);
    answer.catch(() => kept.delete(key));
    if (kept.size > 120) kept.delete(kept.keys().next().value as string);
    return answer;
}

/// An answer of the engine, as it stands on the command line under --json.
export function ask<T = any>(
    question: string,
    inquiry: Inquiry,
    options: Options = {},
): Promise<T> {
    return ask_once(question, inquiry, options, (response) => answer_of<T>(response));
}

/// A question whose answer is a document.
export function ask_text(
    question: string,
    inquiry: Inquiry,
    options: Options = {},
): Promise<string> {
    return ask_once(question, inquiry, options, (response) =>
        response.ok ? response.text() : answer_of<string>(response),
    );
}

const pictures = new Map<string, Promise<string>>();
const pictures_here = new Map<string, string>();

/// As `picture` has it, where it was fetched before.
export function picture_here(address: string): string | null {
    return pictures_here.get(address) ?? null;
}

/// A picture as an address that an image can have: an image of its own would ask without the access
/// code. Its address names its content, so it is fetched once, and the browser may keep it.
export function picture(address: string): Promise<string> {
    const before = pictures.get(address);
    if (before) return before;
    const shown = reached(address, {headers: headers(), cache: 'default'})
        .then((response) => (response.ok ? response.blob() : answer_of<Blob>(response)))
        .then((bytes) => {
            const url = URL.createObjectURL(bytes);
            pictures_here.set(address, url);
            return url;
        });
    pictures.set(address, shown);
    shown.catch(() => pictures.delete(address));
    return shown;
}
