// What each way to come by an option has cost through the months: lines, break-evens, tables.
import {useState} from 'preact/hooks';

import type {LaterPath, LaterScenario} from '../answers';
import {dollars, term} from '../figures';
import {say} from '../language';
import {opened, stays_open} from '../opened';
import {LinesChart} from './lines_chart';

import './mixes.css';
import './crossings.css';
import './later_costs.css';

const told_years = [1, 3, 5, 7, 10, 15, 20, 30];

/// How far the lines go: years, or all of the loan.
const spans = [5, 10, 0];

function Table({
    ways,
    months,
    label,
    name_of,
}: {
    ways: LaterPath[];
    months: number[];
    label: string;
    name_of: (month: number) => string;
}) {
    return (
        <div class="scroll months-scroll" tabIndex={0} role="region" aria-label={label}>
            <table class="mixes">
                <thead>
                    <tr>
                        <th scope="col">{say.later.costs.through}</th>
                        {ways.map((path) => (
                            <th scope="col" key={path.way}>
                                {say.later.ways[path.way]}
                            </th>
                        ))}
                    </tr>
                </thead>
                <tbody>
                    {months.map((month) => (
                        <tr key={month}>
                            <th scope="row">{name_of(month)}</th>
                            {ways.map((path) => (
                                <td key={path.way}>{dollars(path.cost[month])}</td>
                            ))}
                        </tr>
                    ))}
                </tbody>
            </table>
        </div>
    );
}

/// By the dearer way: what it has cost more than, and from which month to which.
function BreakEven({one}: {one: LaterScenario}) {
    const dearer = [...new Set(one.break_even.map((even) => even.dearer))];
    return (
        <section class="break-even">
            <h4>{say.later.costs.break_even}</h4>
            <ul class="crossings">
                {dearer.map((way) => (
                    <li key={way}>
                        <span class="cross-when">{say.later.ways[way]}</span>
                        <ul>
                            {one.break_even
                                .filter((even) => even.dearer === way)
                                .map((even) => (
                                    <li key={`${even.than} ${even.month}`}>
                                        {say.later.than[even.than](even.when)}
                                    </li>
                                ))}
                        </ul>
                    </li>
                ))}
            </ul>
        </section>
    );
}

/// "10 years", or "month 37" between two.
function place_of(month: number): string {
    if (month === 0) return say.later.costs.the_closing;
    return month % 12 === 0 ? term(month) : say.later.costs.month({month});
}

export function LaterCosts({one}: {one: LaterScenario}) {
    const [span, show] = useState(10);
    const open = opened.value.has('later:months');
    const ways = one.ways.filter((path) => path.refusals.length === 0 && path.cost.length > 0);
    if (ways.length === 0) return null;
    const last = Math.min(...ways.map((path) => path.cost.length)) - 1;
    const end = span === 0 ? last : Math.min(span * 12, last);
    const lines = ways.map((path, color) => ({
        name: say.later.ways[path.way],
        amounts: path.cost.slice(0, end + 1),
        color,
    }));
    return (
        <>
            <div class="segments" role="radiogroup" aria-label={say.later.costs.spans_label}>
                {spans.map((years) => (
                    <label key={years} class="segment">
                        <input
                            type="radio"
                            name="later-span"
                            checked={years === span}
                            onChange={() => show(years)}
                        />
                        <span>
                            {years === 0
                                ? say.later.costs.whole_loan
                                : say.later.costs.span({years})}
                        </span>
                    </label>
                ))}
            </div>
            <div class="two drawn">
                <LinesChart
                    title={say.later.costs.chart}
                    label={say.loans.years.chart({title: say.later.costs.chart})}
                    years={Array.from({length: end + 1}, (_, month) => month / 12)}
                    lines={lines}
                    place={place_of}
                    leap={12}
                />
                <BreakEven one={one} />
            </div>
            <Table
                ways={ways}
                label={say.later.costs.by_years}
                months={[0, ...told_years.map((years) => years * 12).filter((at) => at <= last)]}
                name_of={(month) => (month === 0 ? say.later.costs.the_closing : term(month))}
            />
            <details class="more" {...stays_open('later:months')}>
                <summary>{say.later.costs.month_by_month}</summary>
                {open && (
                    <Table
                        ways={ways}
                        label={say.later.costs.by_months}
                        months={Array.from({length: end + 1}, (_, month) => month)}
                        name_of={(month) =>
                            month === 0
                                ? say.later.costs.the_closing
                                : say.later.costs.month({month})
                        }
                    />
                )}
            </details>
        </>
    );
}
