// The loans over the years: what is owed, or what has been spent and is owed still.
import type {Compare} from '../answers';
import {term} from '../figures';
import {LinesChart} from './lines_chart';

export type Curve = 'balance' | 'spent_and_owed' | 'paid';

export function YearsChart({
    scenarios,
    curve,
    hand,
    title,
}: {
    scenarios: Compare['scenarios'];
    curve: Curve;
    hand: string;
    title: string;
}) {
    const with_term = (name: string, words: string) =>
        name.includes(words) ? name : `${name}, ${words}`;
    const lines = scenarios.map((one, index) => ({
        name: with_term(one.terms.name, term(one.terms.months)),
        points: ((one.available && one.curve) || []).map((point): [number, string] => [
            point.year,
            point[curve],
        ]),
        color: index % 6,
        strong: one.terms.name === hand,
    }));
    return <LinesChart title={title} lines={lines} />;
}
