// What was changed at home against the inquiry that was sent: selections and loans, and never income,
// debts, cash, score or a name.
import type {Inquiry} from './engine';
import {copy} from './inquiry';

const members = [
    'plan',
    'elevation',
    'lot',
    'selections',
    'wishes',
    'incentives',
    'credits',
    'scenarios',
] as const;

export type Changes = Record<string, unknown>;

const alike = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

/// By member; null: it is there no more. Nothing at all: null.
export function changes_of(inquiry: Inquiry, sent: Inquiry): Changes | null {
    const changed = members.filter((one) => !alike(inquiry[one], sent[one]));
    if (changed.length === 0) return null;
    return Object.fromEntries(changed.map((one) => [one, inquiry[one] ?? null]));
}

export function with_changes(sent: Inquiry, changes: Changes | null): Inquiry {
    const next = copy(sent);
    for (const one of members) {
        if (!changes || !(one in changes)) continue;
        if (changes[one] === null) delete next[one];
        else next[one] = copy(changes[one] as Inquiry);
    }
    return next;
}
