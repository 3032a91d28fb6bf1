// What a buyer's means allow: how much home, its limits, what a change of income moves.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

/// The parts of the view.
const parts = {
    afford: 'How much home',
    wishes: 'Wishes',
    builders_money: "The builder's money",
    later: 'Now or later',
};

const means = {
    income: 'Gross income a month',
    debts: 'Debts a month',
    income_taxes: 'Taxes on the income a month',
    cash: 'Cash there is',
    household: 'Persons in the household',
    reserves: 'Kept in reserve',
    reserves_label: 'Months of the payment kept in reserve',
    months: 'months',
    automated: 'As if automated underwriting had accepted it',
    note:
        'All of this stays in this browser: it is in no link, no log and not on the sheet. Taxes ' +
        'and persons are asked for the residual income of VA loans alone.',
};

/// The limits that a price is held against; a ratio is told where there is one.
const limits = {
    front_ratio: ({ratio}: {ratio: string | null}) =>
        `housing${ratio ? ` at ${ratio} of income` : ''}`,
    back_ratio: ({ratio}: {ratio: string | null}) =>
        `housing and debts${ratio ? ` at ${ratio} of income` : ''}`,
    back_by_residual_income: 'housing and debts by what is left to live on',
    cash: 'the cash there is',
    program: 'the limit of the program itself',
    residual_income: 'what must be left to live on',

    /// Cash is held against once, the others every month.
    too_much: ({amount, monthly}: Texts<'amount'> & {monthly: boolean}) =>
        `${amount}${monthly ? ' a month' : ''} too much`,
    left: ({amount, monthly}: Texts<'amount'> & {monthly: boolean}) =>
        `${amount}${monthly ? ' a month' : ''} left`,
    takes: ({needed, most, monthly}: Texts<'needed' | 'most'> & {monthly: boolean}) =>
        `takes ${needed} of at most ${most}${monthly ? ' a month' : ''}`,
};

/// What the next price up takes, each where it is needed.
interface Step {
    price: string;
    cash: string | null;
    income: string | null;
    after_tax: string | null;
    less_debts: string | null; ///< instead of more income
    lower_rate: {rate: string; points: string} | null; ///< instead of all of it
}

function step({price, cash, income, after_tax, less_debts, lower_rate}: Step): string {
    const or_debts = less_debts ? `, or ${less_debts} less in debts` : '';
    const parts: string[] = [];
    if (cash) parts.push(`${cash} more cash`);
    if (income) parts.push(`${income} more income a month${after_tax ? '' : or_debts}`);
    if (after_tax) parts.push(`${after_tax} more a month after taxes${or_debts}`);
    if (parts.length === 0) return `A home of ${price} takes nothing more.`;
    const instead = lower_rate
        ? ` Instead of all that a note rate of ${lower_rate.rate} at ${lower_rate.points} points would do.`
        : '';
    return `A home of ${price} takes ${parts.join(', and ')}.${instead}`;
}

const reach = {
    label: 'The way to pay that is looked at',
    bar: ({price, within}: Texts<'price'> & {within: boolean}) =>
        `up to ${price}; the home in hand is ${within ? 'not above' : 'above'} it`,
    no_price: 'no price fits',
    no_price_since: ({why}: Texts<'why'>) => `no price fits: ${why}`,
    bound_by: ({
        limits,
        no_ratio,
        past_scale,
    }: Texts<'limits'> & {no_ratio: boolean; past_scale: boolean}) =>
        `bound by ${limits}` +
        (no_ratio ? '; the income is held to no ratio' : '') +
        (past_scale ? '; past the end of this scale' : ''),
    within: 'reaches the home in hand',
    short: 'short of the home in hand',
    key_price: 'highest contract price',
    key_home: ({price}: Texts<'price'>) => `the home in hand, ${price}`,
};

/// If the income changes.
const moves = {
    title: 'If the income changes before the closing',
    label: 'Limits by income',
    income: 'Income a month',
    front: 'Housing takes',
    back: 'With debts',
    at_todays_rate: "At today's rate",
    within_up_to: 'Within up to',
    as_it_stands: 'as it stands',
    within: 'within',
    over: 'over',
    no_rate: 'no rate',
    least: ({income, automated}: Texts<'income'> & {automated: string | null}) =>
        `The least income a month within the limits of this loan at today's rate: ${income}` +
        (automated ? `; ${automated} by automated underwriting` : '') +
        '. The taxes on the income stay as they are.',
    unknown: ({why}: Texts<'why'>) => `Nothing to hold it to: ${why}.`,
    type_income: 'Type an income to see it.',
};

export const afford = {
    page: 'What it takes, and what it allows',
    parts_label: 'Parts of this view',
    parts,
    means,
    limits,
    step,
    reach,
    moves,

    title: 'How much home',
    no_means: 'Type an income or the cash there is, and the home that they allow stands here.',
    up_to: ({price, no_ratio}: Parts<'price'> & {no_ratio: boolean}) =>
        rich`Up to ${price}${no_ratio && ', the income held to no ratio'}`,
    at_that_price: ({
        month,
        cash,
        terms,
        estimate,
    }: Texts<'month' | 'cash' | 'terms' | 'estimate'>) =>
        `${month} a month and ${cash} of cash there. ${terms}. ${estimate}`,
    /// Why, each with its stop; the limits at the least price follow where they are known.
    no_price: ({why, least, refused}: {why: string[]; least: string | null} & Marks<'refused'>) =>
        rich`${refused('No price fits.')} ${why.map((one) => `${one}. `).join('')}${
            least && `At ${least}, the least of the price book, it would be:`
        }`,
    /// The limit that binds, and where the one behind it stands.
    binds: ({
        limits,
        why,
        next,
        strong,
    }: Texts<'limits'> & {
        why: string | null;
        next: {price: string; limits: string | null} | null;
    } & Marks<'strong'>) =>
        rich`${strong('What binds:')} ${limits}${why && ` (${why})`}. ${
            next &&
            `Without it, up to ${next.price}` +
                (next.limits ? `; there ${next.limits} binds.` : '.')
        }`,
    a_step_further: ({step, strong}: Parts<'step'> & Marks<'strong'>) =>
        rich`${strong('A step further:')} ${step}`,
    step_refused: ({price, why}: Texts<'price' | 'why'>) =>
        `A home of ${price} is not to be had so: ${why}.`,
    step_in_price: 'Step in price',

    homes: 'Homes within it',
    homes_say:
        'Without options, on free lots. A touch takes one over; what is chosen goes along where ' +
        'it applies.',
    no_home: 'No home of the price book.',
    home: ({elevation, lot, homes}: Texts<'elevation' | 'lot'> & {homes: number}) =>
        `elevation ${elevation} on lot ${lot}` +
        (homes > 1 ? `; ${homes} combinations of elevation and lot` : ''),

    ratios: ({status, source, automated}: Texts<'status' | 'source'> & {automated: boolean}) =>
        `Ratios ${automated ? 'of automated underwriting, ' : ''}${status}: ${source}.`,
    residual_income: ({status, source}: Texts<'status' | 'source'>) =>
        `Residual income ${status}: ${source}.`,
};
