// What the answers hold; amounts, rates and dates are text. Printed by the program page-types
// of the tests, never written by hand.

export type Heading = {
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
    sample_place: boolean;
    rate_sheet: string;
    rates_date: string;
    rates_good_through: string;
    lender: string;
    license: string;
    sample_rates: boolean;
};

export type Terms = {
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
    extra_principal: string;
    fine_print: string;
    adjustable: {
        initial_months: number;
        reset_months: number;
        index: {
            name: string;
            value: string;
            date: string;
        };
        margin: string;
        caps: {
            first: string;
            periodic: string;
            life: string;
        };
        fully_indexed_rate: string;
        highest_rate: string;
        if_the_index_stays: {
            from_payment: number;
            rate: string;
            payment: string;
        }[];
        worst_case: {
            from_payment: number;
            rate: string;
            payment: string;
        }[];
    } | null;
};

export type Refusal = {
    why: 'rule_unknown' | 'term_not_offered' | 'place_not_eligible' | 'score_needed' | 'score_below_minimum' | 'ltv_over_maximum' | 'loan_over_limit' | 'rate_not_offered' | 'mi_not_offered' | 'insurance_not_offered' | 'buydown_not_allowed' | 'cash_short';
    found: string;
    limit: string;
    words: string;
    list?: 'maximum_ltv' | 'loan_limit' | 'upfront_fee' | 'annual_fee' | 'annual_fee_months' | 'contribution_cap' | 'points_adjustment' | 'mortgage_insurance' | 'single_premium' | 'homeowner' | 'ratios' | 'residual_income';
};

export type Monthly = {
    principal_and_interest: string;
    mortgage_insurance: string;
    property_tax: string;
    homeowners_insurance: string;
    flood_insurance: string;
    wind_insurance: string;
    association_dues: string;
    district_charges: string;
    total: string;
};

export type Scenario = {
    terms: Terms;
    available: boolean;
    refusals: Refusal[];
    price: string;
    value: string;
    base_loan: string;
    upfront_fee: {
        name: string;
        percent: string;
        amount: string;
        financed: string;
    };
    loan: string;
    monthly: Monthly;
    first_year: {
        months: number;
        monthly: Monthly;
    };
    temporary_buydown: {
        subsidy: string;
        note_payment: string;
        qualifying_rate: string;
        years: {
            rate: string;
            payment: string;
            subsidy: string;
        }[];
    } | null;
    mortgage_insurance: {
        name: string;
        annual_percent: string;
        first_monthly: string;
        payments: number;
        paid_up: boolean;
        last_date: string | null;
        whole_term: boolean;
        on_request_payment: number;
        on_request_date: string | null;
    };
    cash: {
        down_payment: string;
        upfront_fee_in_cash: string;
        points: string;
        principal_reduction: string;
        closing_costs: string;
        prepaid_interest: string;
        prepaid_bills: string;
        initial_escrow_deposit: string;
        temporary_buydown: string;
        credits: string;
        needed: string;
        deposits: string;
        to_close: string;
    };
    credits_without_use: string;
    credits_over_cap: string;
    lender_credit_without_use: string;
    cost_of_credit: {
        prepaid_finance_charge: string;
        amount_financed: string;
        finance_charge: string;
        total_of_payments: string;
        total_interest_percentage: string;
        disclosed_in_five_years: string;
        disclosed_principal_in_five_years: string;
        buyers_buydown: string;
        payment_levels: {
            from: number;
            to: number;
            payment: string;
        }[];
        first_period: {
            months: number;
            odd_days: number;
        };
        apr: string | null;
    };
    first_payment: string;
    payments: number;
    last_payment: string;
    total_interest: string;
    paid_in_five_years: string;
    paid_over_loan: string;
    balance_after_five_years: string;
    balance_after_ten_years: string;
};

