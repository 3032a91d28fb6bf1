// Every split that no other beats, as a dot: cash to close across, the month now upwards.
import type {CreditScenario, Mix} from '../answers';
import {closing_amount, dollars, size} from '../figures';
import {say} from '../language';

/// A split with a name of its own on the page.
export interface Named {
    key: string;
    name: string;
    mix: Mix;
    best: boolean;
}

const left = 86;
const right = 24;
const top = 16;
const bottom = 46;

/// The least and the most of some amounts, as the engine wrote them.
function ends(amounts: string[]): [string, string] {
    const pick = (more: number) =>
        amounts.reduce((found, one) => ((size(one) - size(found)) * more > 0 ? one : found));
    return [pick(-1), pick(1)];
}

/// A mark by its shape, so that it is told without its color.
export function Mark({kind, x, y}: {kind: string; x: number; y: number}) {
    const at = `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
    switch (kind) {
        case 'lowest_payment':
            return <path class="mark b0" transform={at} d="M-9 -7H9L0 9Z" />;
        case 'least_cash':
            return <path class="mark b1" transform={at} d="M7 -9V9L-9 0Z" />;
        case 'least_cost':
            return <path class="mark b2" transform={at} d="M0 -10L10 0L0 10L-10 0Z" />;
        case 'without':
            return <path class="mark none" transform={at} d="M-6 -6L6 6M-6 6L6 -6" />;
        case 'use':
            return <rect class="mark use" transform={at} x="-4.5" y="-4.5" width="9" height="9" />;
        default:
            return <circle class="mark dot" transform={at} r="4" />;
    }
}

export function CreditChart({
    one,
    named,
    chosen,
    choose,
}: {
    one: CreditScenario;
    named: Named[];
    chosen: Mix;
    choose: (key: string) => void;
}) {
    const narrow = window.innerWidth < 640;
    const [width, height] = narrow ? [400, 330] : [720, 330];
    const all = [one.without, ...named.map((each) => each.mix), ...one.frontier];
    const [least_cash, most_cash] = ends(all.map((mix) => mix.cash_to_close));
    const [least_month, most_month] = ends(all.map((mix) => mix.monthly_now));
    const along = (amount: string, low: string, high: string) =>
        (size(amount) - size(low)) / Math.max(size(high) - size(low), 1);
    const x = (mix: Mix) =>
        left + 14 + along(mix.cash_to_close, least_cash, most_cash) * (width - left - right - 28);
    const y = (mix: Mix) =>
        height -
        bottom -
        14 -
        along(mix.monthly_now, least_month, most_month) * (height - bottom - top - 28);
    return (
        <figure class="chart">
            <figcaption>{say.money.chart.title}</figcaption>
            <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={say.money.chart.label}>
                <g class="tick">
                    <line x1={left} x2={left} y1={top} y2={height - bottom} />
                    <line x1={left} x2={width - right} y1={height - bottom} y2={height - bottom} />
                    <text x={left - 8} y={top + 18} text-anchor="end">
                        {dollars(most_month)}
                    </text>
                    <text x={left - 8} y={height - bottom - 10} text-anchor="end">
                        {dollars(least_month)}
                    </text>
                    <text x={left - 8} y={(height - bottom + top) / 2 + 4} text-anchor="end">
                        {say.money.chart.a_month}
                    </text>
                    <text x={left + 6} y={height - bottom + 18}>
                        {closing_amount(least_cash)}
                    </text>
                    <text x={width - right} y={height - bottom + 18} text-anchor="end">
                        {closing_amount(most_cash)}
                    </text>
                    <text x={(left + width - right) / 2} y={height - 8} text-anchor="middle">
                        {say.money.chart.cash_to_close}
                    </text>
                </g>
                {one.frontier.map((mix, i) => (
                    <g key={i} class="tap" onClick={() => choose(`frontier-${i}`)}>
                        <Mark kind="dot" x={x(mix)} y={y(mix)} />
                    </g>
                ))}
                <Mark kind="without" x={x(one.without)} y={y(one.without)} />
                {[...named].reverse().map((each) => (
                    <g key={each.key} class="tap" onClick={() => choose(each.key)}>
                        <Mark kind={each.best ? each.key : 'use'} x={x(each.mix)} y={y(each.mix)} />
                    </g>
                ))}
                <circle class="chosen-ring" cx={x(chosen)} cy={y(chosen)} r="15" />
            </svg>
            <ul class="legend">
                {[
                    ...named
                        .filter((each) => each.best)
                        .map((each): [string, string] => [each.key, each.name]),
                    ['use', say.money.chart.one_use] as [string, string],
                    ['without', say.money.chart.without] as [string, string],
                ].map(([kind, name]) => (
                    <li key={kind}>
                        <svg class="mark-swatch" viewBox="-12 -12 24 24" aria-hidden="true">
                            <Mark kind={kind} x={0} y={0} />
                        </svg>
                        {name}
                    </li>
                ))}
            </ul>
        </figure>
    );
}
