// Every split that no other beats: cash to close across, the month now upwards. Those that no other
// beats on these two are joined; the rest are there for their cost.
import {curveStepAfter, line} from 'd3-shape';

import type {CreditScenario, Mix} from '../answers';
import {closing_words, dollars, size} from '../figures';
import {say} from '../language';
import {AmountAxis, CrossAxis, room_of} from './chart/axis';
import {scale_of} from './chart/scale';
import type {Scale} from './chart/scale';

import {Frame} from './chart/frame';
import type {Drawn} from './chart/frame';
import {broken, placed, SpotName} from './chart/labels';
import type {Spot} from './chart/labels';
import type {Pointing} from './chart/pointer';

import './credit_chart.css';

/// A split with a name of its own on the page.
export interface Named {
    key: string;
    name: string;
    mix: Mix;
    best: boolean;
}

interface Asked {
    one: CreditScenario;
    named: Named[];
    chosen: Named;
    choose: (key: string) => void;
}

const below = 58;

/// A mark by its shape, so that it is told without its color.
function Mark({kind, x, y}: {kind: string; x: number; y: number}) {
    const at = `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
    switch (kind) {
        case 'lowest_payment':
            return <path class="mark b0" transform={at} d="M-8 -6H8L0 8Z" />;
        case 'least_cash':
            return <path class="mark b1" transform={at} d="M6 -8V8L-8 0Z" />;
        case 'least_cost':
            return <path class="mark b2" transform={at} d="M0 -9L9 0L0 9L-9 0Z" />;
        case 'without':
            return <path class="mark none" transform={at} d="M-6 -6L6 6M-6 6L6 -6" />;
        case 'use':
            return <rect class="mark use" transform={at} x="-4.5" y="-4.5" width="9" height="9" />;
        case 'efficient':
            return <circle class="mark dot efficient" transform={at} r="3.5" />;
        default:
            return <circle class="mark dot" transform={at} r="3" />;
    }
}

/// Whether another split takes no more cash and has no higher month, and is better in one.
function beaten(mix: Mix, all: Mix[]): boolean {
    const [cash, month] = [size(mix.cash_to_close), size(mix.monthly_now)];
    return all.some((other) => {
        const [less, lower] = [size(other.cash_to_close), size(other.monthly_now)];
        return less <= cash && lower <= month && (less < cash || lower < month);
    });
}

function by_cash(a: Mix, b: Mix): number {
    return (
        size(a.cash_to_close) - size(b.cash_to_close) || size(b.monthly_now) - size(a.monthly_now)
    );
}

/// From the least cash to the lowest month.
function efficient_of({frontier}: CreditScenario): Mix[] {
    return frontier.filter((mix) => !beaten(mix, frontier)).sort(by_cash);
}

/// What can be chosen, from the least cash to the most: a name goes before a dot at its place.
function choices_of({one, named}: Asked): {key: string; mix: Mix}[] {
    const dots = one.frontier.map((mix, i) => ({key: `frontier-${i}`, mix}));
    return [...named, ...dots]
        .map(({key, mix}) => ({key, mix}))
        .sort((a, b) => by_cash(a.mix, b.mix));
}

/// What a split is called beside its mark: the bests first, for there is not always room for all.
function spots_of({one, named, chosen}: Asked, x: Scale, y: Scale, room: number): Spot[] {
    const all = [
        ...named.filter((each) => each.best),
        {key: 'without', name: say.money.chart.without, mix: one.without, best: false},
        ...named.filter((each) => !each.best),
    ];
    const first = all.filter((each) => each.key === chosen.key);
    return [...first, ...all.filter((each) => each.key !== chosen.key)].map((each) => ({
        key: each.key,
        x: x(size(each.mix.cash_to_close)),
        y: y(size(each.mix.monthly_now)),
        lines: broken(each.name, room, 3),
    }));
}

function Marks({one, named, x, y}: Asked & {x: Scale; y: Scale}) {
    const place = (mix: Mix) => ({x: x(size(mix.cash_to_close)), y: y(size(mix.monthly_now))});
    const efficient = efficient_of(one);
    const joined = line<Mix>()
        .x((mix) => place(mix).x)
        .y((mix) => place(mix).y)
        .curve(curveStepAfter);
    return (
        <>
            <path class="frontier" d={joined(efficient) ?? ''} />
            {one.frontier.map((mix, i) => (
                <Mark
                    key={i}
                    kind={efficient.includes(mix) ? 'efficient' : 'other'}
                    {...place(mix)}
                />
            ))}
            <Mark kind="without" {...place(one.without)} />
            {[...named].reverse().map((each) => (
                <Mark key={each.key} kind={each.best ? each.key : 'use'} {...place(each.mix)} />
            ))}
        </>
    );
}

/// Points along the line of the frontier and the dots beside it, for names to keep off.
function drawn_points(one: CreditScenario, x: Scale, y: Scale): {x: number; y: number}[] {
    const place = (mix: Mix) => ({x: x(size(mix.cash_to_close)), y: y(size(mix.monthly_now))});
    const steps = efficient_of(one).map(place);
    const along = (from: number, to: number) =>
        Array.from(
            {length: Math.ceil(Math.abs(to - from) / 8)},
            (_, i) => from + Math.sign(to - from) * 8 * i,
        );
    const line = steps
        .slice(1)
        .flatMap((next, i) => [
            ...along(steps[i].x, next.x).map((at) => ({x: at, y: steps[i].y})),
            ...along(steps[i].y, next.y).map((at) => ({x: next.x, y: at})),
        ]);
    return [...line, ...one.frontier.map(place)];
}

function words_of({chosen}: Asked): string {
    return say.money.chart.stands_at({
        name: chosen.name,
        month: say.common.monthly({amount: dollars(chosen.mix.monthly_now)}),
        closing: closing_words(chosen.mix.cash_to_close),
    });
}

function laid_out({one, named}: Asked, width: number) {
    const narrow = width < 460;
    const all = [one.without, ...named.map((each) => each.mix), ...one.frontier];
    const over = (figure: (mix: Mix) => string): [number, number] => {
        const sizes = all.map((mix) => size(figure(mix)));
        const [low, high] = [Math.min(...sizes), Math.max(...sizes)];
        return low === high ? [low - 1, high + 1] : [low, high];
    };
    const [across, up] = [narrow ? 3 : 5, 5];
    const [top, bottom] = [30, narrow ? 370 : 350];
    const month = scale_of(over((mix) => mix.monthly_now))
        .nice(up)
        .range([bottom - (narrow ? 46 : 26), top]);
    const left = room_of(month, up);
    const cash = scale_of(over((mix) => mix.cash_to_close))
        .nice(across)
        .range([left + 12, width - 26]);
    return {across, up, top, bottom, left, right: width - 8, month, cash};
}

/// The choice that is made, and the one that lies nearest to a touch.
function pointing_of(asked: Asked, cash: Scale, month: Scale): Pointing {
    const choices = choices_of(asked);
    const far_from = ({mix}: {mix: Mix}, x: number, y: number) =>
        Math.hypot(cash(size(mix.cash_to_close)) - x, month(size(mix.monthly_now)) - y);
    return {
        label: say.money.chart.label,
        at: choices.findIndex(({key}) => key === asked.chosen.key),
        count: choices.length,
        leap: 5,
        words: words_of(asked),
        find: (x, y) =>
            choices.reduce(
                (best, one, i) => (far_from(one, x, y) < far_from(choices[best], x, y) ? i : best),
                0,
            ),
        choose: (at) => asked.choose(choices[at].key),
        follows: false,
    };
}

/// A ring around the split that is chosen, led to from both axes.
function Chosen({x, y, left, bottom}: {x: number; y: number; left: number; bottom: number}) {
    return (
        <>
            <path class="chosen-lead" d={`M${left} ${y.toFixed(1)}H${x.toFixed(1)}V${bottom}`} />
            <circle class="chosen-ring" cx={x} cy={y} r="13" />
        </>
    );
}

function drawn_at(asked: Asked, width: number): Drawn {
    const {across, up, top, bottom, left, right, month, cash} = laid_out(asked, width);
    const spots = placed(
        spots_of(asked, cash, month, Math.max(112, Math.min(150, width * 0.3))),
        {left: left + 2, right, top: top - 8, bottom: bottom - 2},
        drawn_points(asked.one, cash, month),
    );
    return {
        height: bottom + below,
        pointing: pointing_of(asked, cash, month),
        parts: (
            <>
                <AmountAxis scale={month} count={up} left={left} right={right} />
                <CrossAxis scale={cash} count={across} top={top} bottom={bottom} />
                <text class="axis-name" x={0} y={12}>
                    {say.money.table.month_now}
                </text>
                <text class="axis-name" x={right} y={bottom + 42} text-anchor="end">
                    {say.common.cash_to_close}
                </text>
                <Marks {...asked} x={cash} y={month} />
                <Chosen
                    x={cash(size(asked.chosen.mix.cash_to_close))}
                    y={month(size(asked.chosen.mix.monthly_now))}
                    left={left}
                    bottom={bottom}
                />
                {spots.map((spot) => (
                    <SpotName {...spot} key={spot.key} />
                ))}
            </>
        ),
    };
}

export function CreditChart(asked: Asked) {
    return (
        <Frame
            title={say.money.chart.title}
            kind="credit-chart"
            draw={(width) => drawn_at(asked, width)}
            after={<p class="chosen-words">{words_of(asked)}</p>}
        />
    );
}
