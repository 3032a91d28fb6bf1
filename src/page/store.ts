// What is open: the buyers, each with an inquiry, its past and the answer that is on the screen.
import {batch, computed, signal} from '@preact/signals';

import type {Form, Option, Tour, Touch} from './answers';
import {ask, cases, Refused, set_code} from './engine';
import type {Cases, Inquiry, Problem} from './engine';
import {copy, from_link, touched, with_selection, without_refused} from './inquiry';
import {standing} from './money';
import type {Use} from './money';

export type View = 'tour' | 'loans' | 'budget' | 'site' | 'schedule' | 'sheet' | 'check';

export interface Buyer {
    key: string;
    inquiry: Inquiry;
    hand: string; ///< name of the scenario in hand
    area: string; ///< of the tour
    asks: Record<string, string>; ///< what is asked besides the inquiry, as options of a question
    uses: Use[]; ///< of the builder's money, so that another takes the place of the one before
    past: Inquiry[];
    future: Inquiry[];
}

/// What the last touch changed, in the engine's figures.
export interface Change {
    what: string;
    touch: Touch | null;
    remarks: string[];
}

export const known = signal<Cases | null>(null);
export const buyers = signal<Buyer[]>([]);
export const current = signal('');
export const view = signal<View>('tour');
export const tour = signal<Tour | null>(null);
/// The inquiry that the tour answers: the others ask about it too, so that all figures agree.
export const answered = signal<Inquiry | null>(null);
export const problems = signal<Problem[]>([]);
export const gone = signal(false);
export const code_needed = signal(false);
export const busy = signal(false);
export const change = signal<Change | null>(null);
export const notice = signal('');

export const buyer = computed(() => buyers.value.find((one) => one.key === current.value) ?? null);

const stored = 'quoin.buyer.';
const longest_past = 200;
const longest_uses = 40;

function new_key(): string {
    return `${Date.now().toString(36)}${Math.floor(Math.random() * 1e6).toString(36)}`;
}

// ---- keeping: every buyer under a key of its own, so that two tabs do not overwrite each other

function keep(one: Buyer): void {
    try {
        localStorage.setItem(
            stored + one.key,
            JSON.stringify({...one, past: one.past.slice(-20), future: []}),
        );
        const keys = JSON.stringify(buyers.value.map((each) => each.key));
        sessionStorage.setItem('quoin.open', JSON.stringify({keys, current: current.value}));
        localStorage.setItem('quoin.open', keys);
    } catch {
        notice.value = 'This browser keeps nothing: save the buyer to a file before you leave.';
    }
}

function kept(key: string): Buyer | null {
    try {
        const one = JSON.parse(localStorage.getItem(stored + key) ?? 'null');
        return one && one.inquiry
            ? {past: [], future: [], hand: '', area: '', asks: {}, uses: [], ...one}
            : null;
    } catch {
        return null;
    }
}

function kept_keys(): string[] {
    try {
        const mine = JSON.parse(sessionStorage.getItem('quoin.open') ?? 'null');
        return JSON.parse(mine?.keys ?? localStorage.getItem('quoin.open') ?? '[]');
    } catch {
        return [];
    }
}

/// Another tab of this browser changed a buyer that is open here too.
function hear(event: StorageEvent): void {
    if (!event.key?.startsWith(stored) || !event.newValue) return;
    const key = event.key.slice(stored.length);
    if (!buyers.value.some((one) => one.key === key)) return;
    const there = kept(key);
    if (!there) return;
    buyers.value = buyers.value.map((one) =>
        one.key === key
            ? {...one, inquiry: there.inquiry, uses: there.uses, past: there.past, future: []}
            : one,
    );
    if (key === current.value) void refresh();
}

// ---- opening

function scenario_names(inquiry: Inquiry): string[] {
    return (inquiry.scenarios ?? []).map((one: any) => one.name);
}

function add(inquiry: Inquiry): Buyer {
    const one: Buyer = {
        key: new_key(),
        inquiry: copy(inquiry),
        hand: scenario_names(inquiry)[0] ?? '',
        area: '',
        asks: {},
        uses: [],
        past: [],
        future: [],
    };
    buyers.value = [...buyers.value, one];
    return one;
}

export function show(key: string): void {
    batch(() => {
        if (key !== current.value) {
            tour.value = null; // never one buyer's figures under another's name
            answered.value = null;
        }
        current.value = key;
        change.value = null;
        problems.value = [];
        notice.value = '';
    });
    if (buyer.value) keep(buyer.value);
    void refresh();
}