export type Caution = {
    code: 'estimate' | 'rates_until_locked' | 'costs_as_known' | 'rule_continued' | 'lock_ends_first' | 'rate_adjustable' | 'extra_principal' | 'licensed_trades' | 'agent_license' | 'touch_is_difference' | 'alone_and_stacked' | 'ratios_are_guides' | 'ratios_at_note_rate' | 'steps_no_forecast' | 'costs_over_the_home_without' | 'trades_whenever' | 'worth_of_wishes' | 'survey_decides' | 'sizes_as_drawn' | 'points_before_adjustments' | 'money_on_top' | 'cost_spent_and_owed' | 'money_with_conditions' | 'paid_in_cash' | 'principal_and_interest_alone' | 'actuarial_method';
    about: string[];
    words: string;
};

export type Quote = {
    question: 'quote';
    heading: Heading;
    lines: ({
        kind: 'base' | 'elevation' | 'lot' | 'option' | 'choice' | 'in_package' | 'incentive';
        area: string;
        id: string;
        name: string;
        detail: string;
        quantity: string;
        unit: 'each' | 'sq_ft' | 'linear_ft';
        unit_price: string;
        amount: string;
        structural: boolean;
        work: ('gas' | 'wiring' | 'plumbing' | 'structure')[];
        note: string;
    })[];
    options: string;
    incentives: string;
    contract_price: string;
    requests: ({
        area: string;
        text: string;
        status: 'to_be_confirmed';
        estimate: string | null;
    })[];
    open_choices: {
        area: string;
        id: string;
        name: string;
        default: string;
    }[];
    credits: ({
        id: string;
        name: string;
        use: 'price' | 'options' | 'closing_costs' | 'points' | 'temporary_buydown';
        amount: string;
    })[];
    incentive_conditions: string[];
    incentive_lenders: string[];
    deposits: {
        earnest: string;
        options: string;
        paid: string | null;
        note: string;
    };
    scenarios: Scenario[];
    cautions: Caution[];
};

export type Added = {
    available: boolean;
    refusals?: Refusal[];
    per_month: string;
    monthly: Monthly;
    cash_needed: string;
    cash_to_close: string;
    in_five_years: string;
    over_loan: string;
    jumps: ({
        why: 'note_rate' | 'points_adjustment' | 'upfront_fee' | 'annual_fee' | 'annual_fee_months' | 'mi_factor' | 'single_premium' | 'contribution_cap' | 'homeowners_rate';
        before: {
            band: string;
            value: string;
        };
        after: {
            band: string;
            value: string;
        };
        words: string;
    })[];
};

export type Adds = {
    question: 'adds';
    heading: Heading;
    contract_price: string;
    scenarios: {
        terms: Terms;
        per_thousand: string;
        monthly: Monthly;
        refusals: Refusal[];
    }[];
    items: ({
        id: string;
        name: string;
        level: string;
        area: string;
        standing: 'offered' | 'chosen' | 'held' | 'barred';
        wish: number | null;
        quantity: string;
        unit: 'each' | 'sq_ft' | 'linear_ft';
        structural: boolean;
        work: ('gas' | 'wiring' | 'plumbing' | 'structure')[];
        cutoff: string;
        note: string;
        later: {
            estimate: string;
            note: string;
        } | null;
        why_not?: string;
        package?: string;
        price?: string;
        along?: string[];
        instead_of?: string[];
        by_scenario?: (Added & {
            scenario: string;
        })[];
        in_home?: {
            price: string;
            by_scenario: (Added & {
                scenario: string;
            })[];
        };
    })[];
    stacked: ({
        id: string;
        name: string;
        level: string;
        price: string;
        by_scenario: (Added & {
            scenario: string;
        })[];
    })[];
    whole: {
        id: string;
        name: string;
        level: string;
        price: string;
        by_scenario: (Added & {
            scenario: string;
        })[];
    };
    cautions: Caution[];
};

export type Difference = {
    refusals?: Refusal[];
    per_month?: string;
    cash_needed?: string;
    cash_to_close?: string;
};

export type Stretch = {
    cheaper: 'first' | 'second' | 'neither';
    from: number;
    to: number | null;
    when: string;
};

