// The buyer's means: income, debts, cash, and how strictly they are held against a loan.
import type {Inquiry} from '../engine';
import {copy} from '../inquiry';
import {act, buyer, problems, set_ask} from '../store';
import {Typed} from './typed_field';

/// Where an inquiry holds a fact of the buyer: an amount, or an amount a month.
const facts: [string, boolean, string][] = [
    ['income', true, 'Gross income a month'],
    ['debts', true, 'Debts a month'],
    ['income_taxes', true, 'Taxes on the income a month'],
    ['cash', false, 'Cash there is'],
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
    const wrong = (path: string) =>
        problems.value.find((one) => `${one.path}/`.startsWith(`${path}/`));
    return (
        <div class="means">
            {facts.map(([member, monthly, name]) => (
                <label key={member} class="field">
                    <span>{name}</span>
                    <Typed
                        label={name}
                        before="$"
                        value={value_of(inquiry, member, monthly)}
                        wrong={wrong(`/${member}`)}
                        change={(value) => write(member, monthly, value, name)}
                    />
                </label>
            ))}
            <label class="field">
                <span>Persons in the household</span>
                <Typed
                    label="Persons in the household"
                    value={String(inquiry.household ?? '')}
                    wrong={wrong('/household')}
                    change={(value) => write('household', false, value, 'Persons in the household')}
                />
            </label>
            <label class="field">
                <span>Kept in reserve</span>
                <Typed
                    label="Months of the payment kept in reserve"
                    after="months"
                    value={asks.reserves ?? '0'}
                    change={(value) => set_ask('reserves', value)}
                />
            </label>
            <label class="tick-box">
                <input
                    type="checkbox"
                    checked={asks.automated === 'yes'}
                    onChange={(event) =>
                        set_ask('automated', event.currentTarget.checked ? 'yes' : '')
                    }
                />
                <span>As if automated underwriting had accepted it</span>
            </label>
            <p class="facts means-note">
                All of this stays in this browser: it is in no link, no log and not on the sheet.
                Taxes and persons are asked for the residual income of VA loans alone.
            </p>
        </div>
    );
}
