// What moves if the income does: its part that the home takes, and the highest rate within limits.
import {useState} from 'preact/hooks';

import type {Shift, ShiftIncome} from '../answers';
import {dollars, percent} from '../figures';
import {buyer} from '../store';
import {use_answer} from './asked';
import {minus} from './terms';

function moved_by(by: string): string {
    if (by === '0') return 'as it stands';
    return by.startsWith('-') ? `${minus(by)} %` : `+${by} %`;
}

function IncomeRow({one}: {one: ShiftIncome}) {
    return (
        <tr class={one.by === '0' ? 'today' : ''}>
            <th scope="row">
                {dollars(one.income)}
                <span class="cell-note">{moved_by(one.by)}</span>
            </th>
            <td>{one.front ? percent(one.front) : '–'}</td>
            <td>{one.back ? percent(one.back) : '–'}</td>
            <td>{one.within ? 'within' : 'over'}</td>
            <td>
                {one.highest_rate.to_a_thousandth
                    ? percent(one.highest_rate.to_a_thousandth)
                    : 'no rate'}
            </td>
        </tr>
    );
}

function Incomes({ratios}: {ratios: NonNullable<Shift['scenarios'][0]['ratios']>}) {
    return (
        <>
            <div class="scroll" tabIndex={0} role="region" aria-label="Limits by income">
                <table class="incomes">
                    <thead>
                        <tr>
                            <th scope="col">Income a month</th>
                            <th scope="col">Housing takes</th>
                            <th scope="col">With debts</th>
                            <th scope="col">At today's rate</th>
                            <th scope="col">Within up to</th>
                        </tr>
                    </thead>
                    <tbody>
                        {ratios.incomes.map((one) => (
                            <IncomeRow key={one.by} one={one} />
                        ))}
                    </tbody>
                </table>
            </div>
            <p class="facts">
                The least income a month within the limits of this loan at today's rate:{' '}
                {dollars(ratios.least_income)}
                {ratios.least_income_automated &&
                    `; ${dollars(ratios.least_income_automated)} by automated underwriting`}
                . The taxes on the income stay as they are.
            </p>
        </>
    );
}

/// Of the home as it stands under the way to pay in hand. Asked once it is opened.
export function IncomeMoves({scenario}: {scenario: string}) {
    const [open, set_open] = useState(false);
    const {answer} = use_answer<Shift>('shift', open ? buyer.value!.inquiry : null, {scenario});
    const one = answer?.scenarios.find((each) => each.terms.name === scenario);
    return (
        <details class="more" onToggle={(event) => set_open(event.currentTarget.open)}>
            <summary>If the income changes before the closing</summary>
            {open && one && one.refusals.length > 0 && (
                <p class="refused">
                    Not to be had: {one.refusals.map((each) => each.words).join('; ')}
                </p>
            )}
            {open && one && one.refusals.length === 0 && !one.ratios && (
                <p class="note">
                    {one.ratios_unknown.length > 0
                        ? `Nothing to hold it to: ${one.ratios_unknown.join('; ')}.`
                        : 'Type an income to see it.'}
                </p>
            )}
            {open && one?.ratios && <Incomes ratios={one.ratios} />}
        </details>
    );
}
