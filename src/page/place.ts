// Where somebody is on the page: the view, what is open in it, how far down; each buyer has a place.
// The address says the view, so the browser's own way back leads through the views.
import {effect, signal} from '@preact/signals';

import {keep_place, kept_place} from '#side/keeping';
import {plain_view, views} from '#side/views';

import {opened} from './opened';

export type View = (typeof views)[number];

/// How far down each view was left, in pixels.
type Tops = Partial<Record<View, number>>;

export interface Place {
    view: View;
    opened: string[];
    tops: Tops;
}

const most_opened = 200;

export const view = signal<View>(plain_view);

let of = ''; // whose place it is
let tops: Tops = {};

// ---- the way down

/// Where the page is to be once what is shown there is long enough; null: where it is.
let wanted: number | null = null;
let there = 0; // a timer: the page has been there for a while

function stop_going(): void {
    wanted = null;
    window.clearTimeout(there);
}

/// What is still to come above may push it away again.
function go_down(): void {
    if (wanted === null) return;
    window.scrollTo(0, wanted);
    window.clearTimeout(there);
    if (Math.abs(window.scrollY - wanted) <= 1) there = window.setTimeout(stop_going, 1000);
}

function go_down_to(top: number): void {
    stop_going();
    window.scrollTo(0, 0);
    if (top > 0) wanted = top;
    go_down();
}

function remember_top(): void {
    if (wanted !== null) return;
    tops = {...tops, [view.peek()]: Math.round(window.scrollY)};
}

function keep(): void {
    if (!of) return;
    keep_place(of, {view: view.peek(), opened: [...opened.peek()].slice(-most_opened), tops});
}

// ---- whose place it is

/// Nobody's, or another's, as it was left. `with_view`: also the view.
export function take_place(key: string, with_view: boolean): void {
    const place = key ? kept_place(key) : null;
    of = key;
    tops = place?.tops ?? {};
    opened.value = new Set(place?.opened ?? []);
    if (with_view && place && views.includes(place.view)) view.value = place.view;
    go_down_to(tops[view.peek()] ?? 0);
}

/// Onto a view, at its top.
export function go_to_view(next: View): void {
    stop_going();
    tops = {...tops, [next]: 0};
    view.value = next;
    window.scrollTo(0, 0);
}

// ---- the address

/// The view that the address names, if it names one.
export function view_in_address(): View | null {
    return views.find((one) => location.hash === `#${one}`) ?? null;
}

/// The view that a first visitor sees is the plain address.
function address_of(one: View): string {
    return location.pathname + location.search + (one === plain_view ? '' : `#${one}`);
}

/// Without a name or anything else of a buyer.
export function set_address(): void {
    history.replaceState(null, '', address_of(view.peek()));
}

/// One step back or forward in the browser.
function walked(): void {
    const there = view_in_address() ?? (location.hash === '' ? plain_view : null);
    if (!there || there === view.peek()) return;
    view.value = there;
    go_down_to(tops[there] ?? 0);
}

/// From now on the address follows the view, and the place is kept.
export function watch_place(): void {
    history.scrollRestoration = 'manual';
    set_address();
    effect(() => {
        const address = address_of(view.value);
        const here = location.pathname + location.search + location.hash;
        if (address !== here) history.pushState(null, '', address);
    });
    effect(() => {
        void [view.value, opened.value];
        keep();
    });
    window.addEventListener('popstate', walked);
    let waiting = 0;
    window.addEventListener(
        'scroll',
        () => {
            remember_top();
            window.clearTimeout(waiting);
            waiting = window.setTimeout(keep, 200);
        },
        {passive: true},
    );
    window.addEventListener('pagehide', keep);
    for (const touch of ['wheel', 'touchstart', 'pointerdown', 'keydown'])
        window.addEventListener(touch, stop_going, {passive: true});
    new ResizeObserver(go_down).observe(document.body);
}
