// What moves if the rate moves before the closing, and what a longer lock costs.
import type {Shift, ShiftLock, ShiftRate} from '../answers';
import {date, dollars, percent, plain, signed} from '../figures';
import {answered, tour} from '../store';
import {use_answer} from './asked';
import {estimate_words, terms_words} from './terms';
import {Name} from './name';

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
        <tr class={one.chosen ? 'today' : ''}>
            <th scope="row">
                {one.days} days{one.chosen && ' (in hand)'}
                <span class="cell-note">
                    to {date(one.ends)}
                    {!one.covers_closing && ', before the closing'}
                </span>
            </th>
            <td>{one.points === null ? 'not offered at this rate' : plain(one.points)}</td>
            <td>{one.extra_cash === null ? '' : signed(one.extra_cash)}</td>
        </tr>
    );
}

export function RateMoves({scenario}: {scenario: string}) {
    const {answer} = use_answer<Shift>('shift', scenario ? answered.value : null, {scenario});
    const one = answer?.scenarios[0];
    if (!one || one.refusals.length > 0) return null;
    return (
        <section class="group wide rate-moves">
            <h3>If the rate moves before the closing</h3>
            <p class="home-line">
                <Name of={one.terms.name} />: every rate of the sheet moved by the same step. Only a
                lock keeps a rate. As it stands {terms_words(one.terms)}.{' '}
                {estimate_words(tour.value!.heading)}
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
                <table class="locks">
                    <thead>
                        <tr>
                            <th scope="col">Lock</th>
                            <th scope="col">Points at this rate</th>
                            <th scope="col">Change in cash</th>
                        </tr>
                    </thead>
                    <tbody>
                        {one.locks.map((lock) => (
                            <LockRow key={lock.days} one={lock} />
                        ))}
                    </tbody>
                </table>
            )}
        </section>
    );
}