/// A name that no open buyer has: "Buyer 1 (2)".
function fresh_name(name: string): string {
    const taken = new Set(buyers.value.map((one) => one.inquiry.buyer));
    let fresh = name;
    for (let i = 2; taken.has(fresh); ++i) fresh = `${name} (${i})`;
    return fresh;
}

export function open(inquiry: Inquiry): void {
    const one = add({...inquiry, buyer: fresh_name(inquiry.buyer || 'Buyer')});
    show(one.key);
}

export function close(key: string): void {
    localStorage.removeItem(stored + key);
    buyers.value = buyers.value.filter((one) => one.key !== key);
    if (buyers.value.length === 0) open_first();
    else show(current.value === key ? buyers.value[0].key : current.value);
}

/// The price book that an inquiry file means: by its id, or by the end of its path.
export function book_of(path: string): string | null {
    const books = known.value?.price_books ?? [];
    const plain = path.replace(/^(\.\.?\/)+/, '');
    const found =
        books.find((book) => book.id === path) ??
        books.find((book) => book.id === plain || book.id.endsWith(`/${plain}`));
    return found?.id ?? null;
}

/// A first visitor sees the example with the most ways to pay: it shows the most.
function open_first(): void {
    const first = known.value?.price_books.find((book) => book.inquiries.length > 0);
    if (!first) {
        const bare = known.value?.price_books.find((book) => book.first)?.first;
        if (bare) open(bare);
        return;
    }
    const ways = (one: {inquiry: Inquiry}) => scenario_names(one.inquiry).length;
    open(first.inquiries.reduce((best, one) => (ways(one) > ways(best) ? one : best)).inquiry);
}

function open_link(): boolean {
    const home = from_link(location.hash);
    if (!home) return false;
    history.replaceState(null, '', location.pathname);
    const book = known.value?.price_books.find((one) => one.id === home.price_book);
    const base = book?.inquiries[0]?.inquiry ?? book?.first;
    if (!base) {
        notice.value = 'The link is about a price book that is not here.';
        return false;
    }
    open(with_selection(base, home));
    return true;
}

export async function start(): Promise<void> {
    window.addEventListener('storage', hear);
    window.addEventListener('hashchange', () => open_link());
    try {
        known.value = await cases();
    } catch (error) {
        if (error instanceof Refused) failed(error);
        else gone.value = true;
        if (!code_needed.value) window.setTimeout(() => void start_again(), 1500);
        return;
    }
    gone.value = false;
    code_needed.value = false;
    if (buyers.value.length === 0) {
        buyers.value = kept_keys()
            .map(kept)
            .filter(
                (one): one is Buyer => one !== null && book_of(one.inquiry.price_book) !== null,
            );
    }
    if (open_link()) return;
    if (buyers.value.length === 0) open_first();
    else
        show(
            buyers.value.some((one) => one.key === current.value)
                ? current.value
                : buyers.value[0].key,
        );
}

async function start_again(): Promise<void> {
    window.removeEventListener('storage', hear);
    await start();
}

export function enter(code: string): void {
    set_code(code);
    void start_again();
}

// ---- asking

function failed(error: unknown): void {
    if (!(error instanceof Refused)) {
        lost();
        return;
    }
    gone.value = false;
    if (error.status === 401) code_needed.value = true;
    else problems.value = error.problems;
}

let knocking = false;

/// No answer came to any of the questions: says so, and knocks until the program is back.
export function lost(): void {
    gone.value = true;
    if (knocking) return;
    knocking = true;
    window.setTimeout(() => void come_back(), 1500);
}

/// What was typed meanwhile is asked once the program answers again.
async function come_back(): Promise<void> {
    try {
        known.value = await cases();
    } catch (error) {
        if (error instanceof Refused) {
            knocking = false;
            failed(error);
        } else {
            window.setTimeout(() => void come_back(), 1500);
        }
        return;
    }
    knocking = false;
    gone.value = false;
    await refresh();
}

let waiting = 0;

async function tour_of(one: Buyer): Promise<Tour> {
    const names = scenario_names(one.inquiry);
    const hand = names.includes(one.hand) ? one.hand : names[0];
    return ask<Tour>('tour', one.inquiry, hand ? {scenario: hand} : {});
}

/// Asks about the buyer as it stands. An answer that was overtaken by a later touch is dropped.
export async function refresh(): Promise<boolean> {
    const one = buyer.value;
    if (!one) return false;
    const mine = ++waiting;
    busy.value = true;
    try {
        const answer = await tour_of(one);
        if (mine !== waiting) return true;
        batch(() => {
            tour.value = answer;
            answered.value = one.inquiry;
            problems.value = [];
            gone.value = false;
            busy.value = false;
        });
        return true;
    } catch (error) {
        if (mine !== waiting) return true;
        busy.value = false;
        failed(error);
        return false;
    }
}

