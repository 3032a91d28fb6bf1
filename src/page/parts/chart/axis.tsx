// Axes on kept scales: round amounts upwards, years across. Ticks are places on a scale and no
// figures of an answer.

import {dollars, signed} from '../../figures';
import {width_of} from './labels';
import type {Scale} from './scale';

/// What is looked at first, in years.
export const first_looked_at = 10;

/// "$5,000", or "+$5,000" where the axis tells differences; cents only between dollars.
export function tick_words(tick: number, differences = false): string {
    const amount = Number.isInteger(tick) ? String(tick) : tick.toFixed(2);
    return differences ? signed(amount) : dollars(amount);
}

/// The room that the words of an axis of amounts take.
export function room_of(scale: Scale, count: number, differences = false): number {
    return (
        Math.max(...scale.ticks(count).map((tick) => width_of(tick_words(tick, differences)))) + 12
    );
}

export function AmountAxis({
    scale,
    count,
    left,
    right,
    differences = false,
}: {
    scale: Scale;
    count: number;
    left: number;
    right: number;
    differences?: boolean;
}) {
    return (
        <g class="axis" data-axis="amount">
            {scale.ticks(count).map((tick) => (
                <g key={tick} class={`tick ${tick === 0 ? 'zero' : ''}`}>
                    <line x1={left} x2={right} y1={scale(tick)} y2={scale(tick)} />
                    <text x={left - 8} y={scale(tick) + 4} text-anchor="end" data-value={tick}>
                        {tick_words(tick, differences)}
                    </text>
                </g>
            ))}
        </g>
    );
}

/// Amounts across.
export function CrossAxis({
    scale,
    count,
    top,
    bottom,
}: {
    scale: Scale;
    count: number;
    top: number;
    bottom: number;
}) {
    return (
        <g class="axis" data-axis="amount">
            {scale.ticks(count).map((tick) => (
                <g key={tick} class="tick">
                    <line x1={scale(tick)} x2={scale(tick)} y1={top} y2={bottom} />
                    <text x={scale(tick)} y={bottom + 18} text-anchor="middle" data-value={tick}>
                        {tick_words(tick)}
                    </text>
                </g>
            ))}
        </g>
    );
}

/// The years that may be told, those first that matter most: the ends, tens, fives, the first.
function years_by_weight(last: number): number[][] {
    const between = Array.from({length: Math.max(last - 1, 0)}, (_, i) => i + 1);
    const fives = between.filter((year) => year % 5 === 0 && year % 10 !== 0);
    return last <= 6
        ? [[0, last], between]
        : [[0, last], between.filter((year) => year % 10 === 0), fives, [1]];
}

export function YearAxis({
    scale,
    last,
    at,
    words,
}: {
    scale: Scale;
    last: number;
    at: number; ///< how far down
    words: (year: number) => string; ///< at the ends; between them a number is enough
}) {
    const end = Math.floor(last);
    const told: {year: number; text: string; from: number; to: number}[] = [];
    for (const years of years_by_weight(end)) {
        const more = years.map((year) => {
            const text = year === 0 || year === end ? words(year) : String(year);
            const half = width_of(text) / 2 + 4;
            return {year, text, from: scale(year) - half, to: scale(year) + half};
        });
        // All of a kind or none, so that the steps stay even.
        const fits = [...told, ...more].every((one, i, all) =>
            all.every((other, n) => n <= i || one.to <= other.from || one.from >= other.to),
        );
        if (fits) told.push(...more);
    }
    return (
        <g class="axis" data-axis="year">
            {told.map(({year, text}) => (
                <g key={year} class="tick">
                    <line x1={scale(year)} x2={scale(year)} y1={at - 24} y2={at - 18} />
                    <text x={scale(year)} y={at} text-anchor="middle" data-value={year}>
                        {text}
                    </text>
                </g>
            ))}
        </g>
    );
}
