// What a buyer's means allow: how much home, its limits, what a change of income moves.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const parts = {
    afford: 'el precio más alto que permiten su ingreso y su efectivo',
    wishes: 'lo que más vale para usted con un pago y un efectivo',
    builders_money: 'rebaja del precio, o para costos, puntos o una reducción temporal',
    later: 'una opción con el constructor, o después del cierre',
};

const means = {
    income: 'Ingreso bruto mensual',
    debts: 'Pagos mensuales de deudas',
    income_taxes: 'Impuestos mensuales sobre el ingreso',
    cash: 'Efectivo disponible',
    household: 'Personas en el hogar',
    reserves: 'Reservas que conserva',
    reserves_label: 'Meses de pagos que conserva en reserva',
    months: 'meses',
    automated: 'Como si la evaluación automatizada hubiera aceptado el préstamo',
    more: 'Más para las reglas del prestamista',
    note: 'Esto se queda en este navegador.',
    rules_note:
        'Nada de esto pasa a un enlace, a un registro ni a la hoja impresa. Los impuestos y las personas se piden solo para el ingreso residual de los préstamos VA.',
};

const limits = {
    front_ratio: ({ratio}: {ratio: string | null}) =>
        `relación vivienda-ingreso${ratio ? ` (máximo ${ratio})` : ''}`,
    back_ratio: ({ratio}: {ratio: string | null}) =>
        `relación deuda-ingreso${ratio ? ` (máximo ${ratio})` : ''}`,
    back_by_residual_income: 'relación deuda-ingreso, aceptada por el ingreso residual',
    cash: 'efectivo disponible',
    program: 'límite propio del programa',
    residual_income: 'ingreso residual, lo que queda para vivir',

    too_much: ({amount, monthly}: Texts<'amount'> & {monthly: boolean}) =>
        `${amount}${monthly ? ' al mes' : ''} de más`,
    left: ({amount, monthly}: Texts<'amount'> & {monthly: boolean}) =>
        `quedan ${amount}${monthly ? ' al mes' : ''}`,
    takes: ({needed, most, monthly}: Texts<'needed' | 'most'> & {monthly: boolean}) =>
        `requiere ${needed}; el máximo es ${most}${monthly ? ' al mes' : ''}`,
};

interface Step {
    price: string;
    cash: string | null;
    income: string | null;
    after_tax: string | null;
    less_debts: string | null;
}

function step({price, cash, income, after_tax, less_debts}: Step): string {
    const or_debts = less_debts ? `, o ${less_debts} menos en pagos mensuales de deudas` : '';
    const parts: string[] = [];
    if (cash) parts.push(`${cash} más en efectivo`);
    if (income) parts.push(`${income} más de ingreso al mes${after_tax ? '' : or_debts}`);
    if (after_tax) parts.push(`${after_tax} más al mes después de impuestos${or_debts}`);
    if (parts.length === 0) return `Una vivienda de ${price} no requiere nada más.`;
    return `Una vivienda de ${price} requiere ${parts.join(', y ')}.`;
}

const instead = ({rate, points}: Texts<'rate' | 'points'>) =>
    `Para un paso más bastaría una tasa de interés de ${rate} con ${points}.`;

const reach = {
    label: 'El préstamo que desea ver',
    bar: ({price, within}: Texts<'price'> & {within: boolean}) =>
        `hasta ${price}; esta vivienda ${within ? 'no lo supera' : 'lo supera'}`,
    no_price: 'ningún precio cumple',
    no_price_since: ({why}: Texts<'why'>) => `ningún precio cumple: ${why}`,
    bound_by: ({
        limits,
        no_ratio,
        past_scale,
    }: Texts<'limits'> & {no_ratio: boolean; past_scale: boolean}) =>
        `límite: ${limits}` +
        (no_ratio ? '; ninguna relación limita el ingreso' : '') +
        (past_scale ? '; más allá del final de esta escala' : ''),
    within: 'alcanza para esta vivienda',
    short: 'no alcanza para esta vivienda',
    key_price: 'precio del contrato más alto',
    key_home: ({price}: Texts<'price'>) => `esta vivienda, ${price}`,
};

