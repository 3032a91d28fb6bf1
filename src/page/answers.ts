// The shapes of the answers that the page reads; amounts are text, to the cent.

export interface Heading {
    community: string;
    builder: string;
    buyer: string;
    prepared_by: string;
    originator: string;
    plan: string;
    elevation: string;
    lot: string;
    price_book_version: string;
    price_book_expires: string;
    as_of: string;
    contract: string;
    closing: string;
    place: string;
    rates_date: string;
    rates_good_through: string;
    lender: string;
    sample_rates: boolean;
}

export interface Terms {
    name: string;
    program: string;
    program_name: string;
    months: number;
    lock_days: number;
    score: number | null;
    rate: string;
    points: string;
    apr: string | null;
    down_payment: string;
    down_percent: string;
    ltv: string;
    down_from_cash: boolean;
    extra_principal: string; ///< each month; totals count it, the month and the APR do not
    fine_print: string;
    adjustable?: {
        initial_months: number;
        reset_months: number;
        fully_indexed_rate: string;
        highest_rate: string;
        margin: string;
        index: {name: string; value: string; date: string};
        worst_case: {from_payment: number; rate: string; payment: string}[];
    } | null;
}

export type Monthly = Record<string, string>;
export interface Refusal {
    why: string;
    words: string;
    list?: string; ///< of rules, that the data do not say enough of
}

export interface Scenario {
    terms: Terms;
    available: boolean;
    refusals: Refusal[];
    price: string;
    base_loan: string;
    loan: string;
    upfront_fee: {name: string; percent: string; amount: string; financed: string};
    monthly: Monthly;
    first_year: {months: number; monthly: Monthly};
    mortgage_insurance: {
        name: string;
        first_monthly: string;
        payments: number;
        paid_up: boolean;
        last_date: string | null;
        whole_term: boolean;
        on_request_payment: number;
        on_request_date: string | null;
    };
    cash: Record<string, string>;
    lender_credit_without_use: string;
    first_payment: string;
    payments: number;
    total_interest: string;
    paid_in_five_years: string;
    paid_over_loan: string;
    balance_after_five_years: string;
    balance_after_ten_years: string;
    curve?: {year: number; paid: string; balance: string; spent_and_owed: string}[];
}

export interface Pick {
    option: string;
    level?: string;
    choice?: string;
    quantity?: string;
    spend?: string;
    agreed?: boolean;
}

/// What a change comes to under one way to pay; refusals stand in place of its figures.
export interface Difference {
    per_month?: string;
    cash_needed?: string;
    cash_to_close?: string; ///< less the deposits that fall due before
    refusals?: Refusal[];
}

/// The same of the home itself.
export interface Move extends Difference {
    price: string;
}

export interface Touch extends Move {
    takes_out: boolean;
    jumps: string[];
    along: string[];
    instead_of: string[];
    brings: Pick[];
    drops: string[];
}

export interface Form {
    id: string;
    name: string;
    note: string;
    state: 'included' | 'chosen' | 'in a package' | 'offered' | 'not to be had';
    why: string;
    price: string | null;
    touch: Touch | null;
}

export interface Option {
    id: string;
    name: string;
    kind: 'upgrade' | 'levels' | 'choice' | 'allowance' | 'package';
    text: string;
    note: string;
    picked: boolean;
    agreed: boolean;
    wish: number | null;
    structural: boolean;
    work: string[];
    cutoff: string;
    cutoff_passed: boolean;
    one_of: string;
    later: {estimate: string; each: boolean; note: string} | null; ///< each: of one, not of all
    quantity: {
        now: string;
        unit: string;
        asked: boolean;
        lowest?: string;
        highest?: string;
        step?: string;
        usual?: string;
        limits?: string;
    } | null;
    budget: string | null;
    spend: string | null;
    parts: string[];
    forms: Form[];
}

export interface Shown {
    name: string;
    as_shown: string;
    standing: string;
    price: string | null;
    your_level: string;
    why_not: string;
}

export interface Area {
    id: string;
    name: string;
    included: string[];
    shown: Shown[];
    options: Option[];
    requests: {text: string; estimate: string | null}[];
}

/// What the builder gives, and what the buyer uses it for.
export interface Incentive {
    id: string;
    name: string;
    amount: string;
    left: string;
    conditions: string;
    lender: string;
    expires: string | null;
    close_by: string | null;
    why_not: string;
    uses: string[];
    used: {use: string; amount: string | null; given: string}[];
}

export interface Tour {
    heading: Heading;
    contract_price: string;
    options: string;
    stage: string;
    model: string;
    scenario: Scenario;
    areas: Area[];
    incentives: Incentive[];
    cautions: string[];
}

