// The buyer's means: income, debts, cash, and how strictly they are held against a loan.
import {useState} from 'preact/hooks';

import type {Inquiry} from '../engine';
import {is_zero} from '../figures';
import {copy} from '../inquiry';
import {say} from '../language';
import {act, set_ask} from '../state/changing';
import {buyer, problems} from '../state/signals';
import {Term} from './term';
import {Typed} from './typed_field';
import './means.css';

/// Where an inquiry holds a fact of the buyer: an amount, or an amount a month.
type Member = 'income' | 'debts' | 'income_taxes' | 'cash';
const facts: [Member, boolean][] = [
    ['income', true],
    ['debts', true],
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

const wrong = (path: string) => problems.value.find((one) => `${one.path}/`.startsWith(`${path}/`));

function Fact({member, monthly}: {member: Member; monthly: boolean}) {
    const name = say.afford.means[member];
    return (
        <label class="field">
            <span>{name}</span>
            <Typed
                label={name}
                before="$"
                value={value_of(buyer.value!.inquiry, member, monthly)}
                wrong={wrong(`/${member}`)}
                change={(value) => write(member, monthly, value, name)}
            />
        </label>
    );
}

export function Means() {
    const {means} = say.afford;
    const [open, turn] = useState(asked_for_more);
    return (
        <div class="means">
            {facts.map(([member, monthly]) => (
                <Fact key={member} member={member} monthly={monthly} />
            ))}
            <p class="facts means-note">{means.note}</p>
            <details
                class="more means-more"
                open={open}
                onToggle={(event) => turn(event.currentTarget.open)}
            >
                <summary>{means.more}</summary>
                <MoreMeans />
            </details>
        </div>
    );
}

/// Some of it was typed already, or is wrong.
function asked_for_more(): boolean {
    const {inquiry, asks} = buyer.value!;
    return (
        inquiry.income_taxes !== undefined ||
        inquiry.household !== undefined ||
        !is_zero(asks.reserves) ||
        asks.automated === 'yes'
    );
}

/// What some programs and lenders hold a loan against besides.
function MoreMeans() {
    const {inquiry, asks} = buyer.value!;
    const {means} = say.afford;
    return (
        <div class="means-fields">
            <Fact member="income_taxes" monthly />
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
            <p class="facts means-note">{means.rules_note}</p>
        </div>
    );
}