export type Compare = {
    question: 'compare';
    heading: Heading;
    contract_price: string;
    scenarios: (Scenario & {
        against_first: Difference;
        against_shown: Difference;
        curve: {
            year: number;
            paid: string;
            balance: string;
            spent_and_owed: string;
        }[];
        apart: {
            year: number;
            paid: string;
            balance: string;
            spent_and_owed: string;
        }[];
    })[];
    apart_from: string | null;
    points: ({
        scenario: string;
        rate: string;
        rate_without: string;
        extra_cash: string;
        saved_monthly: string;
        break_even: number | null;
        stretches: Stretch[];
        words: string;
    })[];
    orders: {
        first: string;
        second: string;
        stretches: Stretch[];
    }[];
    cautions: Caution[];
};

export type EscrowOutlook = {
    deposit: string;
    initial_deposit: string;
    year_ends: {
        balance: string;
        shortage: string;
        refund: string;
        next_deposit: string;
        change: string;
    }[];
};

export type Cash = {
    question: 'cash';
    heading: Heading;
    scenario: Scenario;
    costs: ({
        section: 'origination' | 'not_shopped_for' | 'shopped_for' | 'taxes_and_government' | 'other';
        name: string;
        amount: string;
        paid_by: 'buyer' | 'seller' | 'lender';
        finance_charge: boolean;
        before_closing: boolean;
    })[];
    prepaids: ({
        what: 'interest' | 'insurance' | 'property_tax';
        name: string;
        count: number;
        per_day: string;
        due: string | null;
        amount: string;
    })[];
    escrow: {
        deposit: string;
        initial_deposit: string;
        cushion: string;
        bills: ({
            what: 'principal_and_interest' | 'mortgage_insurance' | 'property_tax' | 'homeowners_insurance' | 'flood_insurance' | 'wind_insurance' | 'association_dues' | 'district_charges';
            name: string;
            due: string;
            amount: string;
        })[];
        months: {
            month: string;
            deposit: string;
            paid: string;
            balance: string;
        }[];
        outlook?: {
            from_settled: EscrowOutlook;
            from_first_bills: EscrowOutlook;
        };
    } | null;
    credits: {
        used: ({
            use: 'points' | 'temporary_buydown' | 'upfront_fee' | 'closing_costs' | 'prepaids' | 'down_payment';
            words: string;
            amount: string;
        })[];
        without_use: string;
        over_cap: string;
        cap_percent: string | null;
        cap_of?: 'price' | 'value';
        counts_towards_cap: string;
        ltv_if_given: string;
    };
    appraisal_gap: string;
    calendar: ({
        date: string;
        what: 'deposits' | 'earnest_money' | 'option_share' | 'costs_when_ordered' | 'closing';
        words: string;
        amount: string;
    })[];
    cautions: Caution[];
};

export type Mix = {
    off_price: string;
    rate: string;
    points: string;
    apr: string | null;
    buydown: string | null;
    paid_in_cash: 'none' | 'upfront_fee' | 'single_premium';
    pays: {
        points: string;
        buydown: string;
        upfront_fee: string;
        closing_costs: string;
        prepaids: string;
    };
    without_use: string;
    over_cap: string;
    loan: string;
    monthly_now: string;
    monthly_after_three_years: string;
    cash_needed: string;
    cash_to_close: string;
    cost_over_years: {
        '3': string;
        '5': string;
        '7': string;
        '10': string;
        '30': string;
    };
    cost_over_asked_years: string;
    every_incentive_allows: boolean;
};

export type Credit = {
    question: 'credit';
    heading: Heading;
    amount: string;
    years: number;
    contract_price: string;
    any_incentive: boolean;
    allowed_uses: ('price' | 'options' | 'closing_costs' | 'points' | 'temporary_buydown')[];
    scenarios: ({
        terms: Terms;
        refusals: Refusal[];
        contribution_cap: {
            percent: string;
            of: 'price' | 'value';
            amount: string;
            taken: string;
            concessions_alone: boolean;
        } | null;
        without: Mix;
        each_use: ({
            use: 'off_price' | 'costs' | 'points' | 'buydown_1_0' | 'buydown_2_1' | 'buydown_3_2_1' | 'upfront_fee';
            name: string;
            mix: Mix | null;
            why_not: string | null;
        })[];
        lowest_payment: Mix;
        least_cash: Mix | null;
        least_cost: Mix;
        frontier: Mix[];
    })[];
    cautions: Caution[];
};

