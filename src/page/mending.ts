// What a buyer holds that is not to be had any more, and the nearest inquiry that is.
import type {Site, Tour} from './answers';
import {ask, Refused} from './engine';
import type {Cases, Inquiry, Problem} from './engine';
import {date} from './figures';
import {copy, without_refused} from './inquiry';
import {today} from './days';
import {say} from './language';

export type Book = Cases['price_books'][number];

/// One thing that cannot stay: left out, or another put in its place.
export interface Loss {
    left_out: string; ///< its id, or empty
    instead: string; ///< what is put in its place, in words
    why: string; ///< empty where the price book no longer has it at all
}

export interface Mending {
    of: Inquiry; ///< what it is the way on from
    losses: Loss[];
    next: Inquiry;
    answer: Tour;
}

/// Refusals that say a thing is not to be had, and not that it was typed wrong.
const not_to_be_had = new Set([
    'name-unknown',
    'book-expired',
    'book-not-yet',
    'lot-not-free',
    'plan-not-on-lot',
    'option-not-here',
    'option-needs',
    'options-exclude',
    'past-cutoff',
    'incentive-not-here',
]);

export function all_gone(problems: Problem[]): boolean {
    return problems.length > 0 && problems.every((one) => not_to_be_had.has(one.id));
}

function changed(instead: string): Loss {
    return {left_out: '', instead, why: ''};
}

/// The home on another lot, elevation or plan, as little of it changed as can be. Which lots are
/// free is asked of the bare home, which can always be answered.
async function rehoused(inquiry: Inquiry, book: Book): Promise<[Inquiry, Loss[]] | null> {
    if (!book.first) return null;
    const site = await ask<Site>('site', book.first);
    const plan = site.plans.find((one) => one.id === inquiry.plan);
    const elevation = plan?.elevations.find((one) => one.id === inquiry.elevation);
    const free = site.lots.filter(
        (lot) => lot.status === 'free' && plan && (lot.every_plan || lot.plans.includes(plan.id)),
    );
    const lot = free.find((one) => one.id === inquiry.lot) ?? free[0];
    const home =
        plan && lot
            ? {plan: plan.id, elevation: (elevation ?? plan.elevations[0]).id, lot: lot.id}
            : {plan: book.first.plan, elevation: book.first.elevation, lot: book.first.lot};
    const now = site.plans.find((one) => one.id === home.plan);
    const name = now?.elevations.find((one) => one.id === home.elevation)?.name;
    const losses: Loss[] = [];
    const other = say.way_on;
    if (home.plan !== inquiry.plan)
        losses.push(changed(other.other_plan({plan: now?.name ?? home.plan})));
    if (home.elevation !== inquiry.elevation)
        losses.push(changed(other.other_elevation({elevation: name ?? home.elevation})));
    if (home.lot !== inquiry.lot)
        losses.push(changed(other.other_lot({now: home.lot, was: inquiry.lot})));
    return losses.length > 0 ? [{...copy(inquiry), ...home}, losses] : null;
}

/// Asked as of a day on which the prices hold, today where it is one. Never without saying so.
export function redated(inquiry: Inquiry, book: Book): [Inquiry, Loss[]] | null {
    const now = today();
    const day = now < book.effective ? book.effective : now > book.expires ? book.expires : now;
    if (day === inquiry.as_of) return null;
    const next: Inquiry = {...copy(inquiry), as_of: day};
    if (next.contract && next.contract < day) next.contract = day;
    const said = say.way_on.other_day({now: date(day), was: date(inquiry.as_of)});
    return [next, [changed(said)]];
}

/// One step towards an inquiry that can be answered, or nothing.
async function step(
    inquiry: Inquiry,
    problems: Problem[],
    book: Book,
): Promise<[Inquiry, Loss[]] | null> {
    const at = (pattern: RegExp) => problems.find((one) => pattern.test(one.path ?? ''));
    if (at(/^\/as_of$/)?.id.startsWith('book-')) return redated(inquiry, book);
    if (at(/^\/rates$/)) {
        const {rates, ...next} = copy(inquiry);
        return [next, [changed(say.way_on.newest_rates({was: date(rates)}))]];
    }
    if (at(/^\/(plan|elevation|lot)$/)) return rehoused(inquiry, book);
    const less = without_refused(inquiry, problems);
    if (!less) return null;
    const out = less.fallen.map((one) => ({
        left_out: one.id,
        instead: '',
        why: one.unknown ? '' : one.why,
    }));
    return [less.next, out];
}

/// The nearest inquiry that the engine answers, with all that it takes to get there.
export async function mended(
    inquiry: Inquiry,
    problems: Problem[],
    book: Book,
    tour_of: (inquiry: Inquiry) => Promise<Tour>,
): Promise<Mending | null> {
    const losses: Loss[] = [];
    let next = inquiry;
    let wrong = problems;
    for (let tries = 0; tries < 12; ++tries) {
        const found = await step(next, wrong, book);
        if (!found) return null;
        next = found[0];
        losses.push(...found[1]);
        try {
            return {of: inquiry, losses, next, answer: await tour_of(next)};
        } catch (error) {
            if (!(error instanceof Refused)) throw error;
            wrong = error.problems;
        }
    }
    return null;
}
