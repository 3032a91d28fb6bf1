// Who is open: taken up, put away, closed and brought back, new.
import {batch} from '@preact/signals';

import {all_kept, forget_buyer, kept_buyer} from '#side/keeping';

import type {Tour} from '../answers';
import type {Inquiry} from '../engine';
import {copy} from '../inquiry';
import type {Kept} from '../kept';
import {say} from '../language';
import {take_place, view} from '../place';

import {refresh, scenario_names} from './asking';
import {
    answered,
    away,
    buyer,
    buyers,
    change,
    closed,
    current,
    mending,
    notice,
    problems,
    tour,
} from './signals';
import type {Buyer} from './signals';
import {keep, keep_all, list_away, to_keep} from './writing';

function new_key(): string {
    return `${Date.now().toString(36)}${Math.floor(Math.random() * 1e6).toString(36)}`;
}

function add(inquiry: Inquiry, example: boolean, hand: string): Buyer {
    const one: Buyer = {
        key: new_key(),
        inquiry: copy(inquiry),
        hand: hand || (scenario_names(inquiry)[0] ?? ''),
        area: '',
        asks: {},
        uses: [],
        past: [],
        future: [],
        ...(example ? {example} : {}),
    };
    buyers.value = [...buyers.value, one];
    return one;
}

/// Nothing of the buyer before stays on the screen: never one's figures under another's name.
function clear(): void {
    tour.value = null;
    answered.value = null;
    change.value = null;
    problems.value = [];
    mending.value = null;
    notice.value = '';
    closed.value = null;
}

/// `whole`: on the view where it was left, too.
export function show(key: string, whole = false): void {
    batch(() => {
        const shown = key === current.value ? [tour.value, answered.value] : [null, null];
        clear();
        [tour.value, answered.value] = shown as [Tour | null, Inquiry | null];
        if (key !== current.value || whole) take_place(key, whole);
        current.value = key;
    });
    if (buyer.value) keep(buyer.value);
    list_away();
    void refresh();
}

/// All who are kept but the one in hand, the last one that something was done with first.
export function all_others(): Kept[] {
    return all_kept().filter((one) => one.key !== current.value);
}

/// One of those who are kept, by name.
export function take_up(key: string): void {
    keep_all();
    const one = kept_buyer(key);
    if (!one) return list_away();
    if (!buyers.value.some((each) => each.key === key)) buyers.value = [...buyers.value, one];
    show(key, true);
}

function without_buyer(key: string): void {
    const others = buyers.value.filter((one) => one.key !== key);
    const next = others.some((one) => one.key === current.value) ? current.value : others[0]?.key;
    batch(() => {
        buyers.value = others;
        if (next) return;
        clear();
        take_place('', false);
        current.value = '';
    });
    list_away();
    if (next) show(next);
}

/// Off the screen; the name stays on the list.
export function put_away(key: string): void {
    without_buyer(key);
}

export function put_all_away(): void {
    batch(() => {
        clear();
        take_place('', false);
        buyers.value = [];
        current.value = '';
        view.value = 'tour';
    });
    list_away();
}

/// A name that no open buyer has: "Buyer 1 (2)".
function fresh_name(name: string, others: string[] = []): string {
    const taken = new Set([...buyers.value.map((one) => one.inquiry.buyer), ...others]);
    let fresh = name;
    for (let i = 2; taken.has(fresh); ++i) fresh = say.common.numbered({name, number: i});
    return fresh;
}

/// Likewise, and nobody who is kept has it either.
export function new_name(name: string): string {
    return fresh_name(
        name,
        away.value.map((one) => one.name),
    );
}

/// `hand`: the loan to begin with, by its name.
export function open(inquiry: Inquiry, example = false, hand = ''): void {
    const name = fresh_name(inquiry.buyer || say.buyers.unnamed);
    const one = add({...inquiry, buyer: name}, example, hand);
    show(one.key);
}

/// A new buyer: what is assumed of one is said.
export function open_new(first: Inquiry, hand = ''): void {
    open(first, false, hand);
    notice.value = first.comment;
}

/// Gone from this browser at once; while the page says so, it can be brought back.
export function close(key: string): void {
    const place = buyers.value.findIndex((one) => one.key === key);
    if (place < 0) return;
    const one = buyers.value[place];
    to_keep.delete(key);
    forget_buyer(key);
    without_buyer(key);
    closed.value = {one, place};
}

export function bring_back(): void {
    if (!closed.value) return;
    const {one, place} = closed.value;
    buyers.value = [...buyers.value.slice(0, place), one, ...buyers.value.slice(place)];
    show(one.key);
}
