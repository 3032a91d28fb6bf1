// The loan in hand, year by year.
import {rich} from '../phrase';
import type {Marks, Texts} from '../phrase';

export const schedule = {
    title: 'Calendario de pagos, año por año',
    loan: 'Préstamo',
    extra: 'Capital adicional cada mes',
    worst_case: 'Cada cambio de la tasa, lo más alto que permite el préstamo',
    says: ({
        loan,
        terms,
        estimate,
        first_payment,
    }: Texts<'loan' | 'terms' | 'estimate' | 'first_payment'>) =>
        `Monto del préstamo: ${loan}; ${terms}. ${estimate} El primer pago vence el ` +
        `${first_payment}.`,
    years: 'Toque un año para ver sus meses.',

    no_extra:
        'El capital adicional reduce su saldo cada mes. Escriba una cantidad para ver cuánto ahorra.',
    saves: ({
        extra,
        payments,
        fewer,
        last,
        interest,
        insurance,
        strong,
    }: Texts<'extra' | 'last' | 'interest'> & {
        payments: number;
        fewer: number;
        insurance: string | null;
    } & Marks<'strong'>) =>
        rich`${strong(`${extra} más cada mes`)}: ${payments} pagos, ${fewer} menos. El último es en ${last}. Usted paga ${interest} menos de intereses${
            insurance && ` y ${insurance} menos de seguro hipotecario`
        }.`,
    bought_down: ({amount, years}: {amount: string; years: {amount: string; year: number}[]}) =>
        `La reducción temporal de la tasa (buydown) cubre ${amount} de estos pagos: ` +
        `${years.map((one) => `${one.amount} en el año ${one.year}`).join(', ')}.`,

    chart: {
        title: 'El saldo al final de cada año y lo que se paga cada año.',
        label: 'Saldo y pagos por año. La tabla de abajo tiene las mismas cifras.',
        each_year: 'Pagado cada año',
    },
    table: 'Pagos por año',
    year: 'Año',
    year_number: ({year}: {year: number}) => `Año ${year}`,
    year_to: ({month}: Texts<'month'>) => `hasta ${month}`,
    insurance_short: ({amount}: Texts<'amount'>) => `Seg. hip. ${amount}`,
    principal_and_interest: 'Capital e intereses',
    interest: 'Intereses',
    principal: 'Capital',
    balance: 'Saldo',
    shares: 'Partes',
    at_closing: 'En el cierre, del crédito del prestamista',
    together: 'Total',
};
