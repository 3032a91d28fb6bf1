// The loans over the years: lines, the same as a table, crossings, what points pay back.
import {useState} from 'preact/hooks';

import type {Compare, Stretch} from '../answers';
import {brief, dollars, rate_percent, signed} from '../figures';
import {say} from '../language';
import {stays_open} from '../opened';
import {loan_name} from '../state/books';
import {PartFold} from './fold';
import {marked} from './marks';
import {YearsChart} from './years_chart';
import type {Curve} from './years_chart';
import {Name} from './name';

import './crossings.css';
import './loan_years.css';

const curves: Curve[] = ['spent_and_owed', 'balance', 'paid'];

/// All of it, where it is opened.
export function OverTheYears({answer}: {answer: Compare}) {
    return (
        <PartFold
            view="loans"
            part="years"
            title={say.loans.years.title}
            says={say.loans.years_say}
        >
            <Years answer={answer} />
            <Crossings answer={answer} />
            <Points answer={answer} />
        </PartFold>
    );
}

export function Years({answer}: {answer: Compare}) {
    const [curve, show] = useState<Curve>('spent_and_owed');
    const words = say.loans.years;
    return (
        <section class="wide">
            <div class="segments" role="radiogroup" aria-label={words.lines_label}>
                {curves.map((key) => (
                    <label key={key} class="segment">
                        <input
                            type="radio"
                            name="curve"
                            checked={key === curve}
                            onChange={() => show(key)}
                        />
                        <span>{words.curves[key].name}</span>
                    </label>
                ))}
            </div>
            <YearsChart answer={answer} curve={curve} />
            <YearsTable answer={answer} curve={curve} />
        </section>
    );
}

/// What a loan comes to at the end of a year, and what that is against the loan shown.
function YearCell({
    one,
    year,
    curve,
    base,
}: {
    one: Compare['scenarios'][0];
    year: number;
    curve: Curve;
    base: boolean;
}) {
    const apart = one.apart.find((point) => point.year === year)?.[curve];
    return (
        <td>
            {dollars(one.curve.find((point) => point.year === year)?.[curve])}
            {!base && apart && <span class="cell-note">{signed(apart)}</span>}
        </td>
    );
}

function YearsTable({answer, curve}: {answer: Compare; curve: Curve}) {
    const told = answer.scenarios.filter((one) => one.available);
    const longest = told.reduce((years, one) => Math.max(years, one.curve.length), 0);
    return (
        <details class="more" {...stays_open('loans:years-table')}>
            <summary>{say.loans.years.as_table}</summary>
            <div class="scroll" tabIndex={0} role="region" aria-label={say.loans.years.table}>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{say.loans.years.end_of_year}</th>
                            {told.map((one) => (
                                <th scope="col" key={one.terms.name}>
                                    <Name of={loan_name(one.terms.name)} />
                                </th>
                            ))}
                        </tr>
                    </thead>
                    <tbody>
                        {Array.from({length: longest}, (_, year) => (
                            <tr key={year}>
                                <th scope="row">{year === 0 ? say.common.closing : year}</th>
                                {told.map((one) => (
                                    <YearCell
                                        key={one.terms.name}
                                        one={one}
                                        year={year}
                                        curve={curve}
                                        base={one.terms.name === answer.apart_from}
                                    />
                                ))}
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
        </details>
    );
}

/// The first payment from which it is another one; those that never change come last.
function first_change(stretches: Stretch[]): number {
    return stretches.length > 1 ? stretches[1].from : Infinity;
}

function when(stretch: Stretch) {
    return <span class="cross-when">{stretch.when}</span>;
}

export function Crossings({answer}: {answer: Compare}) {
    if (answer.orders.length === 0) return null;
    const orders = [...answer.orders].sort(
        (a, b) => first_change(a.stretches) - first_change(b.stretches),
    );
    return (
        <section class="group wide">
            <h4>{say.loans.crossings.title}</h4>
            <p class="group-says">{say.loans.crossings.says}</p>
            <ul class="crossings orders">
                {orders.map(({first, second, stretches}) => (
                    <li key={`${first}|${second}`}>
                        <span>
                            {say.loans.crossings.against({
                                first: brief(loan_name(first)),
                                second: brief(loan_name(second)),
                                faint: marked('faint'),
                            })}
                        </span>
                        <ul>
                            {stretches.map((one) => (
                                <li key={one.from}>
                                    {one.cheaper === 'neither'
                                        ? say.loans.crossings.same({when: when(one)})
                                        : say.loans.crossings.cheaper({
                                              when: when(one),
                                              loan: (
                                                  <strong>
                                                      {brief(
                                                          loan_name(
                                                              one.cheaper === 'first'
                                                                  ? first
                                                                  : second,
                                                          ),
                                                      )}
                                                  </strong>
                                              ),
                                          })}
                                </li>
                            ))}
                        </ul>
                    </li>
                ))}
            </ul>
        </section>
    );
}

export function Points({answer}: {answer: Compare}) {
    if (answer.points.length === 0) return null;
    return (
        <section class="group wide">
            <h4>{say.loans.points.title}</h4>
            <ul class="crossings">
                {answer.points.map((one: any, i) => (
                    <li key={i}>
                        <span>
                            {say.loans.points.pay_back({
                                loan: loan_name(one.scenario),
                                rate: rate_percent(one.rate),
                                rate_without: rate_percent(one.rate_without),
                                cash: dollars(one.extra_cash),
                                saved: dollars(one.saved_monthly),
                                when: one.words,
                            })}
                        </span>
                    </li>
                ))}
            </ul>
        </section>
    );
}
