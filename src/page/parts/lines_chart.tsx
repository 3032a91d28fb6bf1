// Lines over the years of a loan, with the one highest amount beside them.
import {dollars, size} from '../figures';
import {say} from '../language';
import {Name} from './name';

/// What is drawn: amounts by year, a color by its number, a thicker line for the one in hand.
export interface Line {
    name: string;
    points: [number, string][];
    color: number;
    strong?: boolean;
}

const left = 96;
const right = 30;
const bottom = 34;

/// A year is told every so often, as far as the width lets it.
function told_every(years: number, narrow: boolean): number {
    const most = narrow ? 4 : 8;
    return [1, 2, 5, 10].find((step) => years / step <= most) ?? 10;
}

export function LinesChart({title, lines}: {title: string; lines: Line[]}) {
    const drawn = lines.filter((one) => one.points.length > 1);
    if (drawn.length === 0) return null;
    const narrow = window.innerWidth < 640;
    const [width, height] = narrow ? [420, 280] : [720, 300];
    const years = Math.max(...drawn.map((one) => one.points[one.points.length - 1][0]));
    const amounts = drawn.flatMap((one) => one.points.map(([, amount]) => amount));
    const top = amounts.reduce((most, amount) => (size(amount) > size(most) ? amount : most));
    const most = Math.max(size(top), 1);
    const x = (year: number) => left + (year / years) * (width - left - right);
    const y = (amount: number) => 12 + (1 - amount / most) * (height - bottom - 12);
    const step = told_every(years, narrow);
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
                aria-label={say.loans.years.chart({title})}
            >
                {ticks.map(([share, words]) => (
                    <g key={share} class="tick">
                        <line
                            x1={left}
                            x2={width - right}
                            y1={y(share * most)}
                            y2={y(share * most)}
                        />
                        <text x={left - 8} y={y(share * most) + 4} text-anchor="end">
                            {words}
                        </text>
                    </g>
                ))}
                {Array.from({length: Math.floor(years / step) + 1}, (_, i) => i * step).map(
                    (year) => (
                        <text
                            key={year}
                            class="year"
                            x={x(year)}
                            y={height - 10}
                            text-anchor="middle"
                        >
                            {year === 0 ? say.common.closing : say.loans.years.year({year})}
                        </text>
                    ),
                )}
                {drawn.map((one) => (
                    <polyline
                        key={one.name}
                        fill="none"
                        class={`curve c${one.color} ${one.strong ? 'in-hand' : ''}`}
                        points={one.points
                            .map(([year, amount]) =>
                                [x(year), y(size(amount))].map((at) => at.toFixed(1)).join(','),
                            )
                            .join(' ')}
                    />
                ))}
            </svg>
            <ul class="legend">
                {drawn.map((one) => (
                    <li key={one.name}>
                        <svg class="line-swatch" viewBox="0 0 24 6" aria-hidden="true">
                            <line class={`curve c${one.color}`} x1="0" x2="24" y1="3" y2="3" />
                        </svg>
                        <Name of={one.name} />
                    </li>
                ))}
            </ul>
        </figure>
    );
}
