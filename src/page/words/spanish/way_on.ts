// Where the price book has moved on: what a buyer does without, and what it comes to then.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const way_on = {
    prices_ended: ({community, on}: Texts<'community' | 'on'>) =>
        `Los precios de ${community} terminaron el ${on}.`,
    prices_began: ({community, on}: Texts<'community' | 'on'>) =>
        `Los precios actuales de ${community} comenzaron el ${on}.`,

    no_longer_sold: ({names, strong}: Parts<'names'> & Marks<'strong'>) =>
        rich`${strong('Ya no se vende:')} ${names}.`,
    not_available: ({names, strong}: Parts<'names'> & Marks<'strong'>) =>
        rich`${strong('Ya no disponible:')} ${names}.`,
    to_go_on: ({changes, strong}: Parts<'changes'> & Marks<'strong'>) =>
        rich`${strong('Para continuar:')} ${changes}.`,

    other_plan: ({plan}: Texts<'plan'>) => `plano ${plan} en lugar del anterior`,
    other_elevation: ({elevation}: Texts<'elevation'>) =>
        `fachada ${elevation} en lugar de la anterior`,
    other_lot: ({now, was}: Texts<'now' | 'was'>) => `lote ${now} en lugar del lote ${was}`,
    other_day: ({now, was}: Texts<'now' | 'was'>) => `precios al ${now} en lugar del ${was}`,
    newest_rates: ({was}: Texts<'was'>) => `las tasas más recientes en lugar de las del ${was}`,
    unknown_name: ({id}: Texts<'id'>) => `“${id}”`,

    before_this: 'Antes de esto',
    last_seen: 'Última vez',
    if_you_go_on: 'Si continúa',
    figures_of: ({
        loan,
        terms,
        estimate,
        seen,
    }: Texts<'loan' | 'terms' | 'estimate'> & {seen: string | null}) =>
        `${loan}: ${terms}. ${estimate}${seen ? ` Última vez: cifras al ${seen}.` : ''}`,
    figures_refused: ({why, estimate, seen}: Texts<'why' | 'estimate'> & {seen: string | null}) =>
        `${why}. ${estimate}${seen ? ` Última vez: cifras al ${seen}.` : ''}`,

    change_and_go_on: 'Hacer el cambio y continuar',
    leave_out: ({count}: {count: number}) =>
        count > 1 ? 'Quitar todo esto y continuar' : 'Quitar esto y continuar',
    left_out: ({names}: Texts<'names'>) => `Se quitó: ${names}`,
};