export type ShiftRate = {
    steps: number;
    by: string;
    rate: string;
    apr: string | null;
    cells: {
        refusals: Refusal[];
        loan: string;
        monthly: string;
        cash_needed: string;
        cash_to_close: string;
    }[];
};

export type ShiftLock = {
    days: number;
    ends: string;
    covers_closing: boolean;
    chosen: boolean;
    points: string | null;
    extra_cash: string | null;
};

export type ShiftRoom = {
    to_a_thousandth: string | null;
    in_steps: string | null;
};

export type ShiftIncome = {
    by: string;
    income: string;
    front: string | null;
    back: string | null;
    within: boolean;
    highest_rate: ShiftRoom;
};

export type Shift = {
    question: 'shift';
    heading: Heading;
    step: string;
    contract_price: string;
    scenarios: ({
        terms: Terms;
        refusals: Refusal[];
        monthly: string;
        cash_needed: string;
        cases: ({
            name: string;
            change: 'none' | 'price' | 'options' | 'appraisal';
            percent: string;
            amount: string;
        })[];
        rates: ShiftRate[];
        locks: ShiftLock[];
        ratios: {
            front_limit: string | null;
            back_limit: string;
            back_limit_automated: string | null;
            residual_income_tested: boolean;
            residual_income_in_place_of_ratio: boolean;
            source: string;
            least_income: string;
            least_income_automated: string | null;
            highest_rate_automated: ShiftRoom | null;
            incomes: ShiftIncome[];
        } | null;
        ratios_unknown: string[];
    })[];
    cautions: Caution[];
};

export type Recheck = {
    question: 'recheck';
    heading: Heading;
    scenario: Scenario;
    sections: ({
        title: string;
        figures: ({
            id: string;
            name: string;
            unit: 'dollars' | 'percent' | 'per_thousand' | 'mills' | 'months' | 'days' | 'payments';
            value: string;
            shown: string;
            formula: string | null;
            inputs: string[];
            rounding: number | null;
            rule: string | null;
            effective: string | null;
            until: string | null;
            beyond_end: boolean;
            status: 'published' | 'from_memory' | 'common_practice' | 'sample' | null;
            source: string | null;
            agrees: boolean;
        })[];
    })[];
    figures: number;
    differences: number;
    cautions: Caution[];
};

export type Room = {
    limit: 'front_ratio' | 'back_ratio' | 'residual_income' | 'cash' | 'program';
    needed: string;
    most: string;
    room: string;
};

export type AffordScenario = {
    terms: Terms;
    ratios: {
        front: string | null;
        back: string | null;
        automated: string | null;
        whole_percents: boolean;
        passes_by_residual_income: boolean;
        passed_by: string | null;
        status: 'published' | 'from_memory' | 'common_practice' | 'sample';
        source: string;
    } | null;
    residual_income: {
        tested: boolean;
        words: string;
        guide: string | null;
        upkeep: string;
        status: 'published' | 'from_memory' | 'common_practice' | 'sample';
        source: string;
    } | null;
    qualifying_rate: string | null;
    qualifying_source: string;
    price: string | null;
    rooms: Room[];
    binds: ('front_ratio' | 'back_ratio' | 'residual_income' | 'cash' | 'program')[];
    refusals: Refusal[];
    next_price: string | null;
    next_binds: ('front_ratio' | 'back_ratio' | 'residual_income' | 'cash' | 'program')[];
    step: {
        price: string;
        more_cash: string;
        more_income: string;
        more_after_tax: string;
        less_debts: string;
        debts_suffice: boolean;
        lower_rate: {
            rate: string;
            points: string;
        } | null;
        refusals: Refusal[];
    } | null;
    least_price?: string;
    plans: {
        plan: string;
        elevation: string;
        lot: string;
        price: string;
        homes: number;
    }[];
    scenario?: Scenario;
};

export type Afford = {
    question: 'afford';
    heading: Heading;
    reserve_months: number;
    automated: boolean;
    assumptions: string[];
    scenarios: AffordScenario[];
    cautions: Caution[];
};

