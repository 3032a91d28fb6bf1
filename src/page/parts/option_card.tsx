// One option of the tour: its forms to touch, its number or its budget, what has to be known of it.
import type {ComponentChildren} from 'preact';

import type {AddsItem, Form, Option, Touch} from '../answers';
import {ask} from '../engine';
import {brief, is_zero, plain, short, signed} from '../figures';
import {say} from '../language';
import {present, with_quantity, with_spend, without} from '../inquiry';
import {act, buyer, tell, touch, tour} from '../store';
import type {Change} from '../store';
import {plain_number} from '../typed';
import {wish_for} from '../wishes';
import type {Unit} from '../words/english/codes';
import {marked, small} from './marks';
import {Typed, use_typed} from './typed_field';
import {turn_wish} from './wish_list';
import {Name} from './name';
import {Term} from './term';

/// Single things have none.
function unit_of({unit}: {unit: Unit}): string | null {
    return unit === 'each' ? null : say.codes.units[unit];
}

/// What a touch would change, beside what it is a touch on.
function Effect({how, taken}: {how: Touch; taken: boolean}) {
    if (how.refusals) {
        return (
            <span class="effect refused">{how.refusals.map((one) => one.words).join('; ')}</span>
        );
    }
    const month = how.per_month ?? '';
    const cash = how.cash_needed ?? '';
    const nothing = is_zero(how.price) && is_zero(month) && is_zero(cash);
    if (nothing) return null;
    return (
        <span class="effect">
            {taken && <span class="effect-cash">{say.options.taking_it_out}</span>}
            <span class="effect-month">
                {say.common.monthly_small({amount: signed(month), small})}
            </span>
            <span class="effect-cash">
                {say.options.cash_in_all({amount: signed(cash), roomy: marked('roomy')})}
            </span>
        </span>
    );
}

function words_beside(how: Touch | null): string {
    if (!how) return '';
    const words = [];
    const {takes_out, brings_along, takes_the_place} = say.options;
    const along = {names: how.along.map(brief).join(', ')};
    if (along.names) words.push(how.takes_out ? takes_out(along) : brings_along(along));
    if (how.instead_of.length > 0)
        words.push(takes_the_place({names: how.instead_of.map(brief).join(', ')}));
    return words.join('; ');
}

/// Without what stands in parentheses at its end: the bar says all of it after a touch.
function in_short(jump: string): string {
    return jump.replace(/ \([^()]*\)$/, '');
}

/// Beside a row that can be touched stands what the touch changes, against what is chosen now.
function price_of(option: Option, form: Form, single: boolean): string {
    if (form.state === 'in_package') return say.common.in_a_package;
    if (option.kind !== 'choice') {
        if (form.state === 'chosen' && !single)
            return say.options.yours_at({price: short(form.price)});
        if (form.touch && form.state !== 'chosen') return signed(form.touch.price, short);
    }
    if (option.kind === 'choice') return say.common.no_cost;
    if (form.state === 'included') return say.options.included;
    if (!form.price) return '';
    return is_zero(form.price) ? say.common.no_extra_cost : short(form.price);
}

/// One thing to touch: a row as wide as the page, its control at the left, its money at the right.
function Row({option, form, single}: {option: Option; form: Form; single: boolean}) {
    const on =
        form.state === 'chosen' ||
        form.state === 'in_package' ||
        (form.state === 'included' && !single);
    const held = form.state === 'in_package';
    const fixed = held || form.touch === null;
    const name = form.name || option.name;
    /// What a touch changes: one on the choice that is made changes nothing.
    const told = single || !on ? form.touch : null;
    const beside = words_beside(told);
    const tap = () => {
        if (form.touch) touch(option, form, form.touch);
    };
    return (
        <div class={`row ${on ? 'on' : ''} ${fixed ? 'fixed' : ''}`}>
            <label class="row-label">
                <input
                    type={single ? 'checkbox' : 'radio'}
                    name={option.id}
                    checked={on}
                    disabled={held}
                    onChange={(event) => {
                        if (form.state === 'chosen' && !single) return;
                        if (!form.touch) {
                            event.currentTarget.checked = on;
                            return;
                        }
                        tap();
                    }}
                />
                <span class="row-name">
                    <span class="row-title">
                        <Name of={name} />
                    </span>
                    {single && option.text && <span class="row-note">{option.text}</span>}
                    {form.note && <span class="row-note">{form.note}</span>}
                    {held && (
                        <span class="row-note">
                            {say.options.comes_in({package_name: form.why})}
                        </span>
                    )}
                    {beside && <span class="row-note bites">{beside}</span>}
                </span>
                <span class="row-money">
                    <span class="row-price">{price_of(option, form, single)}</span>
                    {told && option.kind !== 'choice' && (
                        <Effect how={told} taken={form.state === 'chosen'} />
                    )}
                </span>
                {told?.jumps.map((jump) => (
                    <span key={jump} class="row-note jump">
                        {form.state === 'chosen' && `${say.options.taking_it_out} `}
                        {in_short(jump)}
                    </span>
                ))}
            </label>
        </div>
    );
}