export interface FallsOut {
    option: string;
    name: string;
    why: string;
}
export interface Measure {
    name: string;
    value: string;
    words: string;
}
export interface Lot {
    id: string;
    status: string;
    premium: string;
    grade: string;
    flood_zone: boolean;
    plans: string[];
    every_plan: boolean;
    note: string;
    measures: Measure[];
    chosen: boolean;
    fits: boolean;
    can_be_had: boolean;
    falls_out: FallsOut[];
    move: Move | null;
}
export interface Elevation {
    id: string;
    name: string;
    note: string;
    price: string;
    falls_out: FallsOut[];
    move: Move | null;
}
export interface Plan {
    id: string;
    name: string;
    style: string;
    note: string;
    base_price: string;
    bedrooms: string;
    bathrooms: string;
    square_feet: string;
    measures: Measure[];
    elevations: Elevation[];
    chosen: boolean;
    fits: boolean;
}
export interface Site {
    heading: Heading;
    lot: string;
    plan: string;
    elevation: string;
    note: string;
    terms: Terms;
    lots: Lot[];
    plans: Plan[];
    cautions: string[];
}

/// Payments through which one of two has cost less; null: both the same.
export interface Stretch {
    cheaper: string | null;
    from: number;
    to: number | null; ///< nothing: it stays so
    when: string;
}

export interface Compare {
    heading: Heading;
    contract_price: string;
    scenarios: (Scenario & {against_first: Difference})[];
    points: Record<string, any>[];
    orders: {first: string; second: string; stretches: Stretch[]}[];
    cautions: string[];
}

export interface Program {
    id: string;
    name: string;
    kind: string;
    summary: string;
    fine_print: string;
    upfront_fee: string;
    annual_fee: string;
    used_beyond_end: {list: string; words: string}[];
    not_known: {list: string; words: string}[];
    ladders: {
        months: number;
        term: string;
        lock_days: number;
        rungs: {rate: string; points: string}[];
    }[];
}
export interface Programs {
    programs: Program[];
    note: string;
    cautions: string[];
}

export interface Row {
    last_due?: string;
    due?: string;
    year?: number;
    month?: number;
    payment: string;
    interest: string;
    principal: string;
    mortgage_insurance: string;
    balance: string;
    from_buydown: string;
}
export interface Schedule {
    heading: Heading;
    scenario: Scenario;
    at_closing: {date: string; principal: string; balance: string} | null;
    rows: Row[];
    years: Row[];
    total_interest: string;
    total_insurance: string;
    total_from_buydown: string;
    extra: {
        extra: string;
        payments: number;
        payments_saved: number;
        interest_saved: string;
        insurance_saved: string;
        last_due: string;
    } | null;
    cautions: string[];
}

export interface AddsItem {
    id: string;
    price: string;
    by_scenario?: {
        available: boolean;
        per_month: string;
        cash_needed: string;
        cash_to_close: string;
        jumps: {words: string}[];
    }[];
}

export interface Quote {
    heading: Heading;
    contract_price: string;
    options: string;
    incentives: string;
    lines: {
        kind: string;
        area: string;
        name: string;
        detail: string;
        note: string;
        quantity: string;
        unit: string;
        unit_price: string;
        amount: string;
        work: string[];
    }[];
    requests: {area: string; text: string; estimate: string | null}[];
    open_choices: {area: string; name: string; default: string}[];
    credits: {id: string; name: string; use: string; amount: string}[];
    incentive_conditions: string[];
    incentive_lenders: string[];
    deposits: {earnest: string; options: string; paid: string | null; note: string};
    scenarios: Scenario[];
    cautions: string[];
}

export interface Cash {
    scenario: Scenario;
    costs: {section: string; name: string; amount: string; paid_by: string}[];
    prepaids: {name: string; due: string | null; amount: string}[];
    calendar: {date: string; what: string; amount: string}[];
    credits: {used: {use: string; amount: string}[]};
    cautions: string[];
}

/// The parts of a month, in the order in which they are stacked.
export const month_parts: [string, string][] = [
    ['principal_and_interest', 'Principal and interest'],
    ['mortgage_insurance', 'Mortgage insurance'],
    ['property_tax', 'Property tax'],
    ['homeowners_insurance', "Homeowner's insurance"],
    ['flood_insurance', 'Flood insurance'],
    ['wind_insurance', 'Wind insurance'],
    ['association_dues', 'Association dues'],
    ['district_charges', 'District charges'],
];

export interface Figure {
    id: string;
    name: string;
    shown: string;
    formula: string | null;
    inputs: string[];
    rounding: number | null;
    rule: string | null;
    effective: string | null;
    until: string | null;
    beyond_end: boolean; ///< used on, since a later one is not in the data
    status: string | null;
    source: string | null;
    agrees: boolean;
}
export interface ShiftRate {
    steps: number;
    rate: string;
    apr: string | null;
    cells: {refusals: Refusal[]; monthly: string; cash_to_close: string}[]; ///< [0]: as it stands
}

export interface ShiftLock {
    days: number;
    ends: string;
    covers_closing: boolean;
    chosen: boolean;
    points: string | null;
    extra_cash: string | null;
}

export interface ShiftIncome {
    by: string;
    income: string;
    front: string | null;
    back: string | null;
    within: boolean;
    highest_rate: {to_a_thousandth: string | null; in_steps: string | null};
}

