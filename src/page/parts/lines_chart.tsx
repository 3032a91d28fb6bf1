// Lines over the years of a loan: amounts, or what others come to against the one loan shown.
import {scaleLinear} from 'd3-scale';
import {line} from 'd3-shape';
import type {ComponentChildren} from 'preact';
import {useState} from 'preact/hooks';

import {dollars, signed, size} from '../figures';
import {say} from '../language';
import {AmountAxis, room_of, YearAxis} from './chart/axis';
import {Frame} from './chart/frame';
import type {Drawn} from './chart/frame';
import {EndLabels, height_of} from './chart/labels';
import type {Label} from './chart/labels';
import {nearest, Rule} from './chart/pointer';

/// One line: an amount for each place of the chart, a color and dashes by its number.
export interface Line {
    name: string;
    amounts: string[];
    color: number;
}

interface Asked {
    title: ComponentChildren;
    label: string; ///< what it shows, for who does not see it
    years: number[]; ///< the places, by the years that have passed
    lines: Line[];
    base?: string; ///< the name of what they are held against: the line of zero
    place: (at: number) => string; ///< the words for a place: "End of year 5"
    leap: number;
}

const top = 34;
const below = 34;
const ticks = 5;

/// What is looked at first, in years.
const first_looked_at = 10;

function figure_of(amount: string, asked: Asked): string {
    return asked.base === undefined ? dollars(amount) : signed(amount);
}

/// The lowest and the highest, and always zero between them.
function reach_of(lines: Line[]): [number, number] {
    const all = lines.flatMap((one) => one.amounts.map(size));
    const [low, high] = [Math.min(0, ...all), Math.max(0, ...all)];
    return low === high ? [0, 1] : [low, high];
}

function labels_of(asked: Asked, at: number, y: (amount: number) => number): Label[] {
    const own = asked.lines.map((one) => ({
        at: y(size(one.amounts[one.amounts.length - 1])),
        name: one.name,
        figure: figure_of(one.amounts[at], asked),
        kind: `curve c${one.color}`,
    }));
    if (asked.base === undefined) return own;
    const base = {at: y(0), name: asked.base, figure: say.loans.years.shown, kind: 'curve base'};
    return [...own, base];
}

function read_out(asked: Asked, at: number): string {
    const lines = asked.lines.map((one) => ({
        name: one.name,
        amount: figure_of(one.amounts[at], asked),
    }));
    return say.common.at_a_place({place: asked.place(at), lines});
}

/// Where everything goes in a drawing of a width: the scales, and the column of the labels.
function laid_out(asked: Asked, width: number) {
    const narrow = width < 520;
    const room = narrow ? Math.max(104, width * 0.3) : Math.min(220, width * 0.27);
    const reach = reach_of(asked.lines);
    const differences = asked.base !== undefined;
    const amounts = scaleLinear().domain(reach).nice(ticks);
    const left = room_of(amounts, ticks, differences);
    const right = width - room - 30;
    const needed = height_of(
        labels_of(asked, 0, () => 0),
        room,
    );
    const bottom = top + Math.max(narrow ? 220 : 260, needed);
    const last = asked.years[asked.years.length - 1];
    return {
        room,
        left,
        right,
        bottom,
        last,
        x: scaleLinear().domain([0, last]).range([left, right]),
        y: amounts.range([bottom, top]),
    };
}

function drawn_at(asked: Asked, width: number, at: number, choose: (at: number) => void): Drawn {
    const {room, left, right, bottom, last, x, y} = laid_out(asked, width);
    const path = line<string>()
        .x((_, i) => x(asked.years[i]))
        .y((amount) => y(size(amount)));
    const column = right + 30;
    return {
        height: bottom + below,
        pointing: {
            label: asked.label,
            at,
            count: asked.years.length,
            leap: asked.leap,
            words: read_out(asked, at),
            find: (across) => nearest(asked.years, x.invert(across)),
            choose,
            follows: true,
        },
        parts: (
            <>
                <AmountAxis
                    scale={y}
                    count={ticks}
                    left={left}
                    right={right}
                    differences={asked.base !== undefined}
                />
                <YearAxis
                    scale={x}
                    last={last}
                    at={bottom + 20}
                    words={(year) =>
                        year === 0 ? say.common.closing : say.loans.years.year({year})
                    }
                />
                {asked.base !== undefined && (
                    <line class="curve base" x1={left} x2={right} y1={y(0)} y2={y(0)} />
                )}
                {asked.lines.map((one, i) => (
                    <path
                        key={`${i} ${one.name}`}
                        class={`curve c${one.color}`}
                        d={path(one.amounts) ?? ''}
                    />
                ))}
                <Rule
                    x={x(asked.years[at])}
                    top={top}
                    bottom={bottom}
                    marks={asked.lines.map((one) => ({
                        y: y(size(one.amounts[at])),
                        kind: `m${one.color}`,
                    }))}
                />
                <text class="place" x={column} y={top - 14}>
                    {asked.place(at)}
                </text>
                <EndLabels
                    labels={labels_of(asked, at, y)}
                    from={right}
                    left={column}
                    room={room}
                    top={top}
                    bottom={bottom}
                />
            </>
        ),
    };
}

export function LinesChart(asked: Asked) {
    const [year, look_at] = useState(first_looked_at);
    if (asked.lines.length === 0 || asked.years.length < 2) return null;
    const at = nearest(asked.years, year);
    return (
        <Frame
            title={asked.title}
            kind="lines"
            draw={(width) => drawn_at(asked, width, at, (place) => look_at(asked.years[place]))}
        />
    );
}
