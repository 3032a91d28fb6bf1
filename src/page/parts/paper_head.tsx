// On paper no bar is seen: price, month and cash head the view, with their terms.
import {dollars} from '../figures';
import {say} from '../language';
import {loan_name} from '../state/books';
import {tour} from '../state/signals';
import {Name} from './name';
import {estimate_words, terms_words} from './terms';

import './paper_head.css';

export function PaperHead() {
    const {contract_price, heading, scenario} = tour.value!;
    const {available, cash, monthly, terms} = scenario;
    const figures = [[say.common.contract_price, dollars(contract_price)]];
    if (available) {
        figures.push([say.common.a_month, dollars(monthly.total)]);
        figures.push([say.common.all_cash_needed, dollars(cash.needed)]);
    }
    return (
        <div class="paper-head">
            <dl>
                {figures.map(([name, amount]) => (
                    <div key={name}>
                        <dt>{name}</dt>
                        <dd>{amount}</dd>
                    </div>
                ))}
            </dl>
            <p>
                <Name of={loan_name(terms.name)} />:{' '}
                {say.terms.beside({
                    terms: terms_words(terms),
                    estimate: estimate_words(heading),
                })}
            </p>
        </div>
    );
}
