// Changes of the buyer in hand: a touch, terms of a loan, the builder's money, a step back and forward.
import {batch} from '@preact/signals';

import type {Compare, Emptied, Form, Move, Option, Touch} from '../answers';
import {ask} from '../engine';
import type {Inquiry} from '../engine';
import {brief} from '../figures';
import {only, touched} from '../inquiry';
import {say} from '../language';
import {standing, with_use, without_money} from '../money';

import {refresh, scenario_names} from './asking';
import {loan_name} from './books';
import {
    buyer,
    buyers,
    change,
    closed,
    gone,
    mending,
    notice,
    problems,
    touched_now,
    tour,
} from './signals';
import type {Buyer, Change} from './signals';
import {bring_back} from './who';
import {keep} from './writing';

const longest_past = 200;

const longest_uses = 40;

/// What remembers a way to pay by its name goes along when the name changes.
function renamed(one: Buyer, next: Inquiry): Buyer {
    const before = scenario_names(one.inquiry);
    const after = scenario_names(next);
    if (before.length !== after.length) return one;
    const now = (name: string) => after[before.indexOf(name)] ?? name;
    return {
        ...one,
        hand: now(one.hand),
        uses: one.uses.map((use) => ({
            before: {...use.before, scenario: now(use.before.scenario)},
            after: {...use.after, scenario: now(use.after.scenario)},
        })),
    };
}

function replace(one: Buyer): void {
    touched_now();
    buyers.value = buyers.value.map((each) => (each.key === one.key ? one : each));
    keep(one);
}

/// Said of the inquiry in hand, unless it has changed meanwhile.
function say_that(of: Inquiry, what: Change): void {
    if (buyer.value?.inquiry === of) change.value = what;
}

/// What led to an inquiry, as long as the page is open: a step back or forward says it again.
const led_to = new WeakMap<Inquiry, Change>();

/// The next inquiry of the buyer in hand. A home that cannot stand is put back as it was; typed
/// terms of a loan stay, with what is wrong beside them.
export async function act(next: Inquiry, what: Change, typed = false): Promise<void> {
    const one = buyer.value;
    if (!one) return;
    const before = one.inquiry;
    batch(() => {
        replace({
            ...renamed(one, next),
            inquiry: next,
            past: [...one.past.slice(-longest_past), before],
            future: [],
        });
        led_to.set(next, what);
        notice.value = '';
        closed.value = null;
    });
    const fine = await refresh(() => say_that(next, what));
    const now = buyer.value;
    if (fine || typed || gone.value || !now || now.inquiry !== next) return;
    const why = problems.value
        .map((one) => (one.expected ? say.frame.found_expected(one) : one.found))
        .join('; ');
    replace({...renamed(now, before), inquiry: before, past: now.past.slice(0, -1)});
    change.value = null;
    await refresh();
    notice.value = say.frame.nothing_changed({why});
}

/// Where something was changed meanwhile, another way on is looked for already.
export function go_on(what: string): void {
    const found = mending.value;
    if (!found || found.of !== buyer.value?.inquiry) return;
    void act(found.next, {what, touch: null, remarks: []}, true);
}

export function touch(option: Option, form: Form, how: Touch): void {
    const one = buyer.value;
    if (!one) return;
    const name = brief(
        form.name ? say.common.with_form({name: option.name, form: form.name}) : option.name,
    );
    void act(touched(one.inquiry, option, form, how), {
        what: how.takes_out && form.state === 'chosen' ? say.options.taken_out({name}) : name,
        touch: how,
        remarks: remarks_of(how),
    });
}

/// Without what stands in parentheses at its end: the option that opens says all of it.
function in_short(jump: string): string {
    return jump.replace(/ \([^()]*\)$/, '');
}

export function remarks_of(how: Touch): string[] {
    const words: string[] = [];
    const along = {names: how.along.map(brief).join(', ')};
    const {and_with_it, together_with, instead_of} = say.options;
    if (along.names) words.push(how.takes_out ? and_with_it(along) : together_with(along));
    if (how.instead_of.length > 0)
        words.push(instead_of({names: how.instead_of.map(brief).join(', ')}));
    return words.concat(how.jumps.map(in_short));
}

