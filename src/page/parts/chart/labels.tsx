// Words beside what is drawn: measured, broken into lines, and kept apart.

/// The size of the letters in a chart, as chart.css has it, and a line of them.
const letters = 13;
export const line_height = 16;

let pen: CanvasRenderingContext2D | null = null;

/// How wide words are; a little more than that, as fonts differ.
export function width_of(words: string, weight = 400): number {
    pen ??= document.createElement('canvas').getContext('2d');
    if (!pen) return words.length * letters * 0.6;
    pen.font = `${weight} ${letters}px ${getComputedStyle(document.body).fontFamily}`;
    return pen.measureText(words).width * 1.02;
}

function cut(words: string, room: number): string {
    let left = words;
    while (left.length > 1 && width_of(`${left}…`) > room) left = left.slice(0, -1);
    return left === words ? words : `${left.trimEnd()}…`;
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
    const lines = broken(label.name, room, 2);
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
                            class={`leader ${one.kind}`}
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
