// The words of the engine's codes, where no answer says them.
import type {Incentive, Lot, Mix, Option, Program, Shown} from './answers';

export type Unit = NonNullable<Option['quantity']>['unit'];
export type Use = Incentive['uses'][number];

export const unit_words: Record<Unit, string> = {
    each: 'each',
    sq_ft: 'sq ft',
    linear_ft: 'linear ft',
};

export const use_words: Record<Use, string> = {
    price: 'price',
    options: 'options',
    closing_costs: 'closing costs',
    points: 'points',
    temporary_buydown: 'temporary buydown',
};

export const paid_in_cash_words: Record<Mix['paid_in_cash'], string> = {
    none: '',
    upfront_fee: 'upfront fee',
    single_premium: 'single premium',
};

export const grade_words: Record<Lot['grade'], string> = {
    level: 'level ground',
    garden: 'falls to basement windows',
    walk_out: 'falls to a basement door',
};

export const standing_words: Record<Shown['standing'], string> = {
    included: 'comes with yours',
    free_choice: 'a choice at no cost',
    yours: 'in your home',
    yours_partly: 'yours in part',
    extra: 'extra',
    unavailable: 'not to be had here',
    decor: 'decoration, not for sale',
};

export const kind_words: Record<Program['kind'], string> = {
    conventional: 'Conventional',
    fha: 'FHA',
    va: 'VA',
    usda: 'USDA',
};

export type Entitlement = 'first' | 'subsequent' | 'exempt';

export const entitlement_words: Record<Entitlement, string> = {
    first: 'first use',
    subsequent: 'used before',
    exempt: 'exempt from the fee',
};

/// The code of a use as a person's file may have it: "closing costs" is closing_costs.
export function as_code(word: string): string {
    return word.replace(/[ -]/g, '_');
}
