// A month as one stacked bar: its parts side by side, as long as they are dear.
import {month_parts} from '../answers';
import type {Monthly} from '../answers';
import {dollars, is_zero, size} from '../figures';

/// `widest` is the dearest month on the screen, so that bars can be held against each other.
export function MonthBar({monthly, widest}: {monthly: Monthly; widest: number}) {
    let at = 0;
    const parts = month_parts
        .filter(([key]) => !is_zero(monthly[key]))
        .map(([key, name]) => {
            const width = widest > 0 ? (size(monthly[key]) / widest) * 100 : 0;
            const part = {key, name, at, width};
            at += width;
            return part;
        });
    return (
        <svg
            class="month-bar"
            viewBox="0 0 100 6"
            preserveAspectRatio="none"
            role="img"
            aria-label={parts
                .map((part) => `${part.name} ${dollars(monthly[part.key])}`)
                .join(', ')}
        >
            {parts.map((part) => (
                <rect
                    key={part.key}
                    class={`part ${part.key}`}
                    x={part.at}
                    y="0"
                    width={Math.max(part.width - 0.3, 0.1)}
                    height="6"
                />
            ))}
        </svg>
    );
}

export function MonthParts({monthly}: {monthly: Monthly}) {
    return (
        <dl class="parts">
            {month_parts
                .filter(([key]) => !is_zero(monthly[key]))
                .map(([key, name]) => (
                    <div key={key}>
                        <dt>
                            <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                                <rect class={`part ${key}`} width="10" height="10" />
                            </svg>
                            {name}
                        </dt>
                        <dd>{dollars(monthly[key])}</dd>
                    </div>
                ))}
        </dl>
    );
}
