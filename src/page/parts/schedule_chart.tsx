// A loan over its years as one picture: the balance above, what each year pays below it.
import {area, line} from 'd3-shape';
import {useState} from 'preact/hooks';

import type {Row, Schedule} from '../answers';
import {dollars, is_zero, size} from '../figures';
import {say} from '../language';
import {AmountAxis, first_looked_at, room_of, YearAxis} from './chart/axis';
import {scale_of} from './chart/scale';
import type {Scale} from './chart/scale';

import {Frame} from './chart/frame';
import type {Drawn} from './chart/frame';
import {broken, line_height} from './chart/labels';
import {Rule} from './chart/pointer';

import './schedule_chart.css';

type Part = 'interest' | 'principal' | 'mortgage_insurance';

const top = 34;
const balance_height = 170;
const between = 42;
const paid_height = 120;
const below = 38;

/// What a year is paid for, from the ground up: only what is paid in some year.
function parts_of(answer: Schedule): {part: Part; name: string}[] {
    const all: {part: Part; name: string}[] = [
        {part: 'principal', name: say.schedule.principal},
        {part: 'interest', name: say.schedule.interest},
        {part: 'mortgage_insurance', name: say.common.mortgage_insurance},
    ];
    return all.filter(({part}) => answer.years.some((row) => !is_zero(row[part])));
}

function height_of_year(row: Row, parts: {part: Part}[]): number {
    return parts.reduce((sum, {part}) => sum + Math.max(size(row[part]), 0), 0);
}

/// The parts of each year on each other; the paper shows between two of them.
function Columns({answer, x, y}: {answer: Schedule; x: Scale; y: Scale}) {
    const parts = parts_of(answer);
    return (
        <>
            {answer.years.map((row) => {
                let under = 0;
                const from = x(row.year! - 1) + 0.75;
                return parts.map(({part}) => {
                    const [low, high] = [under, under + Math.max(size(row[part]), 0)];
                    under = high;
                    return (
                        <rect
                            key={`${row.year} ${part}`}
                            class={`part ${part}`}
                            x={from}
                            width={Math.max(x(row.year!) - 0.75 - from, 0.5)}
                            y={y(high)}
                            height={Math.max(y(low) - y(high) - (low > 0 ? 1 : 0), 0)}
                        />
                    );
                });
            })}
        </>
    );
}

/// The figures of the year that is looked at, each beside what it stands for.
function Figures({
    rows,
    left,
    room,
    top: first,
}: {
    rows: {kind: string; name: string; figure: string}[];
    left: number;
    room: number;
    top: number;
}) {
    let y = first;
    return (
        <>
            {rows.map(({kind, name, figure}) => {
                const lines = broken(name, room - 16, 2);
                const at = y;
                y += (lines.length + 1) * line_height + 6;
                return (
                    <g key={kind} class="end-label">
                        <rect class={`key ${kind}`} x={left} y={at - 9} width="10" height="10" />
                        <text class="label" x={left + 16} y={at}>
                            {lines.map((words, n) => (
                                <tspan key={n} x={left + 16} dy={n === 0 ? 0 : line_height}>
                                    {words}{' '}
                                </tspan>
                            ))}
                            <tspan class="label-figure" x={left + 16} dy={line_height}>
                                {figure}
                            </tspan>
                        </text>
                    </g>
                );
            })}
        </>
    );
}

/// The balance from the closing on, a place a year.
function balances_of(answer: Schedule): string[] {
    const first = answer.at_closing?.balance ?? answer.scenario.loan;
    return [first, ...answer.years.map((row) => row.balance)];
}

function laid_out(answer: Schedule, width: number) {
    const column = width < 520 ? 112 : Math.min(200, width * 0.24);
    const last = answer.years[answer.years.length - 1].year!;
    const middle = top + balance_height;
    const bottom = middle + between + paid_height;
    const parts = parts_of(answer);
    const owed = Math.max(1, ...balances_of(answer).map(size));
    const paid = Math.max(1, ...answer.years.map((row) => height_of_year(row, parts)));
    const balance = scale_of([0, owed]).nice(4).range([middle, top]);
    const year = scale_of([0, paid])
        .nice(3)
        .range([bottom, middle + between]);
    const left = Math.max(room_of(balance, 4), room_of(year, 3));
    const right = width - column - 14;
    return {
        column,
        middle,
        bottom,
        last,
        left,
        right,
        balance,
        year,
        x: scale_of([0, last]).range([left, right]),
    };
}