export type LaterPath = {
    way: 'financed' | 'cash' | 'after' | 'after_lent';
    refusals: Refusal[];
    at_closing: string;
    a_month: string;
    months: number;
    cost: string[];
};

export type LaterScenario = {
    terms: Terms;
    monthly_without: string;
    refusals: Refusal[];
    ways: LaterPath[];
    break_even: ({
        dearer: 'financed' | 'cash' | 'after' | 'after_lent';
        than: 'financed' | 'cash' | 'after' | 'after_lent';
        month: number;
        to: number | null;
        when: string;
    })[];
};

export type Later = {
    question: 'later';
    heading: Heading;
    month: number;
    items: ({
        id: string;
        name: string;
        level: string;
        price: string;
        estimate: string | null;
        note: string;
        why_not: string;
        work: ('gas' | 'wiring' | 'plumbing' | 'structure')[];
        scenarios: LaterScenario[];
    })[];
    cautions: Caution[];
};

export type Shown = {
    area: string;
    name: string;
    as_shown: string;
    quantity: string | null;
    unit: 'each' | 'sq_ft' | 'linear_ft';
    standing: 'included' | 'free_choice' | 'yours' | 'yours_partly' | 'extra' | 'unavailable' | 'decor';
    price: string | null;
    yours: string | null;
    your_level: string;
    why_not: string;
};

export type FurnishedModel = {
    question: 'shown';
    heading: Heading;
    model: {
        plan: string;
        elevation: string;
        lot: string;
        note: string;
    };
    included: {
        area: string;
        text: string;
    }[];
    items: Shown[];
    shown_total: string;
    missing: string;
};

export type MonthRow = {
    month: number;
    due: string;
    rate: string;
    payment: string;
    interest: string;
    principal: string;
    mortgage_insurance: string;
    balance: string;
    from_buydown: string;
};

export type YearRow = {
    year: number;
    last_due: string;
    payment: string;
    interest: string;
    principal: string;
    mortgage_insurance: string;
    balance: string;
    from_buydown: string;
};

export type Schedule = {
    question: 'schedule';
    heading: Heading;
    scenario: Scenario;
    rate_way: 'fixed' | 'index_of_the_day' | 'given_index' | 'worst_case';
    at_closing: {
        date: string;
        principal: string;
        balance: string;
    } | null;
    rows: MonthRow[];
    years: YearRow[];
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
    cautions: Caution[];
};

export type NamedPick = {
    option: string;
    name: string;
    form: string;
};

export type AreaInShort = {
    id: string;
    name: string;
    price: string;
    chosen: NamedPick[];
};

export type TourPick = {
    option: string;
    level?: string;
    choice?: string;
    quantity?: string;
    spend?: string;
};

export type Touch = {
    takes_out: boolean;
    price: string;
    refusals?: Refusal[];
    per_month?: string;
    cash_needed?: string;
    cash_to_close?: string;
    jumps: string[];
    along: string[];
    instead_of: string[];
    brings: TourPick[];
    drops: string[];
};

export type Form = {
    id: string;
    name: string;
    note: string;
    office_note?: string;
    picture: string;
    color: string;
    state: 'included' | 'chosen' | 'in_package' | 'offered' | 'unavailable';
    why: string;
    price: string | null;
    touch: Touch | null;
};

