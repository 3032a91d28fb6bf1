// The loans over the years: what is owed, or what has been spent and is owed still.
import type {Compare} from '../answers';
import {term} from '../figures';
import {every_language, say} from '../language';
import {loan_name} from '../store';
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
    const with_term = (name: string, months: number) =>
        every_language.some(({figures}) => name.includes(figures.term(months)))
            ? name
            : say.loan_names.with_term({name, term: term(months)});
    const lines = scenarios.map((one, index) => ({
        name: with_term(loan_name(one.terms.name), one.terms.months),
        points: ((one.available && one.curve) || []).map((point): [number, string] => [
            point.year,
            point[curve],
        ]),
        color: index % 6,
        strong: one.terms.name === hand,
    }));
    return <LinesChart title={title} lines={lines} />;
}
