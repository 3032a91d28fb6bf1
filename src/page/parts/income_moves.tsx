// What moves if the income does: its part that the home takes, and the highest rate within limits.
import type {Shift, ShiftIncome} from '../answers';
import {dollars, percent, rate_percent} from '../figures';
import {say} from '../language';
import {opened, stays_open} from '../opened';
import {buyer} from '../state/signals';
import {use_answer} from './asked';

import './income_moves.css';

function moved_by(by: string): string {
    if (by === '0') return say.afford.moves.as_it_stands;
    return by.startsWith('-') ? `−${by.slice(1)}%` : `+${by}%`;
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
            <td>{one.within ? say.afford.moves.within : say.afford.moves.over}</td>
            <td>
                {one.highest_rate.to_a_thousandth
                    ? rate_percent(one.highest_rate.to_a_thousandth)
                    : say.afford.moves.no_rate}
            </td>
        </tr>
    );
}

function Incomes({ratios}: {ratios: NonNullable<Shift['scenarios'][0]['ratios']>}) {
    return (
        <>
            <div class="scroll" tabIndex={0} role="region" aria-label={say.afford.moves.label}>
                <table class="incomes">
                    <thead>
                        <tr>
                            <th scope="col">{say.afford.moves.income}</th>
                            <th scope="col">{say.afford.moves.front}</th>
                            <th scope="col">{say.afford.moves.back}</th>
                            <th scope="col">{say.afford.moves.at_todays_rate}</th>
                            <th scope="col">{say.afford.moves.within_up_to}</th>
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
                {say.afford.moves.least({
                    income: dollars(ratios.least_income),
                    automated: dollars(ratios.least_income_automated),
                })}
            </p>
        </>
    );
}

/// Of the home as it stands under the way to pay in hand. Asked once it is opened.
export function IncomeMoves({scenario}: {scenario: string}) {
    const open = opened.value.has('income:moves');
    const {answer} = use_answer<Shift>('shift', open ? buyer.value!.inquiry : null, {scenario});
    const one = answer?.scenarios.find((each) => each.terms.name === scenario);
    return (
        <details class="more" {...stays_open('income:moves')}>
            <summary>{say.afford.moves.title}</summary>
            {open && one && one.refusals.length > 0 && (
                <p class="refused">
                    {say.common.refused({why: one.refusals.map((each) => each.words).join('; ')})}
                </p>
            )}
            {open && one && one.refusals.length === 0 && !one.ratios && (
                <p class="note">
                    {one.ratios_unknown.length > 0
                        ? say.afford.moves.unknown({why: one.ratios_unknown.join('; ')})
                        : say.afford.moves.type_income}
                </p>
            )}
            {open && one?.ratios && <Incomes ratios={one.ratios} />}
        </details>
    );
}
