// The builder's money in an inquiry: a split of it written in, and taken out again.
import type {Mix} from './answers';
import type {Inquiry} from './engine';
import {is_zero} from './figures';
import {as_code, copy} from './inquiry';
import {every_language, say} from './language';
import type {CreditUse} from './words/english/money';

/// The names of credits that stand for the money on top, in whichever language one was written.
const on_top = new Set(every_language.flatMap((words) => Object.values(words.money.credit_names)));

/// All that a split of the money can change.
export interface Standing {
    scenario: string;
    rate?: unknown;
    buydown?: unknown;
    fee?: unknown;
    mi_premium?: unknown;
    incentives?: unknown;
    credits?: unknown;
}

/// The money put to use once: how things stood without it, and with it.
export interface Use {
    before: Standing;
    after: Standing;
}

function loan_of(inquiry: Inquiry, scenario: string): any {
    return (inquiry.scenarios ?? []).find((one: any) => one.name === scenario);
}

export function standing(inquiry: Inquiry, scenario: string): Standing {
    const loan = loan_of(inquiry, scenario);
    const {incentives, credits} = inquiry;
    const {rate, buydown, fee, mi_premium} = loan ?? {};
    return copy({scenario, rate, buydown, fee, mi_premium, incentives, credits}) as any;
}

/// A file may have the word of a use, or its code.
function alike(a: Standing, b: Standing): boolean {
    const coded = ({incentives, credits, ...loan}: any) =>
        JSON.stringify({
            ...loan,
            incentives: incentives?.map((one: any) => ({...one, use: as_code(`${one.use}`)})),
            credits: credits?.map((one: any) => ({...one, uses: one.uses?.map(as_code)})),
        });
    return coded(a) === coded(b);
}

export function stands_alike(a: Inquiry, b: Inquiry, scenario: string): boolean {
    return alike(standing(a, scenario), standing(b, scenario));
}

function set(record: any, members: Record<string, unknown>): void {
    for (const [name, value] of Object.entries(members)) {
        if (value === undefined) delete record[name];
        else record[name] = value;
    }
}

/// The inquiry with a loan and the money as they stand there.
function with_standing(inquiry: Inquiry, stands: Standing): Inquiry {
    const next = copy(inquiry);
    const {scenario, rate, buydown, fee, mi_premium, incentives, credits} = copy(stands as any);
    set(next, {incentives, credits});
    set(loan_of(next, scenario) ?? {}, {rate, buydown, fee, mi_premium});
    return next;
}

/// The inquiry as it stands, with what the money put to use under a loan changes and nothing else:
/// `bare` and `next` are the inquiry without it and with it, as they were asked about.
export function with_use(
    inquiry: Inquiry,
    bare: Inquiry,
    next: Inquiry,
    scenario: string,
): Inquiry {
    const now: any = standing(inquiry, scenario);
    const [from, to]: any[] = [standing(bare, scenario), standing(next, scenario)];
    const changed = ['rate', 'buydown', 'fee', 'mi_premium', 'incentives', 'credits'].filter(
        (member) => JSON.stringify(from[member]) !== JSON.stringify(to[member]),
    );
    return with_standing(
        inquiry,
        Object.assign(now, Object.fromEntries(changed.map((member) => [member, to[member]]))),
    );
}

/// The inquiry as it stood before the money was put to use, every other change kept: where a split
/// is looked for and written, so that the same money is never counted twice. An inquiry that nobody
/// remembers, out of a file, has its credits on top taken out.
export function without_money(inquiry: Inquiry, uses: Use[]): Inquiry {
    const as_now = ({after}: Use) => alike(after, standing(inquiry, after.scenario));
    const before = [...uses].reverse().find(as_now)?.before;
    if (before) return with_standing(inquiry, before);
    const next = copy(inquiry);
    if (next.credits) {
        next.credits = next.credits.filter((one: any) => !on_top.has(one.name));
        if (next.credits.length === 0) delete next.credits;
    }
    return next;
}

/// What goes into a loan for a split of a builder's money: its rate where it moves, its buydown, what
/// is paid in cash.
function with_split_loan(inquiry: Inquiry, scenario: string, mix: Mix): Inquiry {
    const next = copy(inquiry);
    const loan = next.scenarios.find((one: any) => one.name === scenario);
    if (!is_zero(mix.pays.points)) loan.rate = {note: mix.rate};
    delete loan.buydown;
    if (mix.buydown) loan.buydown = mix.buydown;
    if (mix.paid_in_cash === 'upfront_fee') loan.fee = 'cash';
    if (mix.paid_in_cash === 'single_premium') {
        loan.mi_premium = 'single';
        delete loan.fee;
    }
    return next;
}

/// A split of a builder's money as an inquiry can hold it: in place of the one incentive that it
/// uses, as uses of that incentive; on top, as credits. The engine says whether it comes to the same.
export function splits_written(
    inquiry: Inquiry,
    scenario: string,
    mix: Mix,
    instead: boolean,
): Inquiry[] {
    const loan = with_split_loan(inquiry, scenario, mix);
    const amounts: [CreditUse, string][] = [
        ['points', mix.pays.points],
        ['temporary_buydown', mix.pays.buydown],
        ['closing_costs', mix.pays.closing_costs],
        ['upfront_fee', mix.pays.upfront_fee],
        ['prepaids', mix.pays.prepaids],
    ];
    const paid = amounts.filter(([, amount]) => !is_zero(amount));
    if (!instead) {
        if (!is_zero(mix.off_price)) return [];
        const credits = paid.map(([use, amount]) => ({
            name: say.money.credit_names[use],
            from: 'builder',
            amount,
            uses: [use],
        }));
        return [{...loan, credits: [...(loan.credits ?? []), ...credits]}];
    }
    const ids = new Set<string>((inquiry.incentives ?? []).map((one: any) => one.id));
    if (ids.size !== 1) return [];
    const [id] = ids;
    // Closing costs come last and take what is left: they pay an upfront fee and prepaids too.
    const first = paid.filter(([use]) => use === 'points' || use === 'temporary_buydown');
    const rest = paid.length > first.length ? [{id, use: 'closing_costs'}] : [];
    return ['options', 'price'].map((use) => ({
        ...loan,
        incentives: [
            ...(is_zero(mix.off_price) ? [] : [{id, use, amount: mix.off_price}]),
            ...first.map(([to, amount]) => ({id, use: to, amount})),
            ...rest,
        ],
    }));
}
