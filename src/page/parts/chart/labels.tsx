// Words beside what is drawn: measured, broken into lines, and kept apart.

/// The size of the letters in a chart, as chart.css has it, and a line of them.
const letters = 13;
export const line_height = 16;

let pen: CanvasRenderingContext2D | null = null;

/// How wide words are; a little more than that, as fonts differ.
export function width_of(words: string, weight = 400): number {
    pen ??= document.createElement('canvas').getContext('2d');
    if (!pen) return words.length * letters * 0.6;
    pen.font = [weight, `${letters}px`, getComputedStyle(document.body).fontFamily].join(' ');
    return pen.measureText(words).width * 1.02;
}

function cut(words: string, room: number): string {
    if (width_of(words) <= room) return words;
    let left = words;
    while (left.length > 1 && width_of(`${left}…`) > room) left = left.slice(0, -1);
    return `${left.trimEnd()}…`;
}

/// Words in as many lines as they need, at most so many: what is left over is cut.
export function broken(words: string, room: number, most: number): string[] {
    const lines: string[] = [];
    let rest = words.split(/\s+/).filter(Boolean);
    while (rest.length > 0 && lines.length < most) {
        let count = 1;
        while (count < rest.length && width_of(rest.slice(0, count + 1).join(' ')) <= room)
            count += 1;
        const last = lines.length === most - 1;
        lines.push(cut(rest.slice(0, last ? rest.length : count).join(' '), room));
        rest = last ? [] : rest.slice(count);
    }
    return lines;
}

/// Where labels go so that none lies on another: each as near to its wish as the others let it,
/// between a top and a bottom. Labels are told by their middles.
export function spread(wishes: number[], heights: number[], top: number, bottom: number): number[] {
    const order = wishes.map((_, i) => i).sort((a, b) => wishes[a] - wishes[b] || a - b);
    let above = 0;
    // Without their own heights, labels only have to stay in order; those that clash share a place.
    const blocks: {sum: number; count: number}[] = [];
    const offsets = order.map((i) => {
        const offset = above + heights[i] / 2;
        above += heights[i];
        blocks.push({sum: wishes[i] - offset, count: 1});
        for (let n = blocks.length; n > 1; n = blocks.length) {
            const [first, second] = blocks.slice(-2);
            if (first.sum / first.count <= second.sum / second.count) break;
            blocks.splice(-2, 2, {sum: first.sum + second.sum, count: first.count + second.count});
        }
        return offset;
    });
    const places = blocks.flatMap(({sum, count}) =>
        Array<number>(count).fill(Math.max(top, Math.min(sum / count, bottom - above))),
    );
    const found: number[] = [];
    order.forEach((i, n) => {
        found[i] = places[n] + offsets[n];
    });
    return found;
}

export interface Label {
    at: number; ///< where its line ends
    name: string;
    figure: string;
    kind: string; ///< the class of its line
}

/// The height that labels take in a column, each with its figure under its name.
export function height_of(labels: Label[], room: number): number {
    return labels.reduce((sum, one) => sum + box_of(one, room).height, 0);
}

function box_of(label: Label, room: number): {lines: string[]; height: number} {
    const lines = broken(label.name, room, room < 130 ? 3 : 2);
    return {lines, height: (lines.length + 1) * line_height + 6};
}

/// Labels in a column at the right of the lines, each led to from the end of its line.
export function EndLabels({
    labels,
    from,
    left,
    room,
    top,
    bottom,
}: {
    labels: Label[];
    from: number; ///< where the lines end
    left: number; ///< where the column begins
    room: number;
    top: number;
    bottom: number;
}) {
    const boxes = labels.map((one) => box_of(one, room));
    const middles = spread(
        labels.map((one) => one.at),
        boxes.map((one) => one.height),
        top,
        bottom,
    );
    return (
        <>
            {labels.map((one, i) => {
                const first = middles[i] - boxes[i].height / 2 + line_height - 1;
                return (
                    <g key={`${i} ${one.name}`} class="end-label">
                        <path
                            class={`leader curve ${one.kind}`}
                            d={`M${from} ${one.at.toFixed(1)}L${left - 6} ${middles[i].toFixed(1)}`}
                        />
                        <text class="label" x={left} y={first}>
                            {boxes[i].lines.map((words, n) => (
                                <tspan key={n} x={left} dy={n === 0 ? 0 : line_height}>
                                    {words}{' '}
                                </tspan>
                            ))}
                            <tspan class="label-figure" x={left} dy={line_height}>
                                {one.figure}
                            </tspan>
                        </text>
                    </g>
                );
            })}
        </>
    );
}

/// A point with a name, and where the name came to stand.
export interface Spot {
    key: string;
    x: number;
    y: number;
    lines: string[];
}
interface PlacedSpot extends Spot {
    box: Box;
    aside: number; ///< to which side of its point it stands
}

