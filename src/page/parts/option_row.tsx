// One thing to touch: its control, its name, and what a touch changes in price and in the month.
import {createContext} from 'preact';
import type {ComponentChildren} from 'preact';
import {useContext} from 'preact/hooks';

import type {Form, Option, Touch} from '../answers';
import {brief, is_zero, plain, rounded, short, signed} from '../figures';
import {say} from '../language';
import {touch} from '../state/changing';
import {Amount} from './amount';
import {Look} from './look';
import {Name} from './name';
import {OfficeNote} from './office_note';
import {unit_of} from './option_number';

import './option_row.css';

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

/// Beside a row that can be touched stands what the touch changes, against what is chosen now.
export function price_of(option: Option, form: Form, single: boolean): string {
    if (form.state === 'in_package') return say.common.in_a_package;
    if (option.kind !== 'choice') {
        if (form.state === 'chosen' && !single) return short(form.price);
        if (form.touch && form.state !== 'chosen') return signed(form.touch.price, short);
    }
    if (option.kind === 'choice') return say.common.no_cost;
    if (form.state === 'included') return say.options.included;
    if (!form.price) return '';
    return is_zero(form.price) ? say.common.no_extra_cost : short(form.price);
}

/// A difference of the month, against what is chosen now; of what is chosen, what it comes to.
function Month({how, taken}: {how: Touch | null; taken: boolean}) {
    if (!how?.per_month || is_zero(how.per_month)) return null;
    const write = (amount: string) =>
        taken ? rounded(without_sign(amount)) : signed(amount, rounded);
    return <Amount of={how.per_month} write={write} />;
}

function without_sign(amount: string): string {
    return amount.replace('-', '');
}

/// The form that is in the home.
export function in_the_home(option: Option): Form | undefined {
    return (
        option.forms.find((form) => form.state === 'chosen' || form.state === 'in_package') ??
        option.forms.find((form) => form.state === 'included')
    );
}

/// The two columns at the right of a row.
export function Money({
    price,
    how = null,
    taken = false,
}: {
    price: string;
    how?: Touch | null;
    taken?: boolean;
}) {
    const refused = how?.refusals !== undefined;
    return (
        <span class="row-money">
            <span class="row-price">{refused ? say.common.not_to_be_had : price}</span>
            <span class="row-month">{!refused && <Month how={how} taken={taken} />}</span>
        </span>
    );
}

/// How many of it there are, beside its name.
function count_of({picked, quantity}: Option): string {
    if (!picked || !quantity?.asked) return '';
    const unit = unit_of(quantity);
    return unit ? `${plain(quantity.now)} ${unit}` : `× ${plain(quantity.now)}`;
}

/// The jumps that rows say, each by the option that is the first to make it: others say it opened.
export type Said = ReadonlyMap<string, string>;
export const FirstSaid = createContext<Said>(new Map());

export function first_said(options: Option[]): Said {
    const said = new Map<string, string>();
    for (const {id, forms} of options)
        for (const jump of forms.flatMap((form) => form.touch?.jumps ?? []))
            if (!said.has(jump)) said.set(jump, id);
    return said;
}

/// What a touch changes that its two figures do not say; whole in what the option opens. Null where
/// they say all.
function use_beside(
    id: string,
    how: Touch | null,
    chosen: boolean,
    held: string,
): ComponentChildren {
    const said = useContext(FirstSaid);
    const beside = words_beside(how);
    const step = !chosen && how?.jumps.some((jump) => said.get(jump) === id);
    if (!held && !beside && !step) return null;
    return (
        <span class="row-beside">
            {held && say.options.comes_in({package_name: held})}
            {beside && <span class="bites">{beside}</span>}
            {step && <span class="step-mark">{say.options.rate_step}</span>}
        </span>
    );
}

/// What a touch on a form changes, in words, where its option is open.
export function Consequences({form, how}: {form: Form; how: Touch | null}) {
    const words: ComponentChildren[] = [];
    if (form.note) words.push(form.note);
    if (how?.refusals) words.push(how.refusals.map((one) => one.words).join('; '));
    const chosen = form.state === 'chosen';
    if (how?.cash_needed && !is_zero(how.cash_needed) && !chosen) {
        const amount = <Amount of={how.cash_needed} write={signed} />;
        words.push(say.options.cash_needed({amount}));
    }
    for (const jump of how?.jumps ?? []) {
        words.push(chosen ? `${say.options.taking_it_out} ${jump}` : jump);
    }
    return (
        <>
            {words.map((one, at) => (
                <p key={at} class="row-note">
                    {one}
                </p>
            ))}
            <OfficeNote of={form} />
        </>
    );
}

/// What a touch on the form would do; one on the level or choice that is made does nothing.
export function told_by(form: Form, single: boolean): Touch | null {
    return single || !is_on(form, single) ? form.touch : null;
}

export function is_on({state}: Form, single: boolean): boolean {
    return state === 'chosen' || state === 'in_package' || (state === 'included' && !single);
}

/// A row as wide as the page; of a group of levels or choices, or an option alone.
export function Row({option, form, single}: {option: Option; form: Form; single: boolean}) {
    const on = is_on(form, single);
    const held = form.state === 'in_package';
    const fixed = held || form.touch === null;
    const told = told_by(form, single);
    const chosen = form.state === 'chosen';
    const count = single ? count_of(option) : '';
    const beside = use_beside(option.id, told, chosen, held ? form.why : '');
    return (
        <div class={`row ${on ? 'on' : ''} ${fixed ? 'fixed' : ''}`}>
            <label class="row-label">
                <input
                    type={single ? 'checkbox' : 'radio'}
                    name={option.id}
                    checked={on}
                    disabled={held}
                    onChange={(event) => {
                        if (chosen && !single) return;
                        if (form.touch) touch(option, form, form.touch);
                        else event.currentTarget.checked = on;
                    }}
                />
                <Look of={single ? option : form} />
                <span class={`row-name ${beside ? 'with-beside' : ''}`}>
                    <span class="row-title">
                        <Name of={form.name || option.name} />
                        {count && <span class="row-count"> {count}</span>}
                    </span>
                    {beside}
                </span>
                <Money
                    price={price_of(option, form, single)}
                    how={option.kind === 'choice' ? null : told}
                    taken={chosen}
                />
            </label>
        </div>
    );
}

/// A level that no plan includes can also be left out.
export function Without({option}: {option: Option}) {
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
                <Money price={out ? signed(out.price, short) : ''} how={out} />
            </label>
        </div>
    );
}
