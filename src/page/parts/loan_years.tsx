// The ways to pay over the years: lines, the same as a table, crossings, what points pay back.
import {useState} from 'preact/hooks';

import type {Compare, Stretch} from '../answers';
import {brief, dollars, percent} from '../figures';
import {YearsChart} from './years_chart';
import type {Curve} from './years_chart';
import {Name} from './name';

const curves: [Curve, string, string][] = [
    [
        'spent_and_owed',
        'Spent and owed',
        'Cash, payments and insurance so far, and the balance still owed',
    ],
    ['balance', 'Balance', 'What is still owed'],
    ['paid', 'Paid so far', 'Everything paid so far, taxes and insurance too'],
];

export function Years({answer, hand}: {answer: Compare; hand: string}) {
    const [curve, show] = useState<Curve>('spent_and_owed');
    const words = curves.find(([key]) => key === curve)!;
    return (
        <section class="group wide">
            <h3>Over the years</h3>
            <div class="segments" role="radiogroup" aria-label="What the lines show">
                {curves.map(([key, name]) => (
                    <label key={key} class="segment">
                        <input
                            type="radio"
                            name="curve"
                            checked={key === curve}
                            onChange={() => show(key)}
                        />
                        <span>{name}</span>
                    </label>
                ))}
            </div>
            <YearsChart scenarios={answer.scenarios} curve={curve} hand={hand} title={words[2]} />
            <YearsTable answer={answer} curve={curve} />
        </section>
    );
}

function YearsTable({answer, curve}: {answer: Compare; curve: Curve}) {
    const drawn = answer.scenarios.filter((one) => one.available && one.curve);
    const years = [...new Set(drawn.flatMap((one) => one.curve!.map((point) => point.year)))].sort(
        (a, b) => a - b,
    );
    return (
        <details class="more">
            <summary>The same as a table</summary>
            <div class="scroll" tabIndex={0} role="region" aria-label="Figures by year">
                <table>
                    <thead>
                        <tr>
                            <th scope="col">End of year</th>
                            {drawn.map((one) => (
                                <th scope="col" key={one.terms.name}>
                                    <Name of={one.terms.name} />
                                </th>
                            ))}
                        </tr>
                    </thead>
                    <tbody>
                        {years.map((year) => (
                            <tr key={year}>
                                <th scope="row">{year === 0 ? 'closing' : year}</th>
                                {drawn.map((one) => (
                                    <td key={one.terms.name}>
                                        {dollars(
                                            one.curve!.find((point) => point.year === year)?.[
                                                curve
                                            ],
                                        )}
                                    </td>
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

export function Crossings({answer}: {answer: Compare}) {
    if (answer.orders.length === 0) return null;
    const orders = [...answer.orders].sort(
        (a, b) => first_change(a.stretches) - first_change(b.stretches),
    );
    return (
        <section class="group wide">
            <h3>Which has cost less, and when</h3>
            <p class="group-says">
                Cash, payments and insurance so far and the balance owed, of two loans on the same
                home.
            </p>
            <ul class="crossings orders">
                {orders.map(({first, second, stretches}) => (
                    <li key={`${first}|${second}`}>
                        <span>
                            {brief(first)} <span class="faint">against</span> {brief(second)}
                        </span>
                        <ul>
                            {stretches.map((one) => (
                                <li key={one.from}>
                                    <span class="cross-when">{one.when}</span>{' '}
                                    {one.cheaper === 'neither' ? (
                                        'both cost the same'
                                    ) : (
                                        <strong>
                                            {brief(one.cheaper === 'first' ? first : second)}
                                        </strong>
                                    )}
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
            <h3>Points and what they pay back</h3>
            <ul class="crossings">
                {answer.points.map((one: any, i) => (
                    <li key={i}>
                        <span>
                            {one.scenario}: {percent(one.rate)} instead of{' '}
                            {percent(one.rate_without)} takes {dollars(one.extra_cash)} more cash
                            and saves {dollars(one.saved_monthly)} a month ; {one.words}.
                        </span>
                    </li>
                ))}
            </ul>
        </section>
    );
}