interface Box {
    left: number;
    right: number;
    top: number;
    bottom: number;
}

function clash(a: Box, b: Box): boolean {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/// The ways to stand beside a point, the best first: how far aside and down the middle goes, in
/// halves of the words' own width and height, and in units beyond that.
const beside: [number, number, number, number][] = [
    [1, 0, 13, 0],
    [-1, 0, -13, 0],
    [0, -1, 0, -12],
    [0, 1, 0, 12],
    [1, -1, 4, -9],
    [-1, -1, -4, -9],
    [1, 1, 4, 9],
    [-1, 1, -4, 9],
    [0, -1, 0, -32],
    [0, 1, 0, 32],
    [-1, -1, -4, -32],
    [-1, 1, -4, 32],
    [1, -1, 4, -32],
    [1, 1, 4, 32],
    [-1, -1, -4, -60],
    [-1, 1, -4, 60],
    [1, 1, 4, 60],
    [1, -1, 4, -60],
];

function out_of(within: Box, box: Box): boolean {
    return (
        box.left < within.left ||
        box.right > within.right ||
        box.top < within.top ||
        box.bottom > within.bottom
    );
}

/// A name so far from its point that a line has to lead to it.
function is_far({y}: Spot, {top, bottom}: Box): boolean {
    return y < top - 20 || y > bottom + 20;
}

/// Where that line runs, without what lies close to the point.
function lead_to({x, y}: Spot, {left, right, top, bottom}: Box): Box {
    const to = Math.max(left, Math.min(x, right));
    const [from, end] = y < top ? [y + 12, top - 1] : [bottom + 1, y - 12];
    return {left: Math.min(x, to) - 1, right: Math.max(x, to) + 1, top: from, bottom: end};
}

/// The boxes that a name may have beside its point, in the order of the ways.
function boxes_beside(spot: Spot): Box[] {
    const half_wide = Math.max(...spot.lines.map((words) => width_of(words))) / 2 + 2;
    const half_high = (spot.lines.length * line_height) / 2;
    return beside.map(([aside, down, by_x, by_y]) => {
        const x = spot.x + aside * half_wide + by_x;
        const y = spot.y + down * half_high + by_y;
        return {
            left: x - half_wide,
            right: x + half_wide,
            top: y - half_high,
            bottom: y + half_high,
        };
    });
}

/// Names beside their points, none on another, on a named point or out of the drawing, and on as
/// little as can be of what is drawn otherwise. Who comes first has the first choice; who finds no
/// place is left to the table.
export function placed(spots: Spot[], within: Box, drawn: {x: number; y: number}[]): PlacedSpot[] {
    const taken: Box[] = spots.map(({x, y}) => ({
        left: x - 9,
        right: x + 9,
        top: y - 9,
        bottom: y + 9,
    }));
    const covered = (box: Box) =>
        drawn.filter(
            ({x, y}) =>
                x > box.left - 4 && x < box.right + 4 && y > box.top - 4 && y < box.bottom + 4,
        ).length;
    return spots.flatMap((spot): PlacedSpot[] => {
        const [best] = boxes_beside(spot)
            .map((box, way) => ({box, way}))
            .filter(({box}) => !out_of(within, box) && !taken.some((one) => clash(one, box)))
            .filter(
                ({box}) =>
                    !is_far(spot, box) || !taken.some((one) => clash(one, lead_to(spot, box))),
            )
            .map(({box, way}) => ({box, way, cost: covered(box) * 3 + way}))
            .sort((a, b) => a.cost - b.cost);
        if (!best) return [];
        taken.push(best.box);
        return [{...spot, box: best.box, aside: beside[best.way][0]}];
    });
}

/// A name in its place; one that stands farther off is led to.
export function SpotName(spot: PlacedSpot) {
    const {x, y, lines, box, aside} = spot;
    const at = {start: box.left + 2, middle: (box.left + box.right) / 2, end: box.right - 2};
    const anchor = aside > 0 ? 'start' : aside < 0 ? 'end' : 'middle';
    const to = {
        x: Math.max(box.left, Math.min(x, box.right)),
        y: y < box.top ? box.top : box.bottom,
    };
    return (
        <>
            {is_far(spot, box) && <path class="spot-lead" d={`M${x} ${y}L${to.x} ${to.y}`} />}
            <text
                class="spot-name"
                x={at[anchor]}
                y={box.top + line_height - 4}
                text-anchor={anchor}
            >
                {lines.map((words, n) => (
                    <tspan key={n} x={at[anchor]} dy={n === 0 ? 0 : line_height}>
                        {words}{' '}
                    </tspan>
                ))}
            </text>
        </>
    );
}