/// The place, the balance, and the parts of a year, as they are written.
function told_at(answer: Schedule, at: number) {
    const row = answer.years[at - 1];
    return {
        place: at === 0 ? say.loans.years.at_closing : say.loans.years.after({year: at}),
        balance: {name: say.schedule.balance, figure: dollars(balances_of(answer)[at])},
        parts: parts_of(answer).map(({part, name}) => ({
            kind: part,
            name,
            figure: row ? dollars(row[part]) : '–',
        })),
    };
}

type Layout = ReturnType<typeof laid_out>;

/// What is owed, as a line with the ground below it.
function Owed({answer, layout}: {answer: Schedule; layout: Layout}) {
    const {balance, left, right, x} = layout;
    const balances = balances_of(answer);
    const owed = line<string>()
        .x((_, i) => x(i))
        .y((amount) => balance(size(amount)));
    const ground = area<string>()
        .x((_, i) => x(i))
        .y0(balance(0))
        .y1((amount) => balance(size(amount)));
    return (
        <>
            <path class="owed-ground" d={ground(balances) ?? ''} />
            <AmountAxis scale={balance} count={4} left={left} right={right} />
            <path class="curve owed" d={owed(balances) ?? ''} />
        </>
    );
}

/// The figures at the right of the two drawings.
function Told({answer, at, layout}: {answer: Schedule; at: number; layout: Layout}) {
    const {column, middle, right} = layout;
    const told = told_at(answer, at);
    const [left, room] = [right + 14, column];
    return (
        <>
            <text class="place" x={left} y={top - 14}>
                {told.place}
            </text>
            <Figures
                rows={[{kind: 'owed', ...told.balance}]}
                left={left}
                room={room}
                top={top + line_height}
            />
            <Figures
                rows={[...told.parts].reverse()}
                left={left}
                room={room}
                top={middle + between + 6}
            />
        </>
    );
}

function pointing_of(answer: Schedule, at: number, choose: (at: number) => void) {
    const {place, balance, parts} = told_at(answer, at);
    const lines = [balance, ...(at > 0 ? parts : [])];
    return {
        label: say.schedule.chart.label,
        at,
        count: answer.years.length + 1,
        leap: 5,
        words: say.common.at_a_place({
            place,
            lines: lines.map(({name, figure}) => ({name, amount: figure})),
        }),
        choose,
        follows: true,
    };
}

function drawn_at(
    answer: Schedule,
    width: number,
    at: number,
    choose: (at: number) => void,
): Drawn {
    const layout = laid_out(answer, width);
    const {middle, bottom, last, left, right, balance, year, x} = layout;
    return {
        height: bottom + below,
        pointing: {
            ...pointing_of(answer, at, choose),
            find: (across) => Math.max(0, Math.min(Math.round(x.invert(across)), last)),
        },
        parts: (
            <>
                <Owed answer={answer} layout={layout} />
                <text class="panel-title" x={left} y={middle + between - 14}>
                    {say.schedule.chart.each_year}
                </text>
                <AmountAxis scale={year} count={3} left={left} right={right} />
                <Columns answer={answer} x={x} y={year} />
                <YearAxis
                    scale={x}
                    last={last}
                    at={bottom + 24}
                    words={(one) =>
                        one === 0 ? say.common.closing : say.loans.years.year({year: one})
                    }
                />
                <Rule
                    x={x(at)}
                    top={top}
                    bottom={bottom}
                    grip
                    marks={[{y: balance(size(balances_of(answer)[at])), kind: 'owed'}]}
                />
                <Told answer={answer} at={at} layout={layout} />
            </>
        ),
    };
}

export function ScheduleChart({answer}: {answer: Schedule}) {
    const [wanted, look_at] = useState(first_looked_at);
    if (answer.years.length === 0) return null;
    const at = Math.min(wanted, answer.years.length);
    return (
        <Frame
            title={say.schedule.chart.title}
            kind="schedule-chart"
            draw={(width) => drawn_at(answer, width, at, look_at)}
        />
    );
}
