// What is said the same in several places.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

/// "y", and "e" before a word that begins with its sound.
function and(each: string[]): string {
    const last = each[each.length - 1] ?? '';
    if (each.length < 2) return last;
    const word = /^h?[ií](?![aeo])/i.test(last) ? 'e' : 'y';
    return `${each.slice(0, -1).join(', ')} ${word} ${last}`;
}

export const common = {
    contract_price: 'Precio del contrato',
    a_month: 'Pago mensual',
    note_rate: 'Tasa de interés',
    apr: 'APR',
    apr_not_found: 'no se halló',
    cash_to_close: 'Efectivo para el cierre',
    back_at_closing: 'Efectivo que recibe en el cierre',
    all_cash_needed: 'Efectivo necesario',
    down_payment: 'Pago inicial',
    loan: 'Monto del préstamo',
    points: 'Puntos',
    term: 'Plazo del préstamo',
    mortgage_insurance: 'Seguro hipotecario',
    yours: 'su elección',
    no_cost: 'sin costo',
    no_extra_cost: 'sin costo adicional',
    for_the_desk: 'Para la oficina:',
    back: 'Volver',
    in_a_package: 'en un paquete',
    must_have: 'esencial',
    closing: 'cierre',

    close: 'Cerrar',
    undo: 'Deshacer',
    redo: 'Rehacer',
    one_step_back: 'Un paso atrás',
    one_step_forward: 'Un paso adelante',

    monthly: ({amount}: Texts<'amount'>) => `${amount} al mes`,
    monthly_small: ({amount, small}: Parts<'amount'> & Marks<'small'>) =>
        rich`${amount}${small(' al mes')}`,
    monthly_part: ({amount}: Parts<'amount'>) => rich`${amount} al mes`,
    of_it: ({name, amount}: Parts<'name' | 'amount'>) => rich`${name} ${amount}`,
    in_price: ({amount}: Texts<'amount'>) => `${amount} en el precio`,
    cash: ({amount}: Texts<'amount'>) => `${amount} en efectivo`,
    up_to: ({amount, small}: Parts<'amount'> & Marks<'small'>) => rich`${small('hasta ')}${amount}`,
    from: ({amount, small}: Parts<'amount'> & Marks<'small'>) => rich`${small('desde ')}${amount}`,
    lot: ({lot}: Texts<'lot'>) => `Lote ${lot}`,
    home_taken: ({plan, elevation, lot}: Texts<'plan' | 'elevation' | 'lot'>) =>
        `Plano ${plan}, fachada ${elevation}, lote ${lot}`,
    home_line: ({plan, lot}: Parts<'plan' | 'lot'>) => rich`${plan} en el lote ${lot}`,

    at_a_place: ({place, lines}: {place: string; lines: Texts<'name' | 'amount'>[]}) =>
        `${place}: ${lines.map(({name, amount}) => `${name} ${amount}`).join('; ')}`,

    not_to_be_had: 'no disponible',
    refused: ({why}: Texts<'why'>) => `No disponible: ${why}`,
    refused_beside: ({why}: Texts<'why'>) => `no disponible: ${why}`,
    wrong: ({found, expected}: Texts<'found' | 'expected'>) => `${found}; se esperaba: ${expected}`,
    because: ({name, why}: Texts<'name' | 'why'>) => `${name} (${why})`,
    numbered: ({name, number}: {name: string; number: number}) => `${name} (${number})`,
    with_form: ({name, form}: Texts<'name' | 'form'>) => `${name}: ${form}`,
    and,
};
