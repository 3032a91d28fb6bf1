// The highest price that the buyer's means allow, and what stands in the way of a higher one.
import type {Afford as Answer} from '../answers';
import type {Options} from '../engine';
import {dollars} from '../figures';
import {buyer} from '../store';
import {use_answer} from './asked';
import {Means} from './means';

/// The options of the question that are set.
function options_of(asks: Record<string, string>): Options {
    const options: Options = {};
    for (const name of ['reserves', 'step', 'automated'])
        if (asks[name]) options[name] = asks[name];
    return options;
}

export function Afford() {
    const {inquiry, asks} = buyer.value!;
    const {answer, problems} = use_answer<Answer>('afford', inquiry, options_of(asks));
    return (
        <section class="group" aria-labelledby="afford">
            <h3 id="afford">How much home</h3>
            <Means problems={problems} />
            <ul>
                {answer?.scenarios.map((one) => (
                    <li key={one.terms.name}>
                        {one.terms.name}: {one.price ? dollars(one.price) : 'no price fits'}
                    </li>
                ))}
            </ul>
        </section>
    );
}
