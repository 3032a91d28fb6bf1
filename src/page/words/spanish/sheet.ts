// The sheet to print.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

const home = {
    title: 'La vivienda',
    at: ({plan, community}: Parts<'plan' | 'community'>) => rich`${plan} en ${community}`,
    of_whom: ({elevation, lot, buyer, builder}: Parts<'elevation' | 'lot' | 'buyer' | 'builder'>) =>
        rich`Fachada ${elevation}, lote ${lot}. Para ${buyer}. ${builder}.`,
    a_buyer: 'un comprador',
    to_fill_in: '______________',
    days: ({
        as_of,
        version,
        expires,
        contract,
        closing,
        rates,
        lender,
        samples,
        prepared_by,
        originator,
    }: Texts<
        | 'as_of'
        | 'version'
        | 'expires'
        | 'contract'
        | 'closing'
        | 'rates'
        | 'lender'
        | 'prepared_by'
        | 'originator'
    > & {samples: boolean}) =>
        `Estimación al ${as_of}. No es aprobación ni oferta de préstamo. Lista de precios ` +
        `${version}, válida hasta el ${expires}. Fecha del ` +
        `contrato: ${contract}. Fecha del cierre: ${closing}. Tasas del ${rates}, de ${lender}` +
        `${samples ? ' (cifras de muestra)' : ''}. Preparado por ${prepared_by}. Originador de ` +
        `préstamos con licencia: ${originator}.`,

    base: ({plan}: Texts<'plan'>) => `${plan}, precio base`,
    elevation: ({elevation}: Texts<'elevation'>) => `Fachada ${elevation}`,
    lot: ({lot}: Texts<'lot'>) => `Lote ${lot}, recargo del lote`,
    measure: ({quantity, unit, price}: Texts<'quantity' | 'price'> & {unit: string | null}) =>
        `${quantity}${unit ? ` ${unit}` : ''} × ${price}`,
    request: ({text, estimate}: Parts<'text'> & {estimate: string | null}) =>
        rich`Pedido por confirmar, no está en el precio: ${text}${
            estimate && `, se estima en ${estimate}`
        }.`,
    open_choices: ({choices}: {choices: {name: string; otherwise: string}[]}) =>
        'Aún por elegir sin costo: ' +
        `${choices.map((one) => `${one.name} (si no, ${one.otherwise})`).join('; ')}.`,
    credit: ({name, amount, use}: Parts<'name' | 'amount' | 'use'>) =>
        rich`${name}: ${amount} para ${use}.`,
    lender: ({lender}: Texts<'lender'>) =>
        `Este incentivo se da solo con un préstamo de ${lender}. Usted puede elegir cualquier ` +
        'prestamista, pero entonces no recibe el incentivo.',
};

const month = {
    title: 'Pago mensual con cada préstamo',
    label: 'Pago mensual con cada préstamo',
    part: 'Parte',
    down: ({amount, percent}: Texts<'amount' | 'percent'>) => `${amount} (${percent})`,
    change: ({loan, change}: Parts<'loan' | 'change'>) => rich`${loan}: ${change}.`,
    refused: ({loan, why}: Parts<'loan' | 'why'>) => rich`${loan} no está disponible: ${why}.`,
};

const cash = {
    title: ({loan}: Parts<'loan'>) => rich`Efectivo necesario: ${loan}`,
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
    when: 'Cuándo se paga',
    due: ({on, what}: Texts<'on' | 'what'>) => `${on}: ${what}`,
    lender_credit_lost: ({amount}: Texts<'amount'>) =>
        `Se pierden ${amount} del crédito del prestamista: los costos de cierre y los gastos ` +
        'prepagados son menos que el crédito.',
};

export const sheet = {
    writing: 'Preparando la hoja…',
    title: 'Una hoja para llevar a casa',
    print: 'Imprimir',
    home,
    month,
    cash,
};