/// Done, and what it came to is said once the engine has told, unless something else was touched
/// meanwhile.
export async function tell(
    done: Promise<void>,
    what: Change,
    figures: () => Promise<Partial<Change> | null>,
): Promise<void> {
    try {
        const [told] = await Promise.all([figures(), done]);
        if (!told) return;
        Object.assign(what, told); // a step back from here knows them, too
        if (change.value === what) change.value = {...what};
    } catch {
        // What is wrong with the change is said where it was made.
    }
}

/// What one way to pay comes to against another, on the same home.
async function against(inquiry: Inquiry, before: any, after: any): Promise<Partial<Change> | null> {
    const scenarios = [
        {...before, name: 'before'},
        {...after, name: 'after'},
    ];
    const answer = await ask<Compare>('compare', {...inquiry, scenarios});
    const difference = answer.scenarios[1].against_first;
    return difference.refusals ? null : {touch: {price: '0.00', ...difference}};
}

/// Terms of a way to pay changed.
export function change_terms(next: Inquiry, index: number, what: Change): void {
    const one = buyer.value;
    if (!one) return;
    const {inquiry} = one;
    void tell(act(next, what, true), what, () =>
        against(inquiry, inquiry.scenarios[index], next.scenarios[index]),
    );
}

/// The builder's money put to use under a loan, or taken out again, from an inquiry without it. What
/// was changed since that was asked about stays.
export function use_money(bare: Inquiry, next: Inquiry, scenario: string, what: string): void {
    const one = buyer.value;
    if (!one) return;
    const before = without_money(one.inquiry, one.uses);
    const after = with_use(before, bare, next, scenario);
    const use = {before: standing(before, scenario), after: standing(after, scenario)};
    replace({...one, uses: [...one.uses, use].slice(-longest_uses)});
    void act(after, {what, touch: null, remarks: []});
}

/// All that may still be taken out.
export function take_all_out(all: Emptied): void {
    const one = buyer.value;
    if (!one) return;
    void act(only(one.inquiry, all.keeps), {
        what: say.tour.all_taken_out,
        touch: all.refusals ? null : all,
        remarks: [],
    });
}

/// A difference the other way: the same digits with the other sign.
function other_way(amount: string): string {
    if (/^-?0(\.0*)?$/.test(amount)) return amount;
    return amount.startsWith('-') ? amount.slice(1) : `-${amount}`;
}

function back(move: Move | null): Move | null {
    if (!move) return null;
    const {price, per_month, cash_needed} = move;
    return {
        price: other_way(price),
        ...(per_month !== undefined && {per_month: other_way(per_month)}),
        ...(cash_needed !== undefined && {cash_needed: other_way(cash_needed)}),
    } as Move;
}

function step(what: string, touch: Move | null): Change {
    return {what, touch, remarks: []};
}

export function undo(): void {
    if (closed.value) return bring_back();
    const one = buyer.value;
    if (!one || one.past.length === 0) return;
    const inquiry = one.past[one.past.length - 1];
    replace({
        ...renamed(one, inquiry),
        inquiry,
        past: one.past.slice(0, -1),
        future: [one.inquiry, ...one.future],
    });
    const what = step(say.common.one_step_back, back(led_to.get(one.inquiry)?.touch ?? null));
    void refresh(() => say_that(inquiry, what));
}

export function redo(): void {
    const one = buyer.value;
    if (!one || one.future.length === 0) return;
    const [inquiry, ...future] = one.future;
    replace({...renamed(one, inquiry), inquiry, past: [...one.past, one.inquiry], future});
    const what = step(say.common.one_step_forward, led_to.get(inquiry)?.touch ?? null);
    void refresh(() => say_that(inquiry, what));
}

export function take_in_hand(scenario: string): void {
    const one = buyer.value;
    if (!one) return;
    const named = (name: string) => one.inquiry.scenarios.find((each: any) => each.name === name);
    const before = named(tour.value?.scenario.terms.name ?? '');
    replace({...one, hand: scenario});
    const what: Change = {
        what: say.frame.figures_under({loan: brief(loan_name(scenario))}),
        touch: null,
        remarks: [],
    };
    void tell(
        refresh(() => say_that(one.inquiry, what)).then(() => undefined),
        what,
        async () => before && against(one.inquiry, before, named(scenario)),
    );
}

/// A question's option changed: the inquiry stays as it is.
export function set_ask(name: string, value: string): void {
    const one = buyer.value;
    if (one) replace({...one, asks: {...one.asks, [name]: value}});
}

export function walk_to(area: string): void {
    const one = buyer.value;
    if (one) replace({...one, area});
}
