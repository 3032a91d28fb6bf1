// Asking about the buyer in hand: the answer that the page is drawn from, and what to do where none comes.
import {batch, effect, untracked} from '@preact/signals';

import {keep_seen} from '#side/keeping';

import type {Tour} from '../answers';
import {Refused, ask, cases} from '../engine';
import type {Inquiry, Options, Problem} from '../engine';
import {all_gone, mended} from '../mending';

import {
    answered,
    area_told,
    busy,
    buyer,
    code_needed,
    facing,
    gone,
    known,
    mending,
    problems,
    tour,
    toured,
} from './signals';
import type {Buyer} from './signals';
import {after_frame} from './writing';

export function failed(error: unknown): void {
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

/// What is asked besides where no buyer looks on: else no answer has anything for the desk alone.
export function desk_alone(): Options {
    return facing.value ? {} : {'office-notes': ''};
}

let waiting = 0;

export function scenario_names(inquiry: Inquiry): string[] {
    return (inquiry.scenarios ?? []).map((one: any) => one.name);
}

/// With the options of one area; empty: of all.
export async function tour_of(one: Buyer, area: string): Promise<Tour> {
    const names = scenario_names(one.inquiry);
    const hand = names.includes(one.hand) ? one.hand : names[0];
    return ask<Tour>('tour', one.inquiry, {
        ...(hand ? {scenario: hand} : {}),
        ...(area ? {area} : {}),
        ...desk_alone(),
    });
}

/// How long what was done waits for the figures that it leads to, in milliseconds: with them the
/// page is drawn once.
const a_moment = 80;

/// Asks about the buyer as it stands. An answer that was overtaken by a later touch is dropped.
/// `said`: shows what was done, with the answer or, where that takes longer, before it.
export async function refresh(said: () => void = () => undefined): Promise<boolean> {
    const one = buyer.value;
    if (!one) return false;
    const mine = ++waiting;
    const late = window.setTimeout(() => {
        busy.value = true;
        said();
    }, a_moment);
    try {
        return await refreshed(one, mine, said);
    } finally {
        window.clearTimeout(late);
    }
}

async function refreshed(one: Buyer, mine: number, said: () => void): Promise<boolean> {
    try {
        const answer = await tour_of(one, area_told.value);
        if (mine !== waiting) return true;
        batch(() => {
            said();
            tour.value = answer;
            answered.value = one.inquiry;
            problems.value = [];
            mending.value = null;
            gone.value = false;
            busy.value = false;
        });
        after_frame(() => {
            if (mine === waiting) keep_seen(one.key, answer);
        });
        return true;
    } catch (error) {
        if (mine !== waiting) return true;
        said();
        busy.value = false;
        mending.value = null;
        failed(error);
        if (error instanceof Refused) void look_for_a_way_on(one, error.problems, mine);
        return false;
    }
}

/// Where the price book has moved on: what the buyer would have to do without, and what it comes to.
/// Beside figures that are on the screen, what was typed wrong is told where it stands instead.
async function look_for_a_way_on(one: Buyer, wrong: Problem[], mine: number): Promise<void> {
    const book = known.value?.price_books.find((each) => each.id === one.inquiry.price_book);
    if (!book || (tour.value && !all_gone(wrong))) return;
    try {
        const found = await mended(one.inquiry, wrong, book, (inquiry) =>
            tour_of({...one, inquiry}, ''),
        );
        if (mine === waiting) mending.value = found;
    } catch {
        /* what is in the way stands on the screen */
    }
}

/// Another area is on the screen: it is asked about, too. What else `refresh` reads is no reason to ask
/// again: whoever changes that asks.
effect(() => {
    void area_told.value;
    untracked(() => {
        if (toured.value) void refresh();
    });
});
