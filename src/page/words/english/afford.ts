// What a buyer's means allow: how much home, its limits, what a change of income moves.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

/// What each part of the view is about, beside its title.
const parts = {
    afford: 'the highest price your income and cash allow',
    wishes: 'what is worth the most within a payment and cash',
    builders_money: 'off the price, or to costs, points or a buydown',
    later: 'an option from the builder, or after closing',
};

const means = {
    income: 'Gross monthly income',
    debts: 'Monthly debt payments',
    income_taxes: 'Monthly income taxes',
    cash: 'Available cash',
    household: 'People in the household',
    reserves: 'Reserves to keep',
    reserves_label: 'Months of payments to keep in reserve',
    months: 'months',
    automated: 'As if automated underwriting had accepted the loan',
    more: "More for the lender's rules",
    note: 'This stays in this browser.',
    rules_note:
        'Nothing of it goes into a link, a log or the printed sheet. Income taxes and people are asked only for the residual income of VA loans.',
};

/// The limits that a price is held against; a ratio is told where there is one.
const limits = {
    front_ratio: ({ratio}: {ratio: string | null}) =>
        `housing ratio${ratio ? ` (at most ${ratio})` : ''}`,
    back_ratio: ({ratio}: {ratio: string | null}) =>
        `debt-to-income ratio${ratio ? ` (at most ${ratio})` : ''}`,
    back_by_residual_income: 'debt-to-income ratio, passed by residual income',
    cash: 'available cash',
    program: "the program's own limit",
    residual_income: 'residual income, what is left to live on',

    /// Cash is held against once, the others every month.
    too_much: ({amount, monthly}: Texts<'amount'> & {monthly: boolean}) =>
        `${amount}${monthly ? ' a month' : ''} too much`,
    left: ({amount, monthly}: Texts<'amount'> & {monthly: boolean}) =>
        `${amount}${monthly ? ' a month' : ''} left`,
    takes: ({needed, most, monthly}: Texts<'needed' | 'most'> & {monthly: boolean}) =>
        `takes ${needed}; the most is ${most}${monthly ? ' a month' : ''}`,
};

/// What the next price up takes, each where it is needed.
interface Step {
    price: string;
    cash: string | null;
    income: string | null;
    after_tax: string | null;
    less_debts: string | null; ///< instead of more income
}

function step({price, cash, income, after_tax, less_debts}: Step): string {
    const or_debts = less_debts ? `, or ${less_debts} less in monthly debt payments` : '';
    const parts: string[] = [];
    if (cash) parts.push(`${cash} more cash`);
    if (income) parts.push(`${income} more income a month${after_tax ? '' : or_debts}`);
    if (after_tax) parts.push(`${after_tax} more a month after taxes${or_debts}`);
    if (parts.length === 0) return `A home at ${price} needs nothing more.`;
    return `A home at ${price} needs ${parts.join(', and ')}.`;
}

/// What would be enough instead of all that a step takes.
const instead = ({rate, points}: Texts<'rate' | 'points'>) =>
    `An interest rate of ${rate} with ${points} would be enough for one step further.`;

const reach = {
    label: 'The loan to look at',
    bar: ({price, within}: Texts<'price'> & {within: boolean}) =>
        `up to ${price}; this home is ${within ? 'within it' : 'above it'}`,
    no_price: 'no price fits',
    no_price_since: ({why}: Texts<'why'>) => `no price fits: ${why}`,
    bound_by: ({
        limits,
        no_ratio,
        past_scale,
    }: Texts<'limits'> & {no_ratio: boolean; past_scale: boolean}) =>
        `limited by ${limits}` +
        (no_ratio ? '; income is held to no ratio' : '') +
        (past_scale ? '; past the end of this scale' : ''),
    within: 'reaches this home',
    short: 'falls short of this home',
    key_price: 'highest contract price',
    key_home: ({price}: Texts<'price'>) => `this home, ${price}`,
};

/// If the income changes.
const moves = {
    title: 'If your income changes before closing',
    label: 'Limits by income',
    income: 'Monthly income',
    front: 'Housing ratio',
    back: 'DTI',
    at_todays_rate: "At today's rate",
    within_up_to: 'Within limits up to',
    as_it_stands: 'as it is now',
    within: 'within limits',
    over: 'over the limit',
    no_rate: 'no rate',
    least: ({income, automated}: Texts<'income'> & {automated: string | null}) =>
        `At today's rate, this loan's limits need a monthly income of at least ${income}` +
        (automated ? `, or ${automated} with automated underwriting` : '') +
        '. Income taxes are taken to stay as they are. DTI is the debt-to-income ratio.',
    unknown: ({why}: Texts<'why'>) => `There is no limit to hold income to: ${why}.`,
    type_income: 'Type your income to see this.',
};

export const afford = {
    page: 'What you can afford',
    parts,
    means,
    limits,
    step,
    instead,
    reach,
    moves,

    title: 'How much home',
    no_means: 'Type your income or your available cash to see how much home they allow.',
    up_to: ({price, no_ratio}: Parts<'price'> & {no_ratio: boolean}) =>
        rich`Up to ${price}${no_ratio && ', with income held to no ratio'}`,
    at_that_price: ({
        month,
        cash,
        terms,
        estimate,
    }: Texts<'month' | 'cash' | 'terms' | 'estimate'>) =>
        `At that price: ${month} a month and ${cash} cash needed. ${terms}. ${estimate}`,
    /// Why, each with its stop; the limits at the least price follow where they are known.
    no_price: ({why, least, refused}: {why: string[]; least: string | null} & Marks<'refused'>) =>
        rich`${refused('No price fits.')} ${why.map((one) => `${one}. `).join('')}${
            least && `At ${least}, the lowest price in the price book, it would be:`
        }`,
    /// The limit that binds.
    binds: ({limits, why, strong}: Texts<'limits'> & {why: string | null} & Marks<'strong'>) =>
        rich`${strong('What limits the price:')} ${limits}${why && ` (${why})`}.`,
    /// Where the limit behind it stands.
    behind: ({price, limits}: {price: string; limits: string | null}) =>
        `Without the limit that binds, up to ${price}` +
        (limits ? `; there the limit is ${limits}.` : '.'),
    a_step_further: ({step, strong}: Parts<'step'> & Marks<'strong'>) =>
        rich`${strong('One step further:')} ${step}`,
    step_refused: ({price, why}: Texts<'price' | 'why'>) =>
        `A home at ${price} is not available: ${why}.`,
    step_in_price: 'Step in price',

    each_loan: 'Each of your loans on one scale',
    by_limit: 'Limit by limit',

    homes: 'Homes within that price',
    homes_say: 'Without options.',
    no_home: 'No home in the price book.',
    home: ({elevation, lot, homes}: Texts<'elevation' | 'lot'> & {homes: number}) =>
        `${elevation}, lot ${lot}` + (homes > 1 ? `, and ${homes - 1} more` : ''),

    ratios: ({status, source, automated}: Texts<'status' | 'source'> & {automated: boolean}) =>
        `Ratio limits${automated ? ' of automated underwriting' : ''} (${status}): ${source}.`,
    residual_income: ({status, source}: Texts<'status' | 'source'>) =>
        `Residual income (${status}): ${source}.`,
};
