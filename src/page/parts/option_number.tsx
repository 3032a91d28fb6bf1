// A number or a budget that the buyer says of an option.
import type {AddsItem, Option} from '../answers';
import {ask} from '../engine';
import {brief, plain, short} from '../figures';
import {present, with_quantity, with_spend, without} from '../inquiry';
import {say} from '../language';
import {act, tell} from '../state/changing';
import {buyer, tour} from '../state/signals';
import type {Change} from '../state/signals';
import {plain_number} from '../typed';
import type {Unit} from '../words/english/codes';
import {Typed, use_typed} from './typed_field';

import './option_number.css';

/// Single things have none.
export function unit_of({unit}: {unit: Unit}): string | null {
    return unit === 'each' ? null : say.codes.units[unit];
}

/// A number that the buyer says: committed with Enter, by leaving, or a step at a time.
export function Stepper({option}: {option: Option}) {
    const quantity = option.quantity!;
    const now = String(present(buyer.value!.inquiry, option.id).quantity ?? quantity.now);
    const set = (value: string) => {
        if (value === now) return;
        void change_number(option, value, (inquiry) => with_quantity(inquiry, option, value));
    };
    const field = use_typed(now, (text) =>
        set(plain_number(text, '', say.codes.units[quantity.unit])),
    );
    const next = (sign: number) => {
        const places = Math.max(
            ...[quantity.step!, quantity.now].map((one) => (one.split('.')[1] ?? '').length),
        );
        const value = Number(now) + sign * Number(quantity.step);
        const within = Math.min(Math.max(value, Number(quantity.lowest)), Number(quantity.highest));
        set(within.toFixed(places));
    };
    return (
        <div class="stepper">
            <button
                aria-label={say.options.fewer(option)}
                onClick={() => next(-1)}
                disabled={Number(now) <= Number(quantity.lowest)}
            >
                −
            </button>
            <label>
                <span class="sr">{say.options.how_many({name: brief(option.name)})}</span>
                <input inputMode="decimal" autocomplete="off" {...field} />
            </label>
            <button
                aria-label={say.options.more(option)}
                onClick={() => next(1)}
                disabled={Number(now) >= Number(quantity.highest)}
            >
                +
            </button>
            <span class="faint">
                {say.options.limits({unit: unit_of(quantity) ?? '', limits: quantity.limits ?? ''})}
            </span>
        </div>
    );
}

/// A changed number: what it changes is asked of the home as it was.
async function change_number(
    option: Option,
    value: string,
    next: (inquiry: any) => any,
): Promise<void> {
    const one = buyer.value;
    const answer = tour.value;
    if (!one || !answer) return;
    const before = one.inquiry;
    const hand = before.scenarios?.find((each: any) => each.name === answer.scenario.terms.name);
    const chosen = option.forms.find((form) => form.state === 'chosen');
    const name = `${option.id}${chosen?.id ? `:${chosen.id}` : ''}=${value}`;
    const what: Change = {
        what: say.common.with_form({name: option.name, form: plain(value)}),
        touch: null,
        remarks: [],
    };
    await tell(act(next(before), what), what, async () => {
        const adds = await ask<{items: AddsItem[]}>(
            'adds',
            {...before, scenarios: [hand]},
            {option: name},
        );
        const item = adds.items[0];
        const added = item?.by_scenario?.[0];
        if (!item?.price || !added?.available) return null;
        return {touch: {...added, price: item.price}, remarks: added.jumps.map((one) => one.words)};
    });
}

export function Allowance({option}: {option: Option}) {
    const now = String(present(buyer.value!.inquiry, option.id).spend ?? '');
    const set = (value: string) => {
        if (value === '') {
            void act(without(buyer.value!.inquiry, [option.id]), {
                what: say.options.within_allowance(option),
                touch: null,
                remarks: [],
            });
        } else {
            void change_number(option, value, (inquiry) => with_spend(inquiry, option, value));
        }
    };
    return (
        <div class="allowance">
            <p>{say.options.allowance({budget: short(option.budget)})}</p>
            <label class="field">
                <span>{say.options.to_spend}</span>
                <Typed
                    label={say.options.to_spend_on(option)}
                    before="$"
                    value={now}
                    hint={option.budget ?? ''}
                    change={set}
                />
            </label>
        </div>
    );
}
