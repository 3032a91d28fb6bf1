// The start of the page at the desk: what the window had open, a link, the first visit; another tab,
// another day, and turning the screen to the buyer.
import {batch, computed, effect, signal} from '@preact/signals';

import {Refused, cases} from '../engine';
import type {Inquiry} from '../engine';
import {date} from '../figures';
import {from_link, with_selection} from '../inquiry';
import {say} from '../language';
import {set_address, view, view_in_address, watch_place} from '../place';
import {failed, refresh, scenario_names} from '../state/asking';
import {book_of, books_here} from '../state/books';
import {
    away,
    buyers,
    closed,
    code_needed,
    current,
    facing,
    gone,
    known,
    notice,
    problems,
    touched_now,
    touched_today,
} from '../state/signals';
import {open, open_new, put_all_away, show} from '../state/who';
import {keep_all, list_away} from '../state/writing';
import {buyer_in, keep_sitting, kept_buyer, kept_sitting} from './keeping';
import {set_code} from './reach';

/// Another tab of this browser changed a buyer that is open here too.
function hear(event: StorageEvent): void {
    const key = buyer_in(event.key);
    if (!key) return;
    list_away();
    if (!event.newValue || !buyers.value.some((one) => one.key === key)) return;
    const there = kept_buyer(key);
    if (!there) return;
    buyers.value = buyers.value.map((one) =>
        one.key === key
            ? {...one, inquiry: there.inquiry, uses: there.uses, past: there.past, future: []}
            : one,
    );
    if (key === current.value) void refresh();
}

const begun = signal(false);

const open_keys = computed(() => buyers.value.map((one) => one.key).join('\n'));

effect(() => {
    const keys = open_keys.value === '' ? [] : open_keys.value.split('\n');
    const now = {keys, current: current.value, view: view.value, facing: facing.value};
    if (!begun.value) return;
    touched_now();
    keep_sitting(now);
});

/// A window left open over night shows names in the morning, and nobody's figures.
function look_at_day(): void {
    if (current.value && !touched_today()) put_all_away();
}

/// A first visitor sees the example with the most ways to pay: it shows the most.
function open_first(): void {
    const first = known.value?.price_books.find((book) => book.inquiries.length > 0);
    if (!first) {
        const bare = known.value?.price_books.find((book) => book.first)?.first;
        if (bare) open_new(bare);
        return;
    }
    const ways = (one: {inquiry: Inquiry}) => scenario_names(one.inquiry).length;
    open(
        first.inquiries.reduce((best, one) => (ways(one) > ways(best) ? one : best)).inquiry,
        true,
    );
}

/// A home out of a link, for a buyer of whom nothing else is known. Says why there is none, or null
/// where the address holds no link.
function open_link(): string | null {
    if (!location.hash.startsWith('#home=')) return null;
    const home = from_link(location.hash);
    set_address();
    if (!home) return say.buyers.link_damaged;
    const book = known.value?.price_books.find((one) => one.id === home.price_book);
    if (!book) return say.buyers.link_no_book({books: books_here()});
    if (!book.first) return say.buyers.link_no_home(book);
    open(with_selection(book.first, home));
    const {score, closing} = book.first;
    notice.value = say.buyers.from_link({score: `${score}`, closing: date(closing)});
    return '';
}

async function start(): Promise<void> {
    try {
        known.value = await cases();
    } catch (error) {
        if (error instanceof Refused) failed(error);
        else gone.value = true;
        if (!code_needed.value) window.setTimeout(() => void start(), 1500);
        return;
    }
    gone.value = false;
    code_needed.value = false;
    problems.value = [];
    begin();
}

/// After a reload the same buyer on the same view; on a first visit an example; else the names.
function begin(): void {
    const sitting = kept_sitting();
    facing.value = sitting?.facing === true;
    const mine = (sitting?.keys ?? [])
        .flatMap((key) => kept_buyer(key) ?? [])
        .filter((one) => book_of(one.inquiry.price_book) !== null);
    buyers.value = mine;
    list_away();
    const asked = view_in_address();
    const why = open_link();
    if (why !== '') {
        const last = mine.find((one) => one.key === sitting!.current) ?? mine[0];
        if (last) {
            view.value = asked ?? sitting!.view;
            show(last.key);
        } else if (away.value.length === 0) {
            view.value = asked ?? 'tour';
            open_first();
        }
        if (why) notice.value = why;
    }
    begun.value = true;
    watch_place();
}

/// Starts the page.
export function open_page(): void {
    window.addEventListener('storage', hear);
    window.addEventListener('hashchange', () => {
        const why = known.value ? open_link() : null;
        if (why) notice.value = why;
    });
    document.addEventListener('visibilitychange', look_at_day);
    document.addEventListener('visibilitychange', keep_all);
    window.addEventListener('pagehide', keep_all);
    window.addEventListener('focus', look_at_day);
    window.setInterval(look_at_day, 60_000);
    void start();
}

export function enter(code: string): void {
    set_code(code);
    void start();
}

/// Asked anew, so that nothing that was told for the desk is left in the page.
export function turn_to_buyer(): void {
    batch(() => {
        facing.value = true;
        closed.value = null;
        notice.value = '';
    });
    void refresh();
}

export function turn_back(): void {
    facing.value = false;
    void refresh();
}