const moves = {
    title: 'Si su ingreso cambia antes del cierre',
    label: 'Límites según el ingreso',
    income: 'Ingreso mensual',
    front: 'Vivienda-ingreso',
    back: 'DTI',
    at_todays_rate: 'Con la tasa de hoy',
    within_up_to: 'Dentro del límite hasta',
    as_it_stands: 'como está ahora',
    within: 'cumple',
    over: 'no cumple',
    no_rate: 'ninguna tasa',
    least: ({income, automated}: Texts<'income'> & {automated: string | null}) =>
        'Con la tasa de hoy, los límites de este préstamo requieren un ingreso mensual de al ' +
        `menos ${income}` +
        (automated ? `, o ${automated} con evaluación automatizada` : '') +
        '. Se supone que los impuestos sobre el ingreso no cambian. DTI es la relación ' +
        'deuda-ingreso.',
    unknown: ({why}: Texts<'why'>) => `No hay un límite con que comparar el ingreso: ${why}.`,
    type_income: 'Escriba su ingreso para ver esto.',
};

export const afford = {
    page: 'Lo que puede pagar',
    parts,
    means,
    limits,
    step,
    instead,
    reach,
    moves,

    title: 'Cuánto puede comprar',
    no_means: 'Escriba su ingreso o su efectivo disponible para ver qué vivienda permiten.',
    up_to: ({price, no_ratio}: Parts<'price'> & {no_ratio: boolean}) =>
        rich`Hasta ${price}${no_ratio && '; ninguna relación limita el ingreso'}`,
    at_that_price: ({
        month,
        cash,
        terms,
        estimate,
    }: Texts<'month' | 'cash' | 'terms' | 'estimate'>) =>
        `A ese precio: ${month} al mes y ${cash} de efectivo necesario. ${terms}. ${estimate}`,
    no_price: ({why, least, refused}: {why: string[]; least: string | null} & Marks<'refused'>) =>
        rich`${refused('Ningún precio cumple.')} ${why.map((one) => `${one}. `).join('')}${
            least && `A ${least}, el precio más bajo de la lista de precios, sería:`
        }`,
    binds: ({limits, why, strong}: Texts<'limits'> & {why: string | null} & Marks<'strong'>) =>
        rich`${strong('Lo que limita el precio:')} ${limits}${why && ` (${why})`}.`,
    behind: ({price, limits}: {price: string; limits: string | null}) =>
        `Sin ese límite, hasta ${price}` + (limits ? `; allí el límite es otro: ${limits}.` : '.'),
    a_step_further: ({step, strong}: Parts<'step'> & Marks<'strong'>) =>
        rich`${strong('Un paso más:')} ${step}`,
    step_refused: ({price, why}: Texts<'price' | 'why'>) =>
        `Una vivienda de ${price} no está disponible: ${why}.`,
    step_in_price: 'Aumento del precio',

    each_loan: 'Cada uno de sus préstamos en una escala',
    by_limit: 'Límite por límite',

    homes: 'Viviendas hasta ese precio',
    homes_say: 'Sin opciones.',
    no_home: 'Ninguna vivienda de la lista de precios.',
    home: ({elevation, lot, homes}: Texts<'elevation' | 'lot'> & {homes: number}) =>
        `${elevation}, lote ${lot}` + (homes > 1 ? `, y ${homes - 1} más` : ''),

    ratios: ({status, source, automated}: Texts<'status' | 'source'> & {automated: boolean}) =>
        `Límites de las relaciones${automated ? ' con evaluación automatizada' : ''} ` +
        `(${status}): ${source}.`,
    residual_income: ({status, source}: Texts<'status' | 'source'>) =>
        `Ingreso residual (${status}): ${source}.`,
};
