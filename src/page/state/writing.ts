// What was changed is kept in this browser, a frame after it is painted.
import {all_kept, keep_buyer} from '#side/keeping';

import {say} from '../language';

import {away, buyers, notice} from './signals';
import type {Buyer} from './signals';

/// Changed, and not written yet: a frame is painted first, writing takes as long as drawing it.
export const to_keep = new Map<string, Buyer>();

export function keep(one: Buyer): void {
    const first = to_keep.size === 0;
    to_keep.set(one.key, one);
    if (first) after_frame(keep_all);
}

export function keep_all(): void {
    for (const one of to_keep.values())
        if (!keep_buyer(one)) notice.value = say.frame.keeps_nothing;
    to_keep.clear();
}

/// Where nobody looks no frame is painted.
export function after_frame(what: () => void): void {
    if (document.hidden) what();
    else requestAnimationFrame(() => window.setTimeout(what));
}

/// The names of those who are kept and not open in this window.
export function list_away(): void {
    keep_all();
    const open_here = new Set(buyers.value.map((one) => one.key));
    away.value = all_kept().filter((one) => !open_here.has(one.key));
}
