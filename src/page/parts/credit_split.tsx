// One split of a builder's money: what it goes to, what comes of it, and its way into the inquiry.
import {useEffect, useState} from 'preact/hooks';

import type {Cash, Mix} from '../answers';
import {ask, Refused} from '../engine';
import type {Inquiry} from '../engine';
import {closing_name, dollars, is_zero, rate_percent, size, unsigned} from '../figures';
import {without_means} from '../inquiry';
import {language, say} from '../language';
import {splits_written, stands_alike} from '../money';
import {lost} from '../state/asking';
import {use_money} from '../state/changing';
import {answered, gone} from '../state/signals';
import {points_words} from './terms';

import './month_bar.css';
import './credit_split.css';

function fee_name({paid_in_cash}: Mix): string {
    const {fee_financed, fee_in_cash} = say.money.shares;
    return paid_in_cash === 'none'
        ? fee_financed
        : fee_in_cash({fee: say.codes.paid_in_cash[paid_in_cash]});
}

/// What the money goes to, with the member of the price or the pay that says how much.
function shares_of(mix: Mix): [string, string, string][] {
    const words = say.money.shares;
    const points = words.points({rate: rate_percent(mix.rate), points: points_words(mix.points)});
    const shares: [string, string, string][] = [
        ['off_price', words.off_price, mix.off_price],
        ['points', points, mix.pays.points],
        ['buydown', words.buydown({buydown: mix.buydown ?? ''}), mix.pays.buydown],
        ['closing_costs', words.closing_costs, mix.pays.closing_costs],
        ['upfront_fee', fee_name(mix), mix.pays.upfront_fee],
        ['prepaids', words.prepaids, mix.pays.prepaids],
        ['without_use', words.without_use, mix.without_use],
        ['over_cap', words.over_cap, mix.over_cap],
    ];
    return shares.filter(([, , amount]) => !is_zero(amount));
}

function SplitBar({mix, amount}: {mix: Mix; amount: string}) {
    let at = 0;
    return (
        <svg class="month-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
            {shares_of(mix).map(([key, , part]) => {
                const width = (size(part) / Math.max(size(amount), 1)) * 100;
                const x = at;
                at += width;
                return (
                    <rect
                        key={key}
                        class={`split ${key}`}
                        x={x}
                        width={Math.max(width - 0.3, 0.1)}
                        height="6"
                    />
                );
            })}
        </svg>
    );
}

/// The inquiry in which the engine comes to the same loan and cash as this split; or why there is
/// none.
async function held(
    inquiry: Inquiry,
    scenario: string,
    mix: Mix,
    instead: boolean,
): Promise<{next: Inquiry | null; why: string}> {
    let why = say.money.split.not_off_price;
    for (const next of splits_written(inquiry, scenario, mix, instead)) {
        try {
            const found = (await ask<Cash>('cash', without_means(next)!, {scenario})).scenario;
            const same = found.cash.to_close === mix.cash_to_close && found.loan === mix.loan;
            if (found.available && same) return {next, why: ''};
        } catch (error) {
            if (!(error instanceof Refused)) throw error;
            why = say.money.split.not_so({why: error.problems[0].found});
        }
    }
    return {next: null, why};
}

/// What is looked for again whenever the inquiry changes or the program is back.
function use_held(inquiry: Inquiry, scenario: string, mix: Mix, instead: boolean) {
    const [can, know] = useState<{next: Inquiry | null; why: string} | null>(null);
    useEffect(() => {
        let wanted = true;
        know(null);
        held(inquiry, scenario, mix, instead).then(
            (found) => {
                if (wanted) know(found);
            },
            () => lost(),
        );
        return () => {
            wanted = false;
        };
    }, [JSON.stringify([inquiry, scenario, mix, instead]), language.value, gone.value]);
    return can;
}

/// The split into the inquiry, which is without the money, in place of how it is used now.
function UseItSo({
    inquiry,
    scenario,
    mix,
    instead,
}: {
    inquiry: Inquiry;
    scenario: string;
    mix: Mix;
    instead: boolean;
}) {
    const can = use_held(inquiry, scenario, mix, instead);
    const now = answered.value!;
    const as_now = can?.next && stands_alike(can.next, now, scenario);
    return (
        <div class="split-use">
            {as_now ? (
                <p class="facts">{say.money.split.as_now}</p>
            ) : can && !can.next ? (
                <p class="facts">{can.why}</p>
            ) : (
                <button
                    class="main-button"
                    disabled={!can?.next}
                    onClick={() =>
                        use_money(
                            inquiry,
                            can!.next!,
                            scenario,
                            say.money.split.used({loan: scenario}),
                        )
                    }
                >
                    {say.money.split.use}
                </button>
            )}
            {!stands_alike(inquiry, now, scenario) && (
                <button
                    class="step"
                    onClick={() => use_money(inquiry, inquiry, scenario, say.money.split.taken_out)}
                >
                    {say.money.split.take_out}
                </button>
            )}
        </div>
    );
}

export function Split({
    name,
    mix,
    amount,
    years,
    inquiry,
    scenario,
    instead,
}: {
    name: string;
    mix: Mix;
    amount: string;
    years: string;
    inquiry: Inquiry;
    scenario: string;
    instead: boolean;
}) {
    const rows: [string, string][] = [
        [say.money.table.month_now, dollars(mix.monthly_now)],
        [say.money.split.month_after_three_years, dollars(mix.monthly_after_three_years)],
        [closing_name(mix.cash_to_close), unsigned(mix.cash_to_close)],
        [say.money.split.all_cash, dollars(mix.cash_needed)],
        [say.common.note_rate, rate_percent(mix.rate)],
        [say.common.apr, mix.apr ? rate_percent(mix.apr) : say.common.apr_not_found],
        [say.money.table.cost_over({years}), dollars(mix.cost_over_asked_years)],
    ];
    return (
        <section class="split-card" aria-live="polite">
            <h4>{name}</h4>
            <SplitBar mix={mix} amount={amount} />
            <dl class="parts">
                {shares_of(mix).map(([key, words, part]) => (
                    <div key={key}>
                        <dt>
                            <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                                <rect class={`split ${key}`} width="10" height="10" />
                            </svg>
                            {words}
                        </dt>
                        <dd>{dollars(part)}</dd>
                    </div>
                ))}
            </dl>
            <dl class="facts-list">
                {rows.map(([what, value]) => (
                    <div key={what}>
                        <dt>{what}</dt>
                        <dd>{value}</dd>
                    </div>
                ))}
            </dl>
            <UseItSo inquiry={inquiry} scenario={scenario} mix={mix} instead={instead} />
        </section>
    );
}
