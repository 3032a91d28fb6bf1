// What is open: options by their ids, sections of a view by names with a colon in them. Of the parts
// that are folded in a view, one is open at a time.
import {signal} from '@preact/signals';

import type {View} from './place';

export const opened = signal<ReadonlySet<string>>(new Set());

export function set_open(id: string, open: boolean): void {
    if (opened.value.has(id) === open) return;
    const next = new Set(opened.value);
    if (open) next.add(id);
    else next.delete(id);
    opened.value = next;
}

/// For a <details> that is found open again.
export function stays_open(id: string) {
    return {
        open: opened.value.has(id),
        onToggle: (event: {currentTarget: EventTarget | null}) =>
            set_open(id, (event.currentTarget as HTMLDetailsElement).open),
    };
}

/// Open where nobody has touched a part of the view yet.
const first: Partial<Record<View, string>> = {budget: 'afford'};

/// The part that is gone to, until it is on the screen.
export const sought = signal('');

const start_of = (view: View) => `part:${view}:`;

/// The open part of a view; empty: all are closed.
function part_of(view: View): string {
    const start = start_of(view);
    const id = [...opened.value].find((one) => one.startsWith(start));
    return id === undefined ? (first[view] ?? '') : id.slice(start.length);
}

export const is_open = (view: View, part: string) => part_of(view) === part;

/// `part` empty: closes them all.
export function open_part(view: View, part: string): void {
    const start = start_of(view);
    const others = [...opened.value].filter((one) => !one.startsWith(start));
    opened.value = new Set([...others, start + part]);
}

export const turn_part = (view: View, part: string) =>
    open_part(view, is_open(view, part) ? '' : part);
