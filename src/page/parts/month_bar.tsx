// A month as one stacked bar: its parts side by side, as long as they are dear.
import {parts_of} from '../answers';
import type {Monthly} from '../answers';
import {dollars, size} from '../figures';

import './month_bar.css';

/// `widest` is the dearest month on the screen, so that bars can be held against each other.
export function MonthBar({monthly, widest}: {monthly: Monthly; widest: number}) {
    let at = 0;
    const parts = parts_of([monthly]).map((part) => {
        const width = widest > 0 ? (size(monthly[part.key]) / widest) * 100 : 0;
        at += width;
        return {...part, at: at - width, width};
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
                    class={`part ${part.color}`}
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
            {parts_of([monthly]).map(({key, name, color}) => (
                <div key={key}>
                    <dt>
                        <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                            <rect class={`part ${color}`} width="10" height="10" />
                        </svg>
                        {name}
                    </dt>
                    <dd>{dollars(monthly[key])}</dd>
                </div>
            ))}
        </dl>
    );
}
