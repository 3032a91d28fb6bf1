// An option: what a touch on it adds and changes, its number, its budget, what is known of it.
import {rich} from '../phrase';
import type {Option} from '../../answers';
import type {Unit} from '../english/codes';
import type {Parts, Texts} from '../phrase';

/// As they stand after "trabajo de".
const trades: Record<Option['work'][number], string> = {
    gas: 'gas',
    wiring: 'electricidad',
    plumbing: 'plomería',
    structure: 'estructura',
};

const per: Record<Unit, string> = {
    each: ' por unidad',
    sq_ft: ' por pie cuadrado',
    linear_ft: ' por pie lineal',
};

export const options = {
    trades,
    taking_it_out: 'si se quita:',
    rate_step: 'también cambia una tasa',
    cash_needed: ({amount}: Parts<'amount'>) => rich`${amount} de efectivo necesario`,
    more_of: ({name}: Texts<'name'>) => `Más sobre ${name}`,
    none_of_it: 'ninguno',
    takes_out: ({names}: Texts<'names'>) => `también se quita: ${names}`,
    brings_along: ({names}: Texts<'names'>) => `también se agrega: ${names}`,
    takes_the_place: ({names}: Texts<'names'>) => `reemplaza: ${names}`,
    included: 'incluido',
    comes_in: ({package_name}: Texts<'package_name'>) => `parte de ${package_name}`,
    without: 'Sin esta opción',

    fewer: ({name}: Texts<'name'>) => `Menos: ${name}`,
    more: ({name}: Texts<'name'>) => `Más: ${name}`,
    how_many: ({name}: Texts<'name'>) => `${name}, cantidad`,
    limits: ({unit, limits}: Texts<'unit' | 'limits'>) => `${unit} ${limits}`,

    allowance: ({budget}: Texts<'budget'>) =>
        `El precio incluye ${budget} para esto. Usted paga lo que pase de esa cantidad.`,
    to_spend: 'Usted piensa gastar',
    to_spend_on: ({name}: Texts<'name'>) => `Usted piensa gastar en ${name}`,
    within_allowance: ({name}: Texts<'name'>) => `${name}: dentro de la asignación`,

    counted: ({count, unit}: Texts<'count'> & {unit: string | null}) =>
        unit ? `${count} ${unit}` : `${count} en total`,
    agreed: 'ya está en el contrato',
    choose_before: ({stage}: Texts<'stage'>) =>
        `decidir antes de esta etapa: ${stage.toLowerCase()}`,
    work: ({trades}: Texts<'trades'>) =>
        `trabajo de ${trades}: requiere permiso y un profesional con licencia`,
    brings: ({parts}: Texts<'parts'>) => `Viene con: ${parts}`,
    later: ({estimate, note}: Texts<'estimate' | 'note'>) =>
        `Más adelante, después del cierre: unos ${estimate}. ${note}`,
    later_each: ({estimate, unit, note}: Texts<'estimate' | 'note'> & {unit: Unit}) =>
        `Más adelante, después del cierre: unos ${estimate}${per[unit]}. ${note}`,

    taken_out: ({name}: Texts<'name'>) => `${name}: se quitó`,
    and_with_it: ({names}: Texts<'names'>) => `también se quitó: ${names}`,
    together_with: ({names}: Texts<'names'>) => `también se agregó: ${names}`,
    instead_of: ({names}: Texts<'names'>) => `se reemplazó: ${names}`,
    left_behind: ({names}: Texts<'names'>) => `se quitó: ${names}`,
    all_goes_along: 'se conserva todo lo que eligió',
};
