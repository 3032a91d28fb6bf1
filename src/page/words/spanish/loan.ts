// One loan: what it comes to, and the fields of its terms.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const insurance = {
    paid_up: 'pagado por completo en el cierre',
    none: 'ninguno',
    whole_loan: 'durante todo el préstamo',
    to: ({last}: Texts<'last'>) => `hasta ${last}`,
    to_or_on_request: ({last, request}: Texts<'last' | 'request'>) =>
        `hasta ${last}; si usted lo pide, desde ${request}`,
};

const rates = {
    lowest: 'la más baja sin puntos',
    up_to_points: ({points}: Texts<'points'>) =>
        points === '1' ? 'la más baja con hasta 1 punto' : `la más baja con hasta ${points} puntos`,
    listed: ({rate, points}: Texts<'rate' | 'points'>) => `${rate} con ${points}`,
    noted: ({rate}: Texts<'rate'>) => rate,
    quoted: 'cotizada por un prestamista…',
    rate_quoted: 'Tasa cotizada',
    points_quoted: 'Puntos cotizados',
    points_unit: 'puntos',
};

const downs = {
    given_as: 'Cómo se indica el pago inicial',
    percent: 'del valor',
    amount: 'en dólares',
    cash: 'de este efectivo',
};

const buydowns = {
    'none': 'ninguna',
    '1-0': '1-0: 1% menos el primer año',
    '2-1': '2-1: 2% menos el primer año, luego 1%',
    '3-2-1': '3-2-1: 3% menos el primer año, luego 2%, luego 1%',
};

const fees = {financed: 'agregado al préstamo', cash: 'pagado en efectivo'};

const premiums = {
    monthly: 'con cada pago',
    single: 'en el cierre, con una prima única',
    financed: 'con una prima única agregada al préstamo',
};

const insurance_ends = {
    automatic: 'por sí solo, al 78%',
    request: 'cuando usted lo pide, al 80%',
};

const changed = {
    term: 'plazo del préstamo',
    down: 'pago inicial',
    rate: 'tasa de interés',
    points: 'puntos',
    lock: 'bloqueo de la tasa',
    buydown: 'reducción temporal de la tasa',
    premium: 'prima del seguro hipotecario',
    insurance_ends: 'fin del seguro hipotecario',
    benefit: 'uso del beneficio de VA',
    name: 'nombre nuevo',
};

/// What cash is made of.
const cash = {
    title: 'De qué consta el efectivo necesario',
    down_payment: 'Pago inicial',
    upfront_fee_in_cash: 'Cargo inicial en efectivo',
    fee_in_cash: ({fee}: Texts<'fee'>) => `${fee}, en efectivo`,
    points: 'Puntos',
    lender_credit: 'Menos el crédito del prestamista',
    principal_reduction: 'Reducción del capital',
    closing_costs: 'Costos de cierre',
    prepaid_interest: 'Intereses prepagados',
    prepaid_bills: 'Otros gastos prepagados',
    initial_escrow_deposit: 'Depósito inicial de escrow',
    temporary_buydown: 'Reducción temporal (buydown)',
    credits: 'Menos los créditos',
    deposits: 'Menos los depósitos ya pagados',
};

export const loan = {
    cash,
    insurance,
    rates,
    downs,
    buydowns,
    fees,
    premiums,
    insurance_ends,
    changed,
    change: ({loan, what}: Texts<'loan' | 'what'>) => `${loan}: ${what}`,
    taken_away: ({loan}: Texts<'loan'>) => `Se quitó: ${loan}`,
    added: ({loan}: Texts<'loan'>) => `Se agregó: ${loan}`,

    month: ({amount, big}: Parts<'amount'> & Marks<'big'>) => rich`${big(amount)} al mes`,
    all_cash: 'Efectivo necesario, con depósitos',
    paid_in_five_years: 'Pagado en cinco años',
    owed_after_five_years: 'Debe después de cinco años',
    paid_over_loan: 'Pagado en todo el préstamo',
    paid_off_with: 'Se termina con el pago',
    first_months: ({
        months,
        amount,
        bought_down,
    }: Texts<'amount'> & {months: number; bought_down: boolean}) =>
        `Primeros ${months} meses: ${amount} al mes. ` +
        (bought_down
            ? 'La reducción temporal (buydown) cubre parte del pago, y los impuestos pueden ser ' +
              'menores hasta que el condado valore la vivienda terminada.'
            : 'Los impuestos son menores hasta que el condado valore la vivienda terminada.'),
    take_in_hand: 'Mostrar este préstamo en la barra',
    take_away: 'Quitar este préstamo',

    program: 'Programa',
    rate: 'Tasa de interés',
    more: 'Bloqueo, reducción de la tasa y más',
    name: 'Nombre',
    lock: 'Bloqueo de la tasa',
    lock_days: ({days}: {days: number}) => `${days} días`,
    buydown: 'Reducción temporal (buydown)',
    insurance_paid: 'El seguro hipotecario se paga',
    insurance_ends_when: 'El seguro hipotecario termina',
    benefit: 'Beneficio de préstamo VA',
};
