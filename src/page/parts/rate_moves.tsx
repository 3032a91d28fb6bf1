// What moves if the rate moves before the closing, and what a longer lock costs.
import type {Shift, ShiftLock, ShiftRate} from '../answers';
import {date, dollars, percent, plain, signed} from '../figures';
import {answered} from '../store';
import {use_answer} from './asked';

function RateRow({one}: {one: ShiftRate}) {
    const cell = one.cells[0];
    const had = cell.refusals.length === 0;
    return (
        <tr class={one.steps === 0 ? 'today' : ''}>
            <th scope="row">
                {percent(one.rate)}
                {one.steps === 0 && ' (today)'}
            </th>
            <td>{one.apr ? percent(one.apr) : '-'}</td>
            <td>{had ? dollars(cell.monthly) : 'not to be had'}</td>
            <td>{had ? dollars(cell.cash_to_close) : ''}</td>
        </tr>
    );
}

function LockRow({one}: {one: ShiftLock}) {
    return (
        <li>
            <span>
                {one.days}-day lock, to {date(one.ends)}
                {one.chosen && ' (the one in hand)'}
                {!one.covers_closing && ': it ends before the closing'}
            </span>
            <span>
                {one.points === null
                    ? 'not offered at this rate'
                    : `${plain(one.points)} points, ${signed(one.extra_cash ?? '0')} in cash`}
            </span>
        </li>
    );
}

export function RateMoves({scenario}: {scenario: string}) {
    const {answer} = use_answer<Shift>('shift', scenario ? answered.value : null, {scenario});
    const one = answer?.scenarios[0];
    if (!one || one.refusals.length > 0) return null;
    return (
        <section class="group wide">
            <h3>If the rate moves before the closing</h3>
            <p class="home-line">
                {one.terms.name}: every rate of the sheet moved by the same step. Only a lock keeps
                a rate.
            </p>
            <div class="scroll" tabIndex={0} role="region" aria-label="Month and cash by rate">
                <table>
                    <thead>
                        <tr>
                            <th scope="col">Note rate</th>
                            <th scope="col">APR</th>
                            <th scope="col">A month</th>
                            <th scope="col">Cash to close</th>
                        </tr>
                    </thead>
                    <tbody>
                        {one.rates.map((rate) => (
                            <RateRow key={rate.steps} one={rate} />
                        ))}
                    </tbody>
                </table>
            </div>
            {one.locks.length > 0 && (
                <ul class="crossings">
                    {one.locks.map((lock) => (
                        <LockRow key={lock.days} one={lock} />
                    ))}
                </ul>
            )}
        </section>
    );
}
