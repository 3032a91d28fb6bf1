// The answers as the page names them: what the program prints of their shapes, and what the page
// alone makes of them.

import type {
    Adds,
    Caution,
    Credit as CreditAnswer,
    Monthly,
    MonthRow,
    Recheck,
    Scenario,
    TermCode,
    YearRow,
} from './answer_types';
import {is_zero} from './figures';
import {say} from './language';

export type * from './answer_types';

/// A pick as the page keeps it in an inquiry.
export interface Pick {
    option: string;
    level?: string;
    choice?: string;
    quantity?: string;
    spend?: string;
    agreed?: boolean;
}

export type AddsItem = Adds['items'][number];
export type CreditScenario = CreditAnswer['scenarios'][number];
export type Figure = Recheck['sections'][number]['figures'][number];

/// Of a schedule: a month, or a year of them.
export type Row = MonthRow | YearRow;

/// Those that no other list says already.
export function cautions_beside(cautions: Caution[], others: Caution[]): Caution[] {
    const key = ({code, about}: Caution) => [code, ...about].join('\n');
    const said = new Set(others.map(key));
    return cautions.filter((one) => !said.has(key(one)));
}

/// The months of the ways to pay that can be had.
export function months_of(scenarios: Scenario[]): Monthly[] {
    return scenarios.filter((one) => one.available).map((one) => one.monthly!);
}

export type MonthPartKey = Exclude<keyof Monthly, 'total'>;

/// A part of the month: its member, what it is called, the class that colors it.
export interface MonthPart {
    key: MonthPartKey;
    name: string;
    color: string;
    term?: TermCode; ///< that explains it
}

const month_terms: Partial<Record<MonthPartKey, TermCode>> = {
    principal_and_interest: 'principal_and_interest',
    mortgage_insurance: 'mortgage_insurance',
    property_tax: 'property_taxes',
    homeowners_insurance: 'homeowners_insurance',
    association_dues: 'dues',
};

/// The parts that any of these months has something in, in the order of the answer.
export function parts_of(months: Monthly[]): MonthPart[] {
    return Object.keys(months[0] ?? {})
        .filter((key): key is MonthPart['key'] => key !== 'total')
        .map((key, at) => ({
            key,
            name: say.codes.month_parts[key],
            color: `part-${at + 1}`,
            term: month_terms[key],
        }))
        .filter(({key}) => months.some((month) => !is_zero(month[key])));
}
