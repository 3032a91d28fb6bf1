// What the name of a loan says of its terms, and the names that the page gives.
import type {Texts} from '../phrase';

export const loan_names = {
    all_the_cash: 'all available cash',
    nothing_down: 'nothing down',
    percent_down: ({percent}: Texts<'percent'>) => `${percent}% down`,
    amount_down: ({amount}: Texts<'amount'>) => `${amount} down`,
    fee_in_cash: 'fee in cash',
    bought_down: ({buydown}: Texts<'buydown'>) => `${buydown} buydown`,
    insurance_paid_up: 'single premium',
    another_way: ({name}: Texts<'name'>) => `${name}, copy`,
    with_term: ({name, term}: Texts<'name' | 'term'>) => `${name}, ${term}`,
};
