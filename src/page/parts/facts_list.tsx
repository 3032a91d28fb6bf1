// Names with their amounts beside them, one under the other.
import type {TermCode} from '../answer_types';
import {Term} from './term';

/// A name, what stands beside it, and the term that explains the name.
export type FactRow = [name: string, value: string, term?: TermCode];

export function FactsList({rows}: {rows: FactRow[]}) {
    return (
        <dl class="facts-list">
            {rows.map(([name, value, term]) => (
                <div key={name}>
                    <dt>
                        <Term of={term}>{name}</Term>
                    </dt>
                    <dd>{value}</dd>
                </div>
            ))}
        </dl>
    );
}