export type Option = {
    id: string;
    name: string;
    kind: 'upgrade' | 'levels' | 'choice' | 'allowance' | 'package';
    text: string;
    note: string;
    office_note?: string;
    picture: string;
    color: string;
    picked: boolean;
    agreed: boolean;
    wish: number | null;
    structural: boolean;
    work: ('gas' | 'wiring' | 'plumbing' | 'structure')[];
    cutoff: string;
    cutoff_passed: boolean;
    one_of: string;
    later: {
        estimate: string;
        each: boolean;
        note: string;
    } | null;
    quantity: {
        now: string;
        unit: 'each' | 'sq_ft' | 'linear_ft';
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
};

export type Area = {
    id: string;
    name: string;
    price: string;
    included: string[];
    shown: Shown[];
    options: Option[];
    requests: ({
        text: string;
        estimate: string | null;
    })[];
};

export type Incentive = {
    id: string;
    name: string;
    amount: string;
    left: string;
    conditions: string;
    lender: string;
    expires: string | null;
    close_by: string | null;
    why_not: string;
    uses: ('price' | 'options' | 'closing_costs' | 'points' | 'temporary_buydown')[];
    used: ({
        use: 'price' | 'options' | 'closing_costs' | 'points' | 'temporary_buydown';
        amount: string | null;
        given: string;
    })[];
};

export type Emptied = {
    keeps: string[];
    price: string;
    refusals?: Refusal[];
    per_month?: string;
    cash_needed?: string;
    cash_to_close?: string;
};

export type Tour = {
    question: 'tour';
    heading: Heading;
    contract_price: string;
    options: string;
    stage: string;
    drawn: boolean;
    model: string;
    scenario: Scenario;
    all_areas: AreaInShort[];
    areas: Area[];
    wishes: NamedPick[];
    incentives: Incentive[];
    emptied: Emptied | null;
    cautions: Caution[];
};

export type FitWish = {
    id: string;
    name: string;
    level: string;
    rank: number;
    must: boolean;
    worth: string;
    quantity: string;
    unit: 'each' | 'sq_ft' | 'linear_ft';
};

export type FitLeftOut = {
    wish: FitWish;
    reason: 'rule' | 'limits' | 'loan';
    rule: string;
    along: string[];
    instead_of: string[];
    price?: string;
    refusals?: Refusal[];
    per_month?: string;
    cash?: string;
    over_monthly?: string;
    over_cash?: string;
    jumps?: string[];
};

export type FitHome = {
    lot: string;
    barred: string;
    fits: boolean;
    proven: boolean;
    cheapest: boolean;
    worth: string;
    most_worth: string;
    gap: string;
    nodes: number;
    chosen: (FitWish & {
        price: string;
    })[];
    needed: {
        id: string;
        name: string;
        price: string;
    }[];
    held: FitWish[];
    left_out: FitLeftOut[];
    next: {
        wish: FitWish;
        raise_monthly: string;
        raise_cash: string;
        limit_monthly: string;
        limit_cash: string;
        can_be_chosen: boolean;
        give_up: string[];
        gained: string[];
        worth: string;
        proven: boolean;
    } | null;
    incentives_lost: string[];
    over_monthly: string;
    over_cash: string;
    miss: {
        least_over_monthly: string;
        least_over_cash: string;
        in_one_home: boolean;
        proven: boolean;
    } | null;
    price: string | null;
    scenario: Scenario | null;
};

export type Fit = {
    question: 'fit';
    heading: Heading;
    limits: {
        monthly: string;
        cash: string;
    };
    lots: boolean;
    scenarios: {
        terms: Terms;
        best_lot: string;
        homes: FitHome[];
    }[];
    cautions: Caution[];
};

export type Measure = {
    name: string;
    value: string;
    words: string;
};

export type FallsOut = {
    option: string;
    name: string;
    why: string;
};

export type Move = {
    price: string;
    refusals?: Refusal[];
    per_month?: string;
    cash_needed?: string;
    cash_to_close?: string;
};

export type Lot = {
    id: string;
    status: 'free' | 'held' | 'sold';
    premium: string;
    grade: 'level' | 'garden' | 'walk_out';
    flood_zone: boolean;
    plans: string[];
    every_plan: boolean;
    note: string;
    office_note?: string;
    measures: Measure[];
    chosen: boolean;
    fits: boolean;
    can_be_had: boolean;
    falls_out: FallsOut[];
    move: Move | null;
};

export type Elevation = {
    id: string;
    name: string;
    note: string;
    picture: string;
    color: string;
    price: string;
    falls_out: FallsOut[];
    move: Move | null;
};

export type Plan = {
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
};

export type SiteMap = {
    north: number;
    svg: string;
};

export type Site = {
    question: 'site';
    heading: Heading;
    lot: string;
    plan: string;
    elevation: string;
    note: string;
    terms: Terms;
    lots: Lot[];
    plans: Plan[];
    map: SiteMap | null;
    cautions: Caution[];
};

export type BroughtBy = {
    option: string;
    name: string;
};

export type FloorRoom = {
    id: string;
    name: string;
    area: string;
    living: boolean;
    open: boolean;
    square_feet: string;
    width: string;
    depth: string;
    rectangular: boolean;
    size: string;
    outline: string[][];
    by: BroughtBy[];
};

export type FloorOpening = {
    id: string;
    kind: 'window' | 'door' | 'double_door' | 'sliding_door' | 'garage_door' | 'cased';
    from: string[];
    to: string[];
    opens: 'left' | 'right';
    by: BroughtBy[];
};

export type FloorStairs = {
    id: string;
    to: string;
    outline: string[][];
    from: string[];
    toward: string[];
    by: BroughtBy[];
};

export type FloorSymbol = {
    id: string;
    kind: 'counter' | 'island' | 'sink' | 'range' | 'refrigerator' | 'ovens' | 'tub' | 'shower' | 'toilet' | 'vanity' | 'washer' | 'dryer' | 'fireplace' | 'shelves' | 'lockers' | 'bench' | 'furnace' | 'water_heater' | 'steps' | 'vault' | 'tray' | 'car';
    outline: string[][];
    by: BroughtBy[];
};

export type FloorOfPlan = {
    id: string;
    name: string;
    square_feet: string;
    rooms: FloorRoom[];
    openings: FloorOpening[];
    stairs: FloorStairs[];
    symbols: FloorSymbol[];
    svg: string;
};

export type Rooms = {
    question: 'rooms';
    heading: Heading;
    plan: string;
    floors: FloorOfPlan[];
    notes: string[];
    cautions: Caution[];
};

export type ListGap = {
    list: 'maximum_ltv' | 'loan_limit' | 'upfront_fee' | 'annual_fee' | 'annual_fee_months' | 'contribution_cap' | 'points_adjustment' | 'mortgage_insurance' | 'single_premium' | 'homeowner' | 'ratios' | 'residual_income';
    kind: 'ended' | 'not_yet' | 'no_row';
    until?: string;
    effective?: string;
    words: string;
};

export type Program = {
    id: string;
    name: string;
    kind: 'conventional' | 'fha' | 'va' | 'usda';
    choices: ('fee' | 'mi_premium' | 'mi_ends' | 'use')[];
    summary: string;
    fine_print: string;
    upfront_fee: string;
    annual_fee: string;
    used_beyond_end: ListGap[];
    not_known: ListGap[];
    ladders: {
        months: number;
        term: string;
        lock_days: number;
        rungs: {
            rate: string;
            points: string;
        }[];
    }[];
};

export type Programs = {
    question: 'programs';
    heading: Heading;
    note: string;
    programs: Program[];
    cautions: Caution[];
};

export type TermCode =
    | 'contract_price'
    | 'plan'
    | 'elevation'
    | 'lot_premium'
    | 'option'
    | 'package'
    | 'allowance'
    | 'incentive'
    | 'decide_by'
    | 'price_book'
    | 'monthly_payment'
    | 'principal_and_interest'
    | 'property_taxes'
    | 'homeowners_insurance'
    | 'mortgage_insurance'
    | 'dues'
    | 'escrow_account'
    | 'loan_amount'
    | 'base_loan'
    | 'upfront_fee'
    | 'down_payment'
    | 'loan_term'
    | 'interest_rate'
    | 'apr'
    | 'points'
    | 'lender_credit'
    | 'rate_lock'
    | 'rate_sheet'
    | 'fixed_rate'
    | 'adjustable_rate'
    | 'temporary_buydown'
    | 'extra_principal'
    | 'cash_needed'
    | 'cash_to_close'
    | 'closing'
    | 'closing_costs'
    | 'prepaids'
    | 'prepaid_interest'
    | 'earnest_money'
    | 'option_deposit'
    | 'contribution_limit'
    | 'appraised_value'
    | 'ltv'
    | 'housing_ratio'
    | 'dti'
    | 'residual_income'
    | 'reserves'
    | 'underwriting'
    | 'credit_score'
    | 'finance_charge'
    | 'amount_financed'
    | 'total_of_payments'
    | 'tip'
    | 'loan_estimate'
    | 'closing_disclosure'
    | 'loan_originator';
