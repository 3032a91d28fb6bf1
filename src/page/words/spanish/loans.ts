// The loans side by side, over the years, and what moves if the rate does.
import {rich} from '../phrase';
import type {Marks, Part, Parts, Texts} from '../phrase';

const curves = {
    spent_and_owed: {
        name: 'Pagado más lo que debe',
        says: 'Efectivo, pagos y seguros hasta la fecha, más el saldo que aún debe',
    },
    balance: {name: 'Saldo', says: 'El saldo que aún debe'},
    paid: {name: 'Pagado', says: 'Todo lo pagado hasta la fecha, con impuestos y seguros'},
};

const years = {
    title: 'A lo largo de los años',
    lines_label: 'Lo que muestran las líneas',
    curves,
    as_table: 'Mostrar como tabla',
    table: 'Cifras por año',
    end_of_year: 'Fin del año',
    year: ({year}: {year: number}) => `año ${year}`,
    shown: 'se muestra',
    larger_scale: 'En una escala mayor',
    at_closing: 'Al cierre',
    after: ({year}: {year: number}) => `Fin del año ${year}`,
    against: ({what, name}: Texts<'what' | 'name'>) =>
        `${what}: cuánto más o menos que con el préstamo que se muestra, ${name}.`,
    chart: ({title}: Texts<'title'>) => `${title}. La tabla de abajo tiene las mismas cifras.`,
};

const crossings = {
    title: 'Qué préstamo cuesta menos y cuándo',
    says:
        'Dos préstamos para la misma vivienda, comparados por el efectivo, los pagos y los ' +
        'seguros hasta la fecha, más el saldo que aún se debe.',
    against: ({first, second, faint}: Parts<'first' | 'second'> & Marks<'faint'>) =>
        rich`${first} ${faint('frente a')} ${second}`,
    cheaper: ({when, loan}: Parts<'when' | 'loan'>) => rich`${when} ${loan}`,
    same: ({when}: Parts<'when'>) => rich`${when} los dos cuestan lo mismo`,
};

const points = {
    title: 'Cuándo se recupera el costo de los puntos',
    pay_back: ({
        loan,
        rate,
        rate_without,
        cash,
        saved,
        when,
    }: Texts<'loan' | 'rate' | 'rate_without' | 'cash' | 'saved' | 'when'>) =>
        `${loan}: una tasa de ${rate} en lugar de ${rate_without} requiere ${cash} más de ` +
        `efectivo y ahorra ${saved} al mes; ${when}.`,
};

const rates = {
    title: 'Si la tasa cambia antes del cierre',
    says: ({loan, terms, estimate}: Parts<'loan' | 'terms' | 'estimate'>) =>
        rich`${loan}: aquí todas las tasas de la hoja de tasas cambian en la misma medida. Solo un bloqueo mantiene la tasa. El préstamo hoy: ${terms}. ${estimate}`,
    table: 'Pago mensual y efectivo con cada tasa',
    today: ({rate}: Texts<'rate'>) => `${rate} (hoy)`,
    lock: 'Bloqueo de la tasa',
    lock_points: 'Puntos con esta tasa',
    lock_cash: 'Cambio en el efectivo',
    days: ({days, in_hand}: {days: number; in_hand: boolean}) =>
        `${days} días${in_hand ? ' (el suyo)' : ''}`,
    ends: ({on, too_soon}: Texts<'on'> & {too_soon: boolean}) =>
        `termina el ${on}${too_soon ? ', antes del cierre' : ''}`,
    not_offered: 'no se ofrece con esta tasa',
};

type Move = {amount: Part; less: boolean} | null;

const apart = {
    title: 'Comparados con el préstamo marcado',
    shown: 'marcado arriba',
    month: (move: Move) =>
        move ? rich`${move.amount} ${move.less ? 'menos' : 'más'} al mes` : rich`el mismo pago`,
    cash: (move: Move) =>
        move
            ? rich`${move.amount} ${move.less ? 'menos' : 'más'} en efectivo`
            : rich`el mismo efectivo`,
    costs_less: ({when}: Texts<'when'>) => `cuesta menos ${when}`,
    always_less: 'siempre cuesta menos',
    never_less: 'nunca cuesta menos',
    insurance_whole: 'seguro hipotecario hasta el final',
    rises: ({highest}: Texts<'highest'>) => `la tasa puede subir a ${highest}`,
};

export const loans = {
    apart,
    title: 'Préstamos para esta vivienda',
    overview: 'El préstamo que muestra la barra',
    years_say: 'qué préstamo cuesta menos, y cuándo',
    rates_say: 'pago y efectivo con otras tasas',
    add: 'Agregar otro préstamo',
    years,
    crossings,
    points,
    rates,
};
