// The wishes: the list of them, and which fit within the limits.
import type {Texts} from '../phrase';

const list = {
    none: 'No wish yet: add one here, or on the tour.',
    level_of: ({name}: Texts<'name'>) => `Level of ${name}`,
    how_much_of: ({name}: Texts<'name'>) => `How much of ${name}`,
    worth: 'worth',
    worth_of: ({name}: Texts<'name'>) => `Worth of ${name}`,
    take_off: ({name}: Texts<'name'>) => `Take ${name} off`,
    something_else: 'Something else',
    add: 'Add to the wishes',
    take_it_off: ({rank}: Texts<'rank'>) => `Wish no. ${rank}: take it off`,

    /// What was changed.
    on: ({name}: Texts<'name'>) => `${name}: on the wish list`,
    off: ({name}: Texts<'name'>) => `${name}: off the wish list`,
    dearer: ({name}: Texts<'name'>) => `${name}: dearer`,
    less_dear: ({name}: Texts<'name'>) => `${name}: less dear`,
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
        'The dearest first. Of all that the price book lets stand together, the choice of the ' +
        'most worth within the limits.',
    month_may_come_to: 'A month may come to',
    cash_may_come_to: 'All the cash may come to',
    every_lot: 'On every free lot that the plan fits',
    lots: ({count, best}: {count: number; best: string}) =>
        `${count} ${count === 1 ? 'lot' : 'lots'} looked at; the best is lot ${best}.`,

    fits: 'What fits',
    nothing_fits: 'Nothing fits',
    over_already: (limits: Over) => `The home with its must-haves alone is ${over(limits)} over.`,
    needed: 'needed by a wish',
    held: 'in the home already',
    none_fits: 'No wish fits within these limits: raise one of them.',
    then: ({
        price,
        month,
        cash,
        terms,
        estimate,
    }: Texts<'price' | 'month' | 'cash' | 'terms' | 'estimate'>) =>
        `Then ${price}, ${month} a month, ${cash} in cash. ${terms}. ${estimate}`,
    proven: 'Proven: no other choice is worth more.',
    best_so_far: ({most, worth}: Texts<'most' | 'worth'>) =>
        `Best so far: no choice can be worth more than ${most}, this one is worth ${worth}.`,
    incentives_lost: ({names}: Texts<'names'>) => `Not given on this lot: ${names}.`,
    put_in: 'Put these into the home',
    were_put_in: ({names}: Texts<'names'>) => `Put in: ${names}`,
    were_put_in_on: ({names, lot}: Texts<'names' | 'lot'>) => `Put in: ${names}, on lot ${lot}`,

    left_out: 'Left out',
    by_the_loan: 'the loan could not be had',
    too_much: (limits: Over) => `${over(limits)} too much`,
    left_out_why: ({
        why,
        needs,
        in_place_of,
    }: Texts<'why'> & {needs: string | null; in_place_of: string | null}) =>
        why +
        (needs ? `; it needs ${needs}` : '') +
        (in_place_of ? `; in place of ${in_place_of}` : ''),
    next_never: (one: Pick<Next, 'name' | 'raise'>) =>
        `${next(one)}; within the limits no choice holds it.`,
    next_not_found: (one: Pick<Next, 'name' | 'raise'>) =>
        `${next(one)}; the search found no choice within the limits that holds it.`,
    next_or: ({give_up, gained, ...one}: Next) =>
        `${next(one)}, or without ${give_up}` +
        (gained ? `, and then ${gained} fits too` : '') +
        '.',
};
