// The wishes: the list of them, and which fit within the limits.
import type {Texts} from '../phrase';

const list = {
    none: 'No wishes yet. Add one here or on the tour.',
    level_of: ({name}: Texts<'name'>) => `Choice for ${name}`,
    how_much_of: ({name}: Texts<'name'>) => `Quantity: ${name}`,
    worth: 'worth',
    worth_of: ({name}: Texts<'name'>) => `Worth: ${name}`,
    take_off: ({name}: Texts<'name'>) => `Remove: ${name}`,
    something_else: 'Another wish',
    add: 'Add to the wish list',
    take_off_any: 'On the wish list: remove it',
    take_it_off: ({rank}: Texts<'rank'>) => `Wish no. ${rank}: remove it`,

    /// What was changed; "higher" and "lower" name the buttons too.
    on: ({name}: Texts<'name'>) => `${name}: on the wish list`,
    off: ({name}: Texts<'name'>) => `${name}: off the wish list`,
    dearer: ({name}: Texts<'name'>) => `${name}: higher on the list`,
    less_dear: ({name}: Texts<'name'>) => `${name}: lower on the list`,
    must_changed: ({name}: Texts<'name'>) => `${name}: must have`,
    worth_changed: ({name}: Texts<'name'>) => `${name}: worth`,
};

/// What is over a limit; not both are null.
type Over = Record<'monthly' | 'cash', string | null>;

function over({monthly, cash}: Over): string {
    return [monthly && `${monthly} a month`, cash && `${cash} in cash`]
        .filter(Boolean)
        .join(' and ');
}

/// A wish that would fit if the limits were raised by so much.
interface Next {
    name: string;
    raise: Over;
    give_up: string; ///< without which it would fit too
    gained: string | null; ///< what fits then
}

const next = ({name, raise}: {name: string; raise: Over}) =>
    `${name} would fit with ${over(raise)} more`;

export const wishes = {
    list,
    title: 'Which wishes fit',
    says:
        'Put the wish you want most first. Of all that the price book lets you combine, you see ' +
        'what is worth the most to you within your limits.',
    change_them: 'Change the wish list',
    month_may_come_to: 'Monthly payment, at most',
    cash_may_come_to: 'Cash needed, at most',
    every_lot: 'On every available lot that the plan fits',
    lots: ({count, best}: {count: number; best: string}) =>
        `${count} ${count === 1 ? 'lot' : 'lots'} checked. The best is lot ${best}.`,

    /// The limits to begin with, where nothing more fits into what the home takes as it is.
    raised: ({month, cash, name, raise}: Texts<'month' | 'cash' | 'name'> & {raise: Over}) =>
        `At ${month} a month and ${cash} in cash, no wish fits. The limits begin ` +
        `${over(raise)} higher, which is what ${name} takes. What fits there is what is worth ` +
        'the most to you.',
    fits: 'What fits',
    nothing_fits: 'Nothing fits',
    over_already: (limits: Over) =>
        `With its must-haves alone, the home is ${over(limits)} over your limits.`,
    needed: 'needed by a wish',
    held: 'already in the home',
    none_fits: 'No wish fits within these limits. Raise one of them.',
    then: ({
        price,
        month,
        cash,
        terms,
        estimate,
    }: Texts<'price' | 'month' | 'cash' | 'terms' | 'estimate'>) =>
        `The home then: contract price ${price}, ${month} a month, ${cash} cash needed. ` +
        `${terms}. ${estimate}`,
    proven: 'Proven: no other choice is worth more.',
    best_so_far: ({most, worth}: Texts<'most' | 'worth'>) =>
        `Best so far: this choice is worth ${worth}. No choice can be worth more than ${most}.`,
    incentives_lost: ({names}: Texts<'names'>) => `Not given on this lot: ${names}.`,
    put_in: 'Add these to the home',
    were_put_in: ({names}: Texts<'names'>) => `Added: ${names}`,
    were_put_in_on: ({names, lot}: Texts<'names' | 'lot'>) => `Added: ${names}, on lot ${lot}`,

    left_out: 'Left out',
    by_the_loan: 'the loan would not be available',
    too_much: (limits: Over) => `${over(limits)} too much`,
    left_out_why: ({
        why,
        needs,
        in_place_of,
    }: Texts<'why'> & {needs: string | null; in_place_of: string | null}) =>
        why +
        (needs ? `; it needs ${needs}` : '') +
        (in_place_of ? `; it would replace ${in_place_of}` : ''),
    next_never: (one: Pick<Next, 'name' | 'raise'>) =>
        `${next(one)}. Within the limits, no choice includes it.`,
    next_not_found: (one: Pick<Next, 'name' | 'raise'>) =>
        `${next(one)}. Within the limits, the search found no choice that includes it.`,
    next_or: ({give_up, gained, ...one}: Next) =>
        `${next(one)}, or without ${give_up}` +
        (gained ? `. Then ${gained} would fit too` : '') +
        '.',
};
