// Which part of a view is open: one at a time, and kept while one looks elsewhere.
import {signal} from '@preact/signals';

import type {View} from './store';

/// A part by its name, or no part; a view that is not here has none open yet.
const parts = signal<Partial<Record<View, string>>>({budget: 'afford'});

/// The part that is gone to, until it is on the screen.
export const sought = signal('');

export const is_open = (view: View, part: string) => parts.value[view] === part;

export function open_part(view: View, part: string): void {
    parts.value = {...parts.value, [view]: part};
}

export const turn_part = (view: View, part: string) =>
    open_part(view, is_open(view, part) ? '' : part);