export interface Shift {
    scenarios: {
        terms: Terms;
        refusals: Refusal[];
        rates: ShiftRate[];
        locks: ShiftLock[];
        ratios: {
            least_income: string;
            least_income_automated: string | null;
            incomes: ShiftIncome[];
        } | null;
        ratios_unknown: string[]; ///< why there are none, where it is not the income
    }[];
}

export interface Recheck {
    scenario: Scenario;
    sections: {title: string; figures: Figure[]}[];
    figures: number;
    differences: number;
    cautions: string[];
}

/// A limit and how far from it a price is; `room` below zero is over it.
export interface Room {
    limit: string;
    needed: string;
    most: string;
    room: string;
}

export interface AffordScenario {
    terms: Terms;
    ratios: {
        front: string | null;
        back: string | null; ///< nothing is held to where none is published
        automated: string | null; ///< what automated underwriting does not change, in words
        passed_by: string | null; ///< why a ratio over the limit is let pass, in words
        status: string;
        source: string;
    } | null;
    residual_income: {tested: boolean; words: string; status: string; source: string} | null;
    price: string | null;
    least_price?: string; ///< that was tried, where no price fits: the rooms are of it
    rooms: Room[];
    binds: string[];
    refusals: Refusal[];
    next_price: string | null;
    next_binds: string[];
    step: {
        price: string;
        more_cash: string;
        more_income: string;
        more_after_tax: string;
        less_debts: string;
        debts_suffice: boolean;
        lower_rate: {rate: string; points: string} | null;
        refusals: Refusal[];
    } | null;
    plans: {plan: string; elevation: string; lot: string; price: string; homes: number}[];
    scenario?: Scenario;
}

export interface Afford {
    heading: Heading;
    reserve_months: number;
    automated: boolean;
    scenarios: AffordScenario[];
    cautions: string[];
}

export interface FitWish {
    id: string;
    name: string;
    level: string;
    rank: number;
    must: boolean;
    worth: string;
    quantity: string;
    unit: string;
    price?: string;
}

export interface FitLeftOut {
    wish: FitWish;
    reason: 'rule' | 'limits' | 'loan';
    rule: string;
    along: string[];
    instead_of: string[];
    price?: string;
    per_month?: string;
    cash?: string;
    over_monthly: string;
    over_cash: string;
}

export interface FitHome {
    lot: string;
    barred: string;
    fits: boolean;
    proven: boolean;
    worth: string;
    most_worth: string;
    chosen: FitWish[];
    needed: {id: string; name: string; price: string}[];
    held: FitWish[];
    left_out: FitLeftOut[];
    next: {
        wish: FitWish;
        raise_monthly: string;
        raise_cash: string;
        can_be_chosen: boolean;
        give_up: string[];
        gained: string[];
        proven: boolean;
    } | null;
    incentives_lost: string[];
    over_monthly: string;
    over_cash: string;
    price: string;
    scenario: Scenario | null;
}

export interface Fit {
    scenarios: {terms: Terms; best_lot: string; homes: FitHome[]}[];
    cautions: string[];
}

/// One way to split a builder's money, and what comes of it.
export interface Mix {
    off_price: string;
    rate: string;
    points: string;
    apr: string | null;
    buydown: string;
    paid_in_cash: 'none' | 'upfront fee' | 'single premium';
    pays: {
        points: string;
        buydown: string;
        closing_costs: string;
        upfront_fee: string;
        prepaids: string;
    };
    without_use: string;
    over_cap: string;
    loan: string;
    monthly_now: string;
    monthly_after_three_years: string;
    cash_needed: string;
    cash_to_close: string;
    cost_over_years: Record<string, string>;
    cost_over_asked_years: string;
}

/// Where there are refusals, the rest is not there.
export interface CreditScenario {
    terms: Terms;
    refusals: Refusal[];
    contribution_cap: {
        percent: string;
        of: string;
        amount: string;
        taken: string;
        concessions_alone: boolean;
    } | null;
    without: Mix;
    each_use: {use: string; name: string; mix: Mix | null; why_not: string | null}[];
    lowest_payment: Mix;
    least_cash: Mix | null; ///< nothing: the down payment takes all the cash there is
    least_cost: Mix;
    frontier: Mix[];
}

export interface Credit {
    amount: string;
    years: number;
    contract_price: string;
    scenarios: CreditScenario[];
    cautions: string[];
}

/// One way to come by an option; `cost[n]` is what it has taken through month n of the loan.
export interface LaterPath {
    way: string;
    refusals: Refusal[];
    at_closing: string;
    a_month: string;
    months: number;
    cost: string[];
}

export interface LaterScenario {
    terms: Terms;
    monthly_without: string;
    refusals: Refusal[];
    ways: LaterPath[];
    break_even: {dearer: string; than: string; month: number; to: number | null; when: string}[];
}

export interface Later {
    month: number;
    items: {
        id: string;
        name: string;
        level: string;
        price: string;
        estimate: string | null;
        note: string;
        why_not: string;
        work: string[];
        scenarios: LaterScenario[];
    }[];
    cautions: string[];
}
