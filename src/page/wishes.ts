// The wishes of an inquiry: read, changed and put into the home; plain functions, no figures.
import type {FitHome, Option, Pick} from './answers';
import type {Inquiry} from './engine';
import {copy, with_pick} from './inquiry';

/// A wish as an inquiry holds it.
export interface Wish extends Pick {
    rank: number | string;
    weight?: string;
    must?: boolean;
}

/// A wish and its place in the inquiry, which is what a problem of the engine names.
export interface Placed {
    wish: Wish;
    place: number;
}

/// As the inquiry has them: a file need not be written in the order of the ranks.
export function wishes_of(inquiry: Inquiry): Wish[] {
    return inquiry.wishes ?? [];
}

/// The dearest first.
export function ranked(inquiry: Inquiry): Placed[] {
    return wishes_of(inquiry)
        .map((wish, place) => ({wish, place}))
        .sort((a, b) => Number(a.wish.rank) - Number(b.wish.rank));
}

/// These wishes and no others, at the ranks that they have.
export function with_wishes(inquiry: Inquiry, wishes: Wish[]): Inquiry {
    return {...copy(inquiry), wishes};
}

/// Ranked in the order in which they stand.
export function in_order(wishes: Wish[]): Wish[] {
    return wishes.map((wish, i) => ({...wish, rank: i + 1}));
}

/// Less dear than all the others; ranks that others share stay shared.
export function with_last(wishes: Wish[], wish: Wish): Wish[] {
    const last = Math.max(0, ...wishes.map((one) => Number(one.rank)));
    return [...wishes, {...wish, rank: last + 1}];
}

/// What a wish for an option asks for: of levels, the lowest that is not in the home.
export function wish_for(option: Option): Wish | null {
    if (option.kind === 'choice' || option.kind === 'allowance') return null;
    const form = option.forms.find((one) => one.state === 'offered' && !one.touch?.takes_out);
    if (!form) return null;
    return {option: option.id, ...(form.id ? {level: form.id} : {}), rank: 0};
}

/// "windows:triple" of a wish for a level, "deck" of one without.
export function id_of(wish: Wish): string {
    return wish.level ? `${wish.option}:${wish.level}` : wish.option;
}

/// The home with what a choice holds: the wishes as they were asked for, after what they need.
export function with_choice(inquiry: Inquiry, home: FitHome): Inquiry {
    const wishes = wishes_of(inquiry);
    let next = copy(inquiry);
    for (const one of home.needed) {
        const [option, level] = one.id.split(':');
        next = with_pick(next, level ? {option, level} : {option});
    }
    for (const one of home.chosen) {
        const wish = wishes.find((each) => id_of(each) === one.id);
        if (!wish) continue;
        const {rank: _rank, weight: _weight, must: _must, ...pick} = wish;
        next = with_pick(next, pick);
    }
    return next;
}
