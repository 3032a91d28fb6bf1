// The place of a chart that is looked at: by mouse, by touch, or with the arrow keys.
import type {ComponentChildren} from 'preact';

export interface Pointing {
    label: string; ///< what is looked at
    at: number; ///< a number of the places
    count: number;
    leap: number; ///< how far a page key goes
    words: string; ///< what is read out at the place
    find: (x: number, y: number) => number; ///< the place under a point of the drawing
    choose: (at: number) => void;
    follows: boolean; ///< whether the place goes along with a mouse or a finger, or waits for a touch
}

/// Where a key goes, or null where it goes nowhere.
function goes_to(key: string, {at, count, leap}: Pointing): number | null {
    const step: Record<string, number> = {
        ArrowLeft: at - 1,
        ArrowDown: at - 1,
        ArrowRight: at + 1,
        ArrowUp: at + 1,
        PageDown: at - leap,
        PageUp: at + leap,
        Home: 0,
        End: count - 1,
    };
    return key in step ? Math.max(0, Math.min(step[key], count - 1)) : null;
}

export function Pointer({
    pointing,
    width,
    children,
}: {
    pointing: Pointing;
    width: number; ///< of the drawing, in its own units
    children: ComponentChildren;
}) {
    const under = (event: MouseEvent) => {
        const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
        const unit = width / Math.max(box.width, 1);
        return pointing.find((event.clientX - box.left) * unit, (event.clientY - box.top) * unit);
    };
    return (
        <div
            class="plot"
            role="slider"
            tabIndex={0}
            aria-label={pointing.label}
            aria-valuemin={0}
            aria-valuemax={pointing.count - 1}
            aria-valuenow={pointing.at}
            aria-valuetext={pointing.words}
            onPointerDown={(event) => {
                if (pointing.follows) pointing.choose(under(event));
            }}
            onPointerMove={(event) => {
                const looks = event.buttons > 0 || event.pointerType === 'mouse';
                if (pointing.follows && looks) pointing.choose(under(event));
            }}
            onClick={(event) => pointing.choose(under(event))}
            onKeyDown={(event) => {
                const next = goes_to(event.key, pointing);
                if (next === null || event.ctrlKey || event.metaKey || event.altKey) return;
                event.preventDefault();
                pointing.choose(next);
            }}
        >
            {children}
        </div>
    );
}

/// The place that is looked at, upright through the drawing, with a mark on each line.
export function Rule({
    x,
    top,
    bottom,
    grip,
    marks,
}: {
    x: number;
    top: number;
    bottom: number;
    grip: boolean; ///< whether it begins here
    marks: {y: number; kind: string}[];
}) {
    return (
        <g class="rule">
            <line x1={x} x2={x} y1={top} y2={bottom} />
            {grip && (
                <path
                    class="grip"
                    d={`M${x - 6} ${top - 9}H${x + 6}V${top - 3}L${x} ${top + 3}L${x - 6} ${top - 3}Z`}
                />
            )}
            {marks.map(({y, kind}, i) => (
                <circle key={i} class={`rule-mark ${kind}`} cx={x} cy={y} r="4" />
            ))}
        </g>
    );
}

/// The place in an ascending list that lies nearest.
export function nearest(places: number[], wanted: number): number {
    return places.reduce(
        (best, place, i) => (Math.abs(place - wanted) < Math.abs(places[best] - wanted) ? i : best),
        0,
    );
}
