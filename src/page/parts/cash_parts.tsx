// What the cash of a loan is made of, down to what is still to bring at closing.
import type {Scenario, TermCode} from '../answer_types';
import {closing_name, dollars, is_zero, unsigned} from '../figures';
import {say} from '../language';
import {stays_open} from '../opened';
import {FactsList} from './facts_list';
import type {FactRow} from './facts_list';

/// In the order in which they are told everywhere, with the terms that explain them.
const parts = {
    down_payment: 'down_payment',
    upfront_fee_in_cash: 'upfront_fee',
    points: 'points',
    principal_reduction: undefined,
    closing_costs: 'closing_costs',
    prepaid_interest: 'prepaid_interest',
    prepaid_bills: 'prepaids',
    initial_escrow_deposit: 'escrow_account',
    temporary_buydown: 'temporary_buydown',
} as const satisfies Partial<Record<keyof Scenario['cash'], TermCode | undefined>>;

type Part = keyof typeof parts;

/// A part's words and amount, which is taken off where a lender gives it.
function told(scenario: Scenario, part: Part): [string, string] {
    const amount = scenario.cash[part];
    const words = say.loan.cash;
    if (part === 'points' && amount.startsWith('-')) return [words.lender_credit, unsigned(amount)];
    return part === 'upfront_fee_in_cash' && scenario.mortgage_insurance.paid_up
        ? [words.fee_in_cash({fee: scenario.upfront_fee.name}), dollars(amount)]
        : [words[part], dollars(amount)];
}

export function CashParts({scenario, index}: {scenario: Scenario; index: number}) {
    const {cash} = scenario;
    const rows: FactRow[] = (Object.keys(parts) as Part[])
        .filter((part) => !is_zero(cash[part]))
        .map((part) => [...told(scenario, part), parts[part]]);
    if (!is_zero(cash.credits)) rows.push([say.loan.cash.credits, dollars(cash.credits)]);
    rows.push([say.common.all_cash_needed, dollars(cash.needed), 'cash_needed']);
    if (!is_zero(cash.deposits)) rows.push([say.loan.cash.deposits, dollars(cash.deposits)]);
    rows.push([closing_name(cash.to_close), unsigned(cash.to_close), 'cash_to_close']);
    return (
        <details class="more" {...stays_open(`loan-cash:${index}`)}>
            <summary>{say.loan.cash.title}</summary>
            <FactsList rows={rows} />
        </details>
    );
}