// ---- changing

function replace(one: Buyer): void {
    buyers.value = buyers.value.map((each) => (each.key === one.key ? one : each));
    keep(one);
}

/// The next inquiry of the buyer in hand. A home that cannot stand is put back as it was; typed
/// terms of a loan stay, with what is wrong beside them.
export async function act(next: Inquiry, what: Change, typed = false): Promise<void> {
    const one = buyer.value;
    if (!one) return;
    const before = one.inquiry;
    batch(() => {
        replace({
            ...one,
            inquiry: next,
            past: [...one.past.slice(-longest_past), before],
            future: [],
        });
        change.value = what;
        notice.value = '';
    });
    const fine = await refresh();
    const now = buyer.value;
    if (fine || typed || gone.value || !now || now.inquiry !== next) return;
    const why = problems.value
        .map((problem) => problem.found + (problem.expected ? `: ${problem.expected}` : ''))
        .join('; ');
    replace({...now, inquiry: before, past: now.past.slice(0, -1)});
    change.value = null;
    await refresh();
    notice.value = `Nothing was changed: ${why}.`;
}

export function touch(option: Option, form: Form, how: Touch): void {
    const one = buyer.value;
    if (!one) return;
    const name = form.name ? `${option.name}: ${form.name}` : option.name;
    void act(touched(one.inquiry, option, form, how), {
        what: how.takes_out && form.state === 'chosen' ? `${name}, taken out` : name,
        touch: how,
        remarks: remarks_of(how),
    });
}

export function remarks_of(how: Touch): string[] {
    const words: string[] = [];
    if (how.along.length > 0) {
        words.push(`${how.takes_out ? 'and with it' : 'together with'} ${how.along.join(', ')}`);
    }
    if (how.instead_of.length > 0) words.push(`instead of ${how.instead_of.join(', ')}`);
    return words.concat(how.jumps);
}

/// Another plan, elevation or lot: picks that still apply go along, the others are named.
export async function move(members: Inquiry, what: string): Promise<void> {
    const one = buyer.value;
    if (!one) return;
    let next = {...copy(one.inquiry), ...members};
    const fallen: {id: string; why: string}[] = [];
    for (let tries = 0; tries < 8; ++tries) {
        try {
            await tour_of({...one, inquiry: next});
            break;
        } catch (error) {
            const less = error instanceof Refused ? without_refused(next, error.problems) : null;
            if (!less) break; // act() says what is wrong
            fallen.push(...less.fallen);
            next = less.next;
        }
    }
    const names = fallen.map((one) => `${name_of(one.id)} (${one.why})`);
    await act(next, {
        what,
        touch: null,
        remarks:
            names.length > 0 ? [`fell out: ${names.join('; ')}`] : ['everything chosen goes along'],
    });
}

function name_of(id: string): string {
    for (const area of tour.value?.areas ?? []) {
        const found = area.options.find((option) => option.id === id);
        if (found) return found.name;
    }
    return id;
}

/// The builder's money put to use under a loan, or taken out again, from an inquiry without it.
export function use_money(bare: Inquiry, next: Inquiry, scenario: string, what: string): void {
    const one = buyer.value;
    if (!one) return;
    const use = {before: standing(bare, scenario), after: standing(next, scenario)};
    replace({...one, uses: [...one.uses, use].slice(-longest_uses)});
    void act(next, {what, touch: null, remarks: []});
}

export function undo(): void {
    const one = buyer.value;
    if (!one || one.past.length === 0) return;
    const inquiry = one.past[one.past.length - 1];
    replace({...one, inquiry, past: one.past.slice(0, -1), future: [one.inquiry, ...one.future]});
    change.value = {what: 'One step back', touch: null, remarks: []};
    void refresh();
}

export function redo(): void {
    const one = buyer.value;
    if (!one || one.future.length === 0) return;
    const [inquiry, ...future] = one.future;
    replace({...one, inquiry, past: [...one.past, one.inquiry], future});
    change.value = {what: 'One step forward', touch: null, remarks: []};
    void refresh();
}

export function take_in_hand(scenario: string): void {
    const one = buyer.value;
    if (!one) return;
    replace({...one, hand: scenario});
    change.value = {what: `Figures under ${scenario}`, touch: null, remarks: []};
    void refresh();
}

/// A question's option changed: the inquiry stays as it is.
export function set_ask(name: string, value: string): void {
    const one = buyer.value;
    if (one) replace({...one, asks: {...one.asks, [name]: value}});
}

export function walk_to(area: string): void {
    const one = buyer.value;
    if (one) replace({...one, area});
}
