// What moves if the rate moves before the closing, and what a longer lock costs.
import type {Shift, ShiftLock, ShiftRate} from '../answers';
import {closing_amount, date, dollars, rate_percent, signed} from '../figures';
import {say} from '../language';
import {loan_name} from '../state/books';
import {answered, tour} from '../state/signals';
import {use_answer} from './asked';
import {PartFold} from './fold';
import {estimate_words, points_cell, terms_words} from './terms';
import {Name} from './name';

import './rate_moves.css';

function RateRow({one}: {one: ShiftRate}) {
    const cell = one.cells[0];
    const had = cell.refusals.length === 0;
    return (
        <tr class={one.steps === 0 ? 'today' : ''}>
            <th scope="row">
                {one.steps === 0
                    ? say.loans.rates.today({rate: rate_percent(one.rate)})
                    : rate_percent(one.rate)}
            </th>
            <td>{one.apr ? rate_percent(one.apr) : '–'}</td>
            <td>{had ? dollars(cell.monthly) : say.common.not_to_be_had}</td>
            <td>{had ? closing_amount(cell.cash_to_close) : ''}</td>
        </tr>
    );
}

function LockRow({one}: {one: ShiftLock}) {
    return (
        <tr class={one.chosen ? 'today' : ''}>
            <th scope="row">
                {say.loans.rates.days({days: one.days, in_hand: one.chosen})}
                <span class="cell-note">
                    {say.loans.rates.ends({on: date(one.ends), too_soon: !one.covers_closing})}
                </span>
            </th>
            <td>{one.points === null ? say.loans.rates.not_offered : points_cell(one.points)}</td>
            <td>{one.extra_cash === null ? '' : signed(one.extra_cash)}</td>
        </tr>
    );
}

/// Asked once it is opened.
export function RateMoves({scenario}: {scenario: string}) {
    return (
        <PartFold
            view="loans"
            part="rates"
            title={say.loans.rates.title}
            says={say.loans.rates_say}
        >
            <Moves scenario={scenario} />
        </PartFold>
    );
}

function Moves({scenario}: {scenario: string}) {
    const {answer} = use_answer<Shift>('shift', scenario ? answered.value : null, {scenario});
    const one = answer?.scenarios[0];
    if (!one) return null;
    if (one.refusals.length > 0) {
        const why = one.refusals.map((each) => each.words).join('; ');
        return <p class="refused">{say.common.refused({why})}</p>;
    }
    return (
        <section class="wide rate-moves">
            <p class="home-line">
                {say.loans.rates.says({
                    loan: <Name of={loan_name(one.terms.name)} />,
                    terms: terms_words(one.terms),
                    estimate: estimate_words(tour.value!.heading),
                })}
            </p>
            <div class="scroll" tabIndex={0} role="region" aria-label={say.loans.rates.table}>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{say.common.note_rate}</th>
                            <th scope="col">{say.common.apr}</th>
                            <th scope="col">{say.common.a_month}</th>
                            <th scope="col">{say.common.cash_to_close}</th>
                        </tr>
                    </thead>
                    <tbody>
                        {one.rates.map((each) => (
                            <RateRow key={each.steps} one={each} />
                        ))}
                    </tbody>
                </table>
            </div>
            {one.locks.length > 0 && (
                <table class="locks">
                    <thead>
                        <tr>
                            <th scope="col">{say.loans.rates.lock}</th>
                            <th scope="col">{say.loans.rates.lock_points}</th>
                            <th scope="col">{say.loans.rates.lock_cash}</th>
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
