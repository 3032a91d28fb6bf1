// Lines over the years of the loans: what is owed, or what has been spent and is owed still.
import type {Scenario} from '../answers';
import {dollars, size, term} from '../figures';

export type Curve = 'balance' | 'spent_and_owed' | 'paid';

const width = 720;
const height = 300;
const left = 96;
const bottom = 34;

export function YearsChart({
    scenarios,
    curve,
    hand,
    title,
}: {
    scenarios: Scenario[];
    curve: Curve;
    hand: string;
    title: string;
}) {
    const drawn = scenarios.filter((one) => one.available && one.curve && one.curve.length > 1);
    if (drawn.length === 0) return null;
    const years = Math.max(...drawn.map((one) => one.curve![one.curve!.length - 1].year));
    const amounts = drawn.flatMap((one) => one.curve!.map((point) => point[curve]));
    const top = amounts.reduce((most, amount) => (size(amount) > size(most) ? amount : most));
    const most = Math.max(size(top), 1);
    const x = (year: number) => left + (year / years) * (width - left - 30);
    const y = (amount: number) => 12 + (1 - amount / most) * (height - bottom - 12);
    const color_of = (one: Scenario) => `c${scenarios.indexOf(one) % 6}`;
    // The one amount beside the lines is the highest of the answer; the rest is in the table.
    const ticks: [number, string][] = [
        [0, '$0'],
        [0.25, ''],
        [0.5, ''],
        [0.75, ''],
        [1, dollars(top)],
    ];
    return (
        <figure class="chart">
            <figcaption>{title}</figcaption>
            <svg
                viewBox={`0 0 ${width} ${height}`}
                role="img"
                aria-label={`${title}; the same figures stand in the table below`}
            >
                {ticks.map(([share, words]) => (
                    <g key={share} class="tick">
                        <line x1={left} x2={width - 30} y1={y(share * most)} y2={y(share * most)} />
                        <text x={left - 8} y={y(share * most) + 4} text-anchor="end">
                            {words}
                        </text>
                    </g>
                ))}
                {Array.from({length: Math.floor(years / 5) + 1}, (_, i) => i * 5).map((year) => (
                    <text key={year} class="year" x={x(year)} y={height - 10} text-anchor="middle">
                        {year === 0 ? 'closing' : `year ${year}`}
                    </text>
                ))}
                {drawn.map((one) => (
                    <polyline
                        key={one.terms.name}
                        fill="none"
                        class={`curve ${color_of(one)} ${one.terms.name === hand ? 'in-hand' : ''}`}
                        points={one
                            .curve!.map((point) =>
                                [x(point.year), y(size(point[curve]))]
                                    .map((at) => at.toFixed(1))
                                    .join(','),
                            )
                            .join(' ')}
                    />
                ))}
            </svg>
            <ul class="legend">
                {drawn.map((one) => (
                    <li key={one.terms.name}>
                        <svg class="line-swatch" viewBox="0 0 24 6" aria-hidden="true">
                            <line class={`curve ${color_of(one)}`} x1="0" x2="24" y1="3" y2="3" />
                        </svg>
                        {one.terms.name}, {term(one.terms.months)}
                    </li>
                ))}
            </ul>
        </figure>
    );
}
