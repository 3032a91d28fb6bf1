// Changes of an inquiry: plain functions from one inquiry to the next.
import type {Form, Option, Pick, Touch} from './answers';
import type {Inquiry, Problem} from './engine';
import {say} from './language';

type Written = string | Pick;

export function copy(inquiry: Inquiry): Inquiry {
    return JSON.parse(JSON.stringify(inquiry));
}

export function option_of(pick: Written): string {
    return typeof pick === 'string' ? pick : pick.option;
}

/// The code of a use as a person's file may have it: "closing costs" is closing_costs.
export function as_code(word: string): string {
    return word.replace(/[ -]/g, '_');
}

function picks_of(inquiry: Inquiry): Written[] {
    return Array.isArray(inquiry.selections) ? inquiry.selections : [];
}

export function without(inquiry: Inquiry, options: string[]): Inquiry {
    const next = copy(inquiry);
    next.selections = picks_of(next).filter((pick) => !options.includes(option_of(pick)));
    return next;
}

/// Without its picks but these options'.
export function only(inquiry: Inquiry, options: string[]): Inquiry {
    const next = copy(inquiry);
    next.selections = picks_of(next).filter((pick) => options.includes(option_of(pick)));
    return next;
}

/// A pick replaced where it stands, or put at the end.
export function with_pick(inquiry: Inquiry, pick: Pick): Inquiry {
    const next = copy(inquiry);
    const picks = picks_of(next);
    const at = picks.findIndex((present) => option_of(present) === pick.option);
    const short = Object.keys(pick).length === 1 ? pick.option : pick;
    if (at >= 0) picks[at] = short;
    else picks.push(short);
    next.selections = picks;
    return next;
}

/// The pick of an option as the inquiry holds it, or one to begin with.
export function present(inquiry: Inquiry, option: string): Pick {
    const found = picks_of(inquiry).find((pick) => option_of(pick) === option);
    return typeof found === 'object' ? {...found} : {option};
}

/// What the engine said that a touch brings, drops and places, done to the inquiry.
export function touched(inquiry: Inquiry, option: Option, form: Form, touch: Touch): Inquiry {
    const takes_out = touch.takes_out ? [option.id] : [];
    let next = without(inquiry, [...touch.drops, ...takes_out]);
    if (touch.takes_out) return next;
    for (const pick of touch.brings) next = with_pick(next, pick);
    const pick = present(inquiry, option.id);
    if (option.kind === 'levels') pick.level = form.id;
    if (option.kind === 'choice') pick.choice = form.id;
    return with_pick(next, pick);
}

export function with_quantity(inquiry: Inquiry, option: Option, quantity: string): Inquiry {
    return with_pick(inquiry, {...present(inquiry, option.id), quantity});
}

export function with_spend(inquiry: Inquiry, option: Option, spend: string): Inquiry {
    return with_pick(inquiry, {...present(inquiry, option.id), spend});
}

/// An incentive used so and no other way; no uses: not at all. It keeps its place in the order.
export function with_incentive(
    inquiry: Inquiry,
    id: string,
    uses: {use: string; amount?: string}[],
): Inquiry {
    const next = copy(inquiry);
    const before: any[] = next.incentives ?? [];
    const at = before.findIndex((one) => one.id === id);
    const others = before.filter((one) => one.id !== id);
    const place = at < 0 ? others.length : at;
    others.splice(place, 0, ...uses.map((one) => ({id, ...one})));
    next.incentives = others;
    return next;
}

const lists: Record<string, (item: any) => string> = {
    selections: (item) => String(option_of(item ?? '')),
    wishes: (item) => String(option_of(item ?? '')),
    incentives: (item) => String(item?.id),
};

/// What could not go along, and why; the price book may have it no longer.
export interface Fallen {
    id: string;
    why: string;
    unknown: boolean;
}

/// What the engine refuses of a changed home, taken out: items of lists that cannot go along.
/// Nothing where something else is wrong too.
export function without_refused(
    inquiry: Inquiry,
    problems: Problem[],
): {next: Inquiry; fallen: Fallen[]} | null {
    const next = copy(inquiry);
    const out = new Map<string, Set<number>>();
    const fallen: Fallen[] = [];
    for (const problem of problems) {
        const match = /^\/(selections|wishes|incentives)\/(\d+)/.exec(problem.path ?? '');
        if (!match) return null;
        const [, list, place] = match;
        const indexes = out.get(list) ?? out.set(list, new Set()).get(list)!;
        if (indexes.has(Number(place))) continue;
        indexes.add(Number(place));
        const id = lists[list](next[list][Number(place)]);
        const why = problem.about?.found ?? problem.found;
        fallen.push({id, why, unknown: problem.id === 'name-unknown'});
    }
    for (const [list, indexes] of out) {
        next[list] = next[list].filter((_: unknown, index: number) => !indexes.has(index));
    }
    return fallen.length > 0 ? {next, fallen} : null;
}

/// What a link may hold: the home alone. No income, debts, cash, names or dates.
export function selection_of(inquiry: Inquiry): Inquiry {
    const {price_book, plan, elevation, lot, selections} = inquiry;
    return {price_book, plan, elevation, lot, selections: selections ?? []};
}

/// For questions that nobody's income and debts have a part in: they stay here, and what was asked
/// before a change of them is not asked again.
export function without_means(inquiry: Inquiry | null): Inquiry | null {
    if (!inquiry) return null;
    const {
        income: _income,
        debts: _debts,
        income_taxes: _taxes,
        household: _household,
        ...rest
    } = inquiry;
    return rest;
}

/// A home out of a link, on the dates and ways to pay of a bare one.
export function with_selection(bare: Inquiry, selection: Inquiry): Inquiry {
    const {comment: _says, ...rest} = copy(bare);
    return {...rest, ...selection_of(selection), buyer: say.buyers.link_name};
}

export function to_link(inquiry: Inquiry): string {
    const bytes = new TextEncoder().encode(JSON.stringify(selection_of(inquiry)));
    const text = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
    return `#home=${text.replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '')}`;
}

/// Whether a link holds a home as links are made: what is in it may be sold by now, but is one.
function is_home(home: any): boolean {
    const words = (one: any) => typeof one === 'string';
    const pick = (one: any) => words(one) || (typeof one === 'object' && words(one?.option));
    return (
        [home?.price_book, home?.plan, home?.elevation, home?.lot].every(words) &&
        Array.isArray(home.selections) &&
        home.selections.every(pick)
    );
}

/// Nothing where the link is damaged.
export function from_link(fragment: string): Inquiry | null {
    try {
        const letters = /^#home=([\w-]+)$/.exec(fragment)![1];
        const text = atob(letters.replace(/-/g, '+').replace(/_/g, '/'));
        const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
        const home = JSON.parse(new TextDecoder().decode(bytes));
        return is_home(home) ? home : null;
    } catch {
        return null;
    }
}
