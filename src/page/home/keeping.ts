// What the browser at home keeps: what was changed in the one home of the file.
import type {Tour} from '../answers';
import type {Inquiry} from '../engine';
import type {Kept, Seen} from '../kept';
import type {Place} from '../place';
import type {Buyer} from '../state/signals';
import {changes_of} from '../changes';
import type {Changes} from '../changes';
import {keep_text, kept_text} from './store';

let begun_with: Inquiry = {};

/// From now on, what differs from this inquiry is kept.
export function keep_against(inquiry: Inquiry): void {
    begun_with = inquiry;
}

/// What is kept: the changes, and the loan in hand.
export interface KeptChanges {
    changes: Changes | null;
    hand: string;
}

export function kept_changes(): KeptChanges | null {
    try {
        const one = JSON.parse(kept_text('') ?? 'null');
        return typeof one?.hand === 'string' && typeof one.changes === 'object' ? one : null;
    } catch {
        return null;
    }
}

export function keep_buyer(one: Buyer): boolean {
    const changes = changes_of(one.inquiry, begun_with);
    const same = !changes && one.hand === (begun_with.scenarios?.[0]?.name ?? '');
    return keep_text('', same ? null : JSON.stringify({changes, hand: one.hand}));
}

/// Nobody else is kept, and nobody is closed.
export const kept_buyer = (_key: string): Buyer | null => null;
export const all_kept = (): Kept[] => [];
export const forget_buyer = (_key: string): void => undefined;

/// The price book never moves on.
export const keep_seen = (_key: string, _answer: Tour): void => undefined;
export const seen_of = (_key: string): Seen | null => null;

/// As far down as the sheet was read before the page took over.
export const kept_place = (_key: string): Place | null => ({
    view: 'sheet',
    opened: [],
    tops: {sheet: Math.round(window.scrollY)},
});
export const keep_place = (_key: string, _place: Place): void => undefined;
