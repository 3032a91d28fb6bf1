// Lines over the years of a loan: amounts, or what others come to against the one loan shown.
import {line} from 'd3-shape';
import type {ComponentChildren} from 'preact';
import {useState} from 'preact/hooks';

import {dollars, signed, size} from '../figures';
import {say} from '../language';
import {AmountAxis, first_looked_at, room_of, YearAxis} from './chart/axis';
import {scale_of} from './chart/scale';
import type {Scale} from './chart/scale';

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
const below = 38;
const between = 44;
const ticks = 5;

/// From how many times as far on lines stand apart from the rest, on a scale of their own.
const far = 4;

/// Lines on one scale, with the labels at their ends.
interface Panel {
    lines: Line[];
    base: string | undefined; ///< the label of the line of zero, where this panel has it
    top: number;
    bottom: number;
    y: Scale;
}

function differs(asked: Asked): boolean {
    return asked.base !== undefined;
}

function figure_of(amount: string, asked: Asked): string {
    return differs(asked) ? signed(amount) : dollars(amount);
}

/// The farthest that a line goes from zero.
function farthest(one: Line): number {
    return Math.max(...one.amounts.map((amount) => Math.abs(size(amount))));
}

/// The lines that lie close to the one of zero would lie on each other beside some that go very
/// far: those are drawn below, on a larger scale.
function parted(asked: Asked): Line[][] {
    if (!differs(asked)) return [asked.lines];
    const sorted = [...asked.lines].sort((a, b) => farthest(a) - farthest(b));
    const leaps = sorted.slice(1).map((one, i) => farthest(one) / Math.max(farthest(sorted[i]), 1));
    const widest = Math.max(...leaps);
    if (!(widest >= far)) return [asked.lines];
    const near = new Set(sorted.slice(0, leaps.indexOf(widest) + 1));
    return [
        asked.lines.filter((one) => near.has(one)),
        asked.lines.filter((one) => !near.has(one)),
    ];
}

/// A round scale from the lowest to the highest, always with zero.
function with_zero(lines: Line[]): Scale {
    const all = lines.flatMap((one) => one.amounts.map(size));
    const [low, high] = [Math.min(0, ...all), Math.max(0, ...all)];
    return scale_of(low === high ? [0, 1000] : [low, high]).nice(ticks);
}

function labels_of(asked: Asked, {lines, base, y}: Omit<Panel, 'top' | 'bottom'>, at: number) {
    const labels = lines.map((one): Label => ({
        at: y(size(one.amounts[one.amounts.length - 1])),
        name: one.name,
        figure: figure_of(one.amounts[at], asked),
        kind: `c${one.color}`,
    }));
    if (base === undefined) return labels;
    const shown = {at: y(0), name: base, figure: say.loans.years.shown, kind: 'base'};
    return [...labels, shown];
}

/// The panels from the top down, each as high as its labels need.
function panels_of(asked: Asked, room: number, least: number): Panel[] {
    let from = top;
    return parted(asked).map((lines, i) => {
        const panel = {lines, base: i === 0 ? asked.base : undefined, y: with_zero(lines)};
        const needed = height_of(labels_of(asked, panel, 0), room);
        const bottom = from + Math.max(i === 0 ? least : least * 0.6, needed);
        const placed = {...panel, y: panel.y.range([bottom, from]), top: from, bottom};
        from = bottom + between;
        return placed;
    });
}

/// Where everything goes in a drawing of a width: the scales, and the column of the labels.
function laid_out(asked: Asked, width: number) {
    const narrow = width < 520;
    const room = narrow ? Math.max(108, width * 0.3) : Math.min(220, width * 0.27);
    const panels = panels_of(asked, room, narrow ? 200 : 240);
    const left = Math.max(...panels.map(({y}) => room_of(y, ticks, differs(asked))));
    const right = width - room - 30;
    const last = asked.years[asked.years.length - 1];
    return {
        room,
        left,
        right,
        panels,
        last,
        bottom: panels[panels.length - 1].bottom,
        x: scale_of([0, last]).range([left, right]),
    };
}

function Lines({
    asked,
    panel,
    at,
    left,
    right,
    room,
    x,
}: {
    asked: Asked;
    panel: Panel;
    at: number;
    left: number;
    right: number;
    room: number;
    x: Scale;
}) {
    const {y} = panel;
    const path = line<string>()
        .x((_, i) => x(asked.years[i]))
        .y((amount) => y(size(amount)));
    return (
        <g class="panel">
            <AmountAxis
                scale={y}
                count={ticks}
                left={left}
                right={right}
                differences={differs(asked)}
            />
            {differs(asked) && <line class="curve base" x1={left} x2={right} y1={y(0)} y2={y(0)} />}
            {panel.lines.map((one, i) => (
                <path
                    key={`${i} ${one.name}`}
                    class={`curve c${one.color}`}
                    d={path(one.amounts) ?? ''}
                />
            ))}
            <Rule
                x={x(asked.years[at])}
                top={panel.top}
                bottom={panel.bottom}
                grip={panel.base !== undefined || !differs(asked)}
                marks={panel.lines.map((one) => ({
                    y: y(size(one.amounts[at])),
                    kind: `m${one.color}`,
                }))}
            />
            <EndLabels
                labels={labels_of(asked, panel, at)}
                from={right}
                left={right + 30}
                room={room}
                top={panel.top}
                bottom={panel.bottom}
            />
        </g>
    );
}

function read_out(asked: Asked, at: number): string {
    const lines = asked.lines.map((one) => ({
        name: one.name,
        amount: figure_of(one.amounts[at], asked),
    }));
    return say.common.at_a_place({place: asked.place(at), lines});
}

function pointing_of(asked: Asked, at: number, choose: (at: number) => void) {
    const {label, leap, years} = asked;
    const words = read_out(asked, at);
    return {label, at, count: years.length, leap, words, choose, follows: true};
}

function drawn_at(asked: Asked, width: number, at: number, choose: (at: number) => void): Drawn {
    const {room, left, right, panels, bottom, last, x} = laid_out(asked, width);
    return {
        height: bottom + below,
        pointing: {
            ...pointing_of(asked, at, choose),
            find: (across) => nearest(asked.years, x.invert(across)),
        },
        parts: (
            <>
                {panels.map((panel, i) => (
                    <Lines
                        key={i}
                        asked={asked}
                        panel={panel}
                        at={at}
                        left={left}
                        right={right}
                        room={room}
                        x={x}
                    />
                ))}
                {panels.slice(1).map((panel) => (
                    <text key="scale" class="panel-title" x={left} y={panel.top - 14}>
                        {say.loans.years.larger_scale}
                    </text>
                ))}
                <YearAxis
                    scale={x}
                    last={last}
                    at={bottom + 24}
                    words={(year) =>
                        year === 0 ? say.common.closing : say.loans.years.year({year})
                    }
                />
                <text class="place" x={right + 30} y={top - 14}>
                    {asked.place(at)}
                </text>
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
