// The answers as the page names them: what the program prints of their shapes, and what the page
// alone makes of them.

import type {
    Adds,
    Credit as CreditAnswer,
    Monthly,
    MonthRow,
    Recheck,
    YearRow,
} from './answer_types';

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

/// The parts of a month, in the order in which they are stacked.
export const month_parts: [Exclude<keyof Monthly, 'total'>, string][] = [
    ['principal_and_interest', 'Principal and interest'],
    ['mortgage_insurance', 'Mortgage insurance'],
    ['property_tax', 'Property tax'],
    ['homeowners_insurance', "Homeowner's insurance"],
    ['flood_insurance', 'Flood insurance'],
    ['wind_insurance', 'Wind insurance'],
    ['association_dues', 'Association dues'],
    ['district_charges', 'District charges'],
];
