// What is on the screen: who is open, the answer that is shown, what stands in the way. Signals alone;
// what changes them is beside this file.
import {computed, signal} from '@preact/signals';

import type {Move, Tour} from '../answers';
import type {Cases, Inquiry, Problem} from '../engine';
import {today} from '../days';
import type {Kept} from '../kept';
import type {Mending} from '../mending';
import type {Use} from '../money';
import {view} from '../place';
import {shared} from '../shared';

export interface Buyer {
    key: string;
    inquiry: Inquiry;
    hand: string; ///< name of the scenario in hand
    area: string; ///< of the tour: an id, `all_areas` or `floor_plan`
    asks: Record<string, string>; ///< what is asked besides the inquiry, as options of a question
    uses: Use[]; ///< of the builder's money, so that another takes the place of the one before
    past: Inquiry[];
    future: Inquiry[];
    example?: boolean; ///< shown to a first visitor
    at?: number; ///< when it was last kept
}

/// In the tour, what was chosen in the whole home: no id has a star.
export const all_areas = '*';

/// Likewise, the drawing of the home.
export const floor_plan = '#';

/// What is looked for among the options; empty: nothing is.
export const looked_for = signal('');

/// What the last touch changed, in the engine's figures.
export interface Change {
    what: string;
    touch: Move | null;
    remarks: string[];
}

export const known = signal<Cases | null>(null);

export const buyers = signal<Buyer[]>([]);

export const current = signal('');

export const tour = signal<Tour | null>(null);

/// The inquiry that the tour answers: the others ask about it too, so that all figures agree.
export const answered = signal<Inquiry | null>(null);

/// The way to pay that it is under, and what stands above it.
export const hand = computed(() => tour.value?.scenario.terms.name ?? '');

export const heading = computed(() => {
    last_heading = shared(last_heading, tour.value?.heading ?? null);
    return last_heading;
});

let last_heading: Tour['heading'] | null = null;

export const problems = signal<Problem[]>([]);

export const gone = signal(false);

export const code_needed = signal(false);

export const busy = signal(false);

export const change = signal<Change | null>(null);

export const notice = signal('');

/// The buyer looks on: nothing of anybody else is on the screen, and nothing that is the agent's.
export const facing = signal(false);

/// The way on where the home or the day is not to be had any more.
export const mending = signal<Mending | null>(null);

/// Who was closed last, and where among the others: to be brought back.
export const closed = signal<{one: Buyer; place: number} | null>(null);

/// Who is kept in this browser and not open in this window.
export const away = signal<Kept[]>([]);

export const buyer = computed(() => buyers.value.find((one) => one.key === current.value) ?? null);

// What changes with every touch stays out of the following, so that what reads them is not drawn anew.

export const somebody = computed(() => buyer.value !== null);
export const is_example = computed(() => buyer.value?.example === true);
export const has_past = computed(() => (buyer.value?.past.length ?? 0) > 0);
export const has_future = computed(() => (buyer.value?.future.length ?? 0) > 0);
export const toured = computed(() => tour.value !== null);

/// Where in the tour the buyer is.
export const area = computed(() => buyer.value?.area ?? '');

/// The areas that there are: of the home or, before it is known, of its price book.
function area_ids(): string[] {
    if (tour.value) return tour.value.all_areas.map((one) => one.id);
    const book = buyer.value?.inquiry.price_book;
    return known.value?.price_books.find((one) => one.id === book)?.areas ?? [];
}

/// The area that the tour is in: the first where the buyer was in none, or in one that is gone.
export const area_in_hand = computed(() => {
    const ids = area_ids();
    return ids.includes(area.value) ? area.value : (ids[0] ?? '');
});

/// The area whose options are on the screen; empty: those of all areas may be.
export const area_told = computed(() => {
    const finds = view.value === 'tour' && (looked_for.value !== '' || area.value === all_areas);
    return finds || view.value === 'budget' ? '' : area_in_hand.value;
});

let last_touch = today();

export function touched_now(): void {
    last_touch = today();
}

/// Whether the last touch was on this day.
export function touched_today(): boolean {
    return last_touch === today();
}
