// The terms that stand beside every payment, and which way the cash goes at closing.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const terms = {
    points: ({points}: Texts<'points'>) => `${points} ${points === '1' ? 'punto' : 'puntos'}`,
    points_credit: ({points}: Texts<'points'>) =>
        `crédito del prestamista de ${points} ${points === '1' ? 'punto' : 'puntos'}`,
    points_back: ({points}: Texts<'points'>) => `crédito ${points}`,

    change: ({
        holds,
        every_months,
        highest,
        worst,
    }: Texts<'holds' | 'highest'> & {
        every_months: number;
        worst: {payment: string; from: number} | null;
    }) =>
        `la tasa es fija por ${holds} y luego puede cambiar cada ${every_months} meses, hasta ` +
        highest +
        (worst
            ? ` (en el peor caso, ${worst.payment} de capital e intereses desde el pago ${worst.from})`
            : ''),
    line: ({
        rate,
        points,
        apr,
        term,
        down,
        down_percent,
        extra,
        change,
    }: Texts<'rate' | 'points' | 'term' | 'down' | 'down_percent'> & {
        apr: string | null;
        extra: string | null;
        change: string | null;
    }) =>
        `${rate} de tasa de interés, ${points}, ${apr ? `APR ${apr}` : 'APR no hallada'}, ` +
        `${term}, ${down} de pago inicial (${down_percent})` +
        (extra ? `, ${extra} de capital adicional al mes por decisión propia` : '') +
        (change ? `; ${change}` : ''),
    at_a_glance: ({
        rate,
        highest,
        apr,
        term,
        down,
        down_percent,
        extra,
    }: Texts<'rate' | 'term' | 'down' | 'down_percent'> &
        Record<'highest' | 'apr' | 'extra', string | null>) =>
        `${rate}${highest ? ` al principio, hasta ${highest}` : ''}, ` +
        `${apr ? `APR ${apr}` : 'APR no hallada'}, ${term}, ${down} inicial (${down_percent})` +
        (extra ? `, ${extra} adicional al mes por decisión propia` : ''),
    in_short: ({
        loan,
        rate,
        highest,
        apr,
        term,
        down,
        down_percent,
        as_of,
        roomy,
    }: Texts<'loan' | 'rate' | 'term' | 'down' | 'down_percent' | 'as_of'> & {
        highest: string | null;
    } & Parts<'apr'> &
        Marks<'roomy'>) =>
        rich`${roomy(`${loan}: `)}${rate}${highest && ` al principio, hasta ${highest}`}, ${apr}, ${
            term
        }, ${down} inicial (${down_percent}), con impuestos y seguro. Estimación, ${as_of}; no es ${roomy(
            'aprobación ni ',
        )}oferta${roomy(' de préstamo')}`,
    estimate: ({as_of, rates}: Texts<'as_of' | 'rates'>) =>
        `Estimación al ${as_of}, con tasas del ${rates}. No es aprobación ni oferta de ` +
        'préstamo.',
    beside: ({terms, estimate}: Texts<'terms' | 'estimate'>) => `${terms}. ${estimate}`,
    of_loan: ({loan, terms, estimate}: Texts<'loan' | 'terms' | 'estimate'>) =>
        `${loan}: ${terms}. ${estimate}`,

    to_close: ({amount}: Texts<'amount'>) => `${amount} para el cierre`,
    back_at_closing: ({amount}: Texts<'amount'>) => `recibe ${amount} en el cierre`,
    back: ({amount}: Texts<'amount'>) => `recibe ${amount}`,

    source: ({source}: Texts<'source'>) => `Fuente: ${source}`,
};
