// An option now from the builder, or after the closing.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const ways = {
    financed: 'Con el constructor, en el préstamo',
    cash: 'Con el constructor, en efectivo',
    after: 'Después del cierre, en efectivo',
    after_lent: 'Después del cierre, con un préstamo personal',
};

const than = {
    financed: (when: string) => `más que con el constructor, en el préstamo: ${when}`,
    cash: (when: string) => `más que con el constructor, en efectivo: ${when}`,
    after: (when: string) => `más que después del cierre, en efectivo: ${when}`,
    after_lent: (when: string) => `más que después del cierre, con un préstamo personal: ${when}`,
};

const fields = {
    option: 'Opción',
    chosen: ({name}: Texts<'name'>) => `${name} (elegida)`,
    level: 'Variante del constructor',
    how_many: 'Cuántos',
    month: 'Hecho con el pago número',
    month_label: 'Con qué pago del préstamo se hace',
    rate: 'Tasa del préstamo personal',
    rate_label: 'Tasa de un préstamo personal',
    months: 'Plazo del préstamo personal',
    months_label: 'Meses de un préstamo personal',
    months_unit: 'meses',
};

const costs = {
    spans_label: 'Años en la gráfica',
    span: ({years}: {years: number}) => `${years} años`,
    whole_loan: 'Todo el préstamo',
    chart: 'Lo que ha costado frente a la vivienda sin la opción, con lo que aún se debe por ella',
    by_years: 'Costo por año',
    month_by_month: 'Mes por mes',
    by_months: 'Costo mes por mes',
    through: 'Costo hasta',
    the_closing: 'cierre',
    month: ({month}: {month: number}) => `mes ${month}`,
    break_even: 'Cuándo una manera ha costado más',
};

export const later = {
    ways,
    than,
    fields,
    costs,

    title: 'Ahora, o después del cierre',
    says:
        'Para las opciones con una estimación en la lista de precios. El costo es lo que cada ' +
        'manera ha requerido hasta cada mes, frente a la misma vivienda sin la opción.',
    no_estimates: 'La lista de precios no tiene estimaciones para trabajos después del cierre.',
    both: 'Un préstamo personal requiere tanto la tasa como el número de meses.',
    item: ({
        option,
        level,
        price,
        estimate,
        strong,
    }: Parts<'option' | 'price'> & {
        level: string | null;
        estimate: {amount: string; note: string} | null;
    } & Marks<'strong'>) =>
        rich`${strong(rich`${option}${level && `: ${level}`}`)}, ${price} con el constructor. ${
            estimate &&
            `Después del cierre, unos ${estimate.amount} según la estimación de la lista de ` +
                `precios. ${estimate.note}`
        }`,
    not_here: ({why}: Texts<'why'>) => `No disponible aquí con el constructor: ${why}`,
    without_it: ({loan, month, terms, estimate}: Parts<'loan' | 'month' | 'terms' | 'estimate'>) =>
        rich`${loan}: ${month} al mes sin la opción. ${terms}. ${estimate}`,
    about: ({amount}: Texts<'amount'>) => `unos ${amount}`,
    at_once: ({payment}: {payment: number}) => `de una vez, con el pago ${payment}`,
    for_months: ({months}: {months: number}) => `durante ${months} meses`,
    at_closing: ({amount}: Texts<'amount'>) => `${amount} en el cierre`,
};
