// What the browser at the desk keeps: each buyer under a key of its own, so that two tabs do not
// overwrite each other, and what a window has open.
import type {Tour} from '../answers';
import {today} from '../days';
import type {Kept, Seen, Sitting} from '../kept';
import {say} from '../language';
import type {Place} from '../place';
import type {Buyer} from '../state/signals';

const stored = 'quoin.buyer.';
const figures = 'quoin.seen.';
const places = 'quoin.place.';
const opened = 'quoin.open';

function read(store: Storage, key: string): any {
    try {
        return JSON.parse(store.getItem(key) ?? 'null');
    } catch {
        return null;
    }
}

// ---- buyers

/// Says whether the browser has room and leave to keep it.
export function keep_buyer(one: Buyer): boolean {
    try {
        const past = one.past.slice(-20);
        localStorage.setItem(
            stored + one.key,
            JSON.stringify({...one, past, future: [], at: Date.now()}),
        );
        return true;
    } catch {
        return false;
    }
}

export function kept_buyer(key: string): Buyer | null {
    const one = read(localStorage, stored + key);
    if (!one || typeof one.inquiry !== 'object' || one.inquiry === null) return null;
    return {past: [], future: [], hand: '', area: '', asks: {}, uses: [], ...one, key};
}

/// The key of the buyer that a change of the storage is about.
export function buyer_in(storage_key: string | null): string | null {
    return storage_key?.startsWith(stored) ? storage_key.slice(stored.length) : null;
}

export function forget_buyer(key: string): void {
    localStorage.removeItem(stored + key);
    localStorage.removeItem(figures + key);
    localStorage.removeItem(places + key);
}

/// When a key was made: it begins with the time.
function made_at(key: string): number {
    return parseInt(key.slice(0, 8), 36) || 0;
}

/// Everybody who is kept, the last one that something was done with first.
export function all_kept(): Kept[] {
    let keys: string[] = [];
    try {
        keys = Object.keys(localStorage).flatMap((key) => buyer_in(key) ?? []);
    } catch {
        /* keeps nothing */
    }
    const all = keys.flatMap((key) => {
        const one = kept_buyer(key);
        if (!one) return [];
        const {inquiry} = one;
        const seen = seen_of(key);
        return {
            key,
            name: String(inquiry.buyer || say.buyers.unnamed),
            price_book: String(inquiry.price_book ?? ''),
            community: seen?.community ?? '',
            plan: seen?.plan ?? String(inquiry.plan ?? ''),
            lot: String(inquiry.lot ?? ''),
            at: one.at ?? made_at(key),
        };
    });
    return all.sort((a, b) => b.at - a.at || (a.key < b.key ? 1 : -1));
}

// ---- what was seen of them

/// What is chosen is told as it is, also where it was wished for otherwise.
function names_in(answer: Tour): Record<string, string> {
    const names: Record<string, string> = {};
    for (const {option, name, form} of [
        ...answer.wishes,
        ...answer.all_areas.flatMap((area) => area.chosen),
    ])
        names[option] = form ? say.common.with_form({name, form}) : name;
    for (const one of answer.incentives) if (one.used.length > 0) names[one.id] = one.name;
    return names;
}

export function keep_seen(key: string, answer: Tour): void {
    const {heading, scenario, contract_price: price} = answer;
    const seen: Seen = {
        community: heading.community,
        plan: heading.plan,
        as_of: heading.as_of,
        price,
        month: scenario.available ? scenario.monthly.total : null,
        closing: scenario.available ? scenario.cash.to_close : null,
        scenario: scenario.terms.name,
        names: names_in(answer),
    };
    try {
        localStorage.setItem(figures + key, JSON.stringify(seen));
    } catch {
        /* the figures of before are not told, then */
    }
}

export function seen_of(key: string): Seen | null {
    const seen = read(localStorage, figures + key);
    return seen?.names ? seen : null;
}

// ---- where they were on the page

export function keep_place(key: string, place: Place): void {
    try {
        localStorage.setItem(places + key, JSON.stringify(place));
    } catch {
        /* the next time begins at the top */
    }
}

export function kept_place(key: string): Place | null {
    const place = read(localStorage, places + key);
    return Array.isArray(place?.opened) && typeof place.tops === 'object' ? place : null;
}

// ---- the window

export function keep_sitting(one: Omit<Sitting, 'day'>): void {
    try {
        sessionStorage.setItem(opened, JSON.stringify({...one, day: today()}));
    } catch {
        /* a reload begins with the list of names, then */
    }
}

/// What the window had open before it was loaded again, the same day.
export function kept_sitting(): Sitting | null {
    const one = read(sessionStorage, opened);
    return one?.day === today() && Array.isArray(one.keys) ? one : null;
}
