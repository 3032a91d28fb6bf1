// The loans over the years, each against the one that is shown: what has been spent and is owed, or
// what is owed still, or what has been paid, more or less than under it.
import type {Compare} from '../answers';
import {term} from '../figures';
import {every_language, say} from '../language';
import {loan_name} from '../state/books';
import {LinesChart} from './lines_chart';

export type Curve = 'balance' | 'spent_and_owed' | 'paid';

function with_term({name, months}: Compare['scenarios'][0]['terms']): string {
    const shown = loan_name(name);
    return every_language.some(({figures}) => shown.includes(figures.term(months)))
        ? shown
        : say.loan_names.with_term({name: shown, term: term(months)});
}

export function YearsChart({answer, curve}: {answer: Compare; curve: Curve}) {
    const words = say.loans.years;
    const base = answer.scenarios.find((one) => one.terms.name === answer.apart_from);
    const others = answer.scenarios
        .map((one, index) => ({one, color: index % 6}))
        .filter(({one}) => one !== base && one.available && one.apart.length > 1);
    if (!base || others.length === 0) return null;
    const name = with_term(base.terms);
    return (
        <LinesChart
            title={words.against({what: words.curves[curve].says, name})}
            label={words.chart({title: words.curves[curve].says})}
            years={others[0].one.apart.map((point) => point.year)}
            lines={others.map(({one, color}) => ({
                name: with_term(one.terms),
                amounts: one.apart.map((point) => point[curve]),
                color,
            }))}
            base={name}
            place={(year) => (year === 0 ? words.at_closing : words.after({year}))}
            leap={5}
        />
    );
}
