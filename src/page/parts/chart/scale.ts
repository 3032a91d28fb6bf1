// Amounts and years laid on a length, with round ticks (d3-array).
import {nice, ticks} from 'd3-array';

type Ends = [number, number];

/// Places a value on a length. Places only: what is told beside it is text of an answer, or a tick.
export interface Scale {
    (value: number): number;
    /// About as many round values.
    ticks(count: number): number[];
    /// The value at a place.
    invert(place: number): number;
    /// From a round value to a round value.
    nice(count: number): Scale;
    /// On another length.
    range(length: Ends): Scale;
}

export function scale_of(domain: Ends, length: Ends = [0, 1]): Scale {
    const [low, high] = domain;
    const [from, to] = length;
    const steep = high === low ? 0 : (to - from) / (high - low);
    return Object.assign((value: number) => from + (value - low) * steep, {
        ticks: (count: number) => ticks(low, high, count),
        invert: (place: number) => (steep === 0 ? low : low + (place - from) / steep),
        nice: (count: number) => scale_of(nice(low, high, count), length),
        range: (other: Ends) => scale_of(domain, other),
    });
}