/// A number that the buyer says: committed with Enter, by leaving, or a step at a time.
function Stepper({option}: {option: Option}) {
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
                <input inputMode="decimal" {...field} />
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

function Allowance({option}: {option: Option}) {
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

function facts_of(option: Option): ComponentChildren[] {
    const facts: ComponentChildren[] = [];
    if (option.quantity && !option.quantity.asked) {
        const count = plain(option.quantity.now);
        facts.push(say.options.counted({count, unit: unit_of(option.quantity)}));
    }
    if (option.agreed) facts.push(say.options.agreed);
    if (option.cutoff)
        facts.push(<Term of="decide_by">{say.options.choose_before({stage: option.cutoff})}</Term>);
    if (option.work.length > 0)
        facts.push(
            say.options.work({
                trades: option.work.map((one) => say.options.trades[one]).join(', '),
            }),
        );
    return facts;
}

/// A level that no plan includes can also be left out.
function Without({option}: {option: Option}) {
    const chosen = option.forms.find((form) => form.state === 'chosen');
    const out = chosen?.touch ?? null;
    return (
        <div class={`row ${chosen ? '' : 'on'}`}>
            <label class="row-label">
                <input
                    type="radio"
                    name={option.id}
                    checked={!chosen}
                    onChange={() => {
                        if (chosen && out) touch(option, chosen, out);
                    }}
                />
                <span class="row-name">
                    <span class="row-title">{say.options.without}</span>
                </span>
                <span class="row-money">
                    {out && (
                        <>
                            <span class="row-price">{signed(out.price, short)}</span>
                            <Effect how={out} taken={false} />
                        </>
                    )}
                </span>
            </label>
        </div>
    );
}

/// On the wish list or off it, for what is not in the home.
function WishButton({option}: {option: Option}) {
    if (option.wish === null && (option.picked || !wish_for(option))) return null;
    return (
        <button
            class="wish-button"
            aria-pressed={option.wish !== null}
            onClick={() => turn_wish(option)}
        >
            {option.wish === null
                ? say.wishes.list.add
                : say.wishes.list.take_it_off({rank: `${option.wish}`})}
        </button>
    );
}

/// What doing it after the closing is estimated at: of one alone, or of all.
function later_words({later, quantity}: Option): string {
    const {estimate, each, note} = later!;
    const told = {estimate: short(estimate), note};
    if (!each) return say.options.later(told);
    return say.options.later_each({...told, unit: quantity?.unit ?? 'each'});
}

export function OptionCard({option}: {option: Option}) {
    const can = option.forms.filter((form) => form.state !== 'unavailable');
    const single = option.kind === 'upgrade' || option.kind === 'package';
    const included = option.forms.some(
        (form) => form.state === 'included' || (form.touch?.takes_out && form.state === 'offered'),
    );
    const held = option.forms.some((form) => form.state === 'in_package');
    const named = !single;
    const facts = facts_of(option);
    return (
        <article class={`option ${option.kind}`} aria-label={brief(option.name)}>
            {named && (
                <h4 class="option-name">
                    <Name of={option.name} />
                </h4>
            )}
            {!single && option.text && <p class="option-text">{option.text}</p>}
            {option.kind === 'allowance' ? (
                <Allowance option={option} />
            ) : (
                <div
                    class="rows"
                    role={single ? undefined : 'radiogroup'}
                    aria-label={single ? undefined : option.name}
                >
                    {option.kind === 'levels' && !included && !held && <Without option={option} />}
                    {can.map((form) => (
                        <Row key={form.id} option={option} form={form} single={single} />
                    ))}
                </div>
            )}
            <WishButton option={option} />
            {option.quantity?.asked && option.picked && <Stepper option={option} />}
            {option.parts.length > 0 && (
                <p class="facts">{say.options.brings({parts: option.parts.join('; ')})}</p>
            )}
            {facts.length > 0 && (
                <p class="facts">{facts.flatMap((one, at) => (at > 0 ? [' · ', one] : [one]))}</p>
            )}
            {option.note && <p class="note">{option.note}</p>}
            {option.later && <p class="note">{later_words(option)}</p>}
        </article>
    );
}
