// The words of the engine's codes, where no answer says them.
import type {
    Figure,
    Incentive,
    Lot,
    Mix,
    MonthPartKey,
    Option,
    Program,
    Shown,
} from '../../answers';

export type Unit = NonNullable<Option['quantity']>['unit'];
export type Use = Incentive['uses'][number];
export type Entitlement = 'first' | 'subsequent' | 'exempt';

const units: Record<Unit, string> = {
    each: 'each',
    sq_ft: 'sq ft',
    linear_ft: 'linear ft',
};

const uses: Record<Use, string> = {
    price: 'price',
    options: 'options',
    closing_costs: 'closing costs',
    points: 'points',
    temporary_buydown: 'temporary buydown',
};

const paid_in_cash: Record<Mix['paid_in_cash'], string> = {
    none: '',
    upfront_fee: 'upfront fee',
    single_premium: 'single premium',
};

const grades: Record<Lot['grade'], string> = {
    level: 'level lot',
    garden: 'daylight lot: basement windows',
    walk_out: 'walk-out lot: basement door',
};

const standings: Record<Shown['standing'], string> = {
    included: 'included with yours',
    free_choice: 'a choice at no cost',
    yours: 'in your home',
    yours_partly: 'partly in your home',
    extra: 'extra',
    unavailable: 'not available here',
    decor: 'decoration, not for sale',
};

const programs: Record<Program['kind'], string> = {
    conventional: 'Conventional',
    fha: 'FHA',
    va: 'VA',
    usda: 'USDA',
};

const entitlements: Record<Entitlement, string> = {
    first: 'first use',
    subsequent: 'used before',
    exempt: 'exempt from the fee',
};

/// What a rule rests on.
const grounds: Record<NonNullable<Figure['status']>, string> = {
    published: 'published',
    from_memory: 'from memory',
    common_practice: 'common practice',
    sample: 'sample figures',
};

/// What a monthly payment is made of.
const month_parts: Record<MonthPartKey, string> = {
    principal_and_interest: 'Principal and interest',
    mortgage_insurance: 'Mortgage insurance',
    property_tax: 'Property taxes',
    homeowners_insurance: "Homeowner's insurance",
    flood_insurance: 'Flood insurance',
    wind_insurance: 'Wind insurance',
    association_dues: 'HOA dues',
    district_charges: 'District charges',
};

export const codes = {
    units,
    uses,
    paid_in_cash,
    grades,
    standings,
    programs,
    entitlements,
    grounds,
    month_parts,
};
