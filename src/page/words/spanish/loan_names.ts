// What the name of a loan says of its terms, and the names that the page gives.
import type {Texts} from '../phrase';

export const loan_names = {
    all_the_cash: 'todo el efectivo disponible',
    nothing_down: 'sin pago inicial',
    percent_down: ({percent}: Texts<'percent'>) => `${percent}% inicial`,
    amount_down: ({amount}: Texts<'amount'>) => `${amount} inicial`,
    fee_in_cash: 'cargo en efectivo',
    bought_down: ({buydown}: Texts<'buydown'>) => `reducción temporal ${buydown}`,
    insurance_paid_up: 'prima única',
    another_way: ({name}: Texts<'name'>) => `${name}, copia`,
    with_term: ({name, term}: Texts<'name' | 'term'>) => `${name}, ${term}`,
};
