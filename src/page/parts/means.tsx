// The buyer's means: income, debts, cash, and how strictly they are held against a loan.
import type {Inquiry} from '../engine';
import {copy} from '../inquiry';
import {say} from '../language';
import {act, buyer, problems, set_ask} from '../store';
import {Term} from './term';
import {Typed} from './typed_field';

import './means.css';

/// Where an inquiry holds a fact of the buyer: an amount, or an amount a month.
const facts: ['income' | 'debts' | 'income_taxes' | 'cash', boolean][] = [
    ['income', true],
    ['debts', true],
    ['income_taxes', true],
    ['cash', false],
];

function value_of(inquiry: Inquiry, member: string, monthly: boolean): string {
    const held = monthly ? inquiry[member]?.monthly : inquiry[member];
    return String(held ?? '');
}

/// An emptied fact is left out of the inquiry: what hangs on it is then not tested.
function write(member: string, monthly: boolean, value: string, name: string): void {
    const next = copy(buyer.value!.inquiry);
    if (value === '') delete next[member];
    else next[member] = monthly ? {...next[member], monthly: value} : value;
    void act(next, {what: name, touch: null, remarks: []}, true);
}

export function Means() {
    const {inquiry, asks} = buyer.value!;
    const {means} = say.afford;
    const wrong = (path: string) =>
        problems.value.find((one) => `${one.path}/`.startsWith(`${path}/`));
    return (
        <div class="means">
            {facts.map(([member, monthly]) => (
                <label key={member} class="field">
                    <span>{means[member]}</span>
                    <Typed
                        label={means[member]}
                        before="$"
                        value={value_of(inquiry, member, monthly)}
                        wrong={wrong(`/${member}`)}
                        change={(value) => write(member, monthly, value, means[member])}
                    />
                </label>
            ))}
            <label class="field">
                <span>{means.household}</span>
                <Typed
                    label={means.household}
                    value={String(inquiry.household ?? '')}
                    wrong={wrong('/household')}
                    change={(value) => write('household', false, value, means.household)}
                />
            </label>
            <div class="field">
                <span>
                    <Term of="reserves">{means.reserves}</Term>
                </span>
                <Typed
                    label={means.reserves_label}
                    after={means.months}
                    value={asks.reserves ?? '0'}
                    change={(value) => set_ask('reserves', value)}
                />
            </div>
            <label class="tick-box">
                <input
                    type="checkbox"
                    checked={asks.automated === 'yes'}
                    onChange={(event) =>
                        set_ask('automated', event.currentTarget.checked ? 'yes' : '')
                    }
                />
                <span>{means.automated}</span>
            </label>
            <p class="facts means-note">{means.note}</p>
        </div>
    );
}
