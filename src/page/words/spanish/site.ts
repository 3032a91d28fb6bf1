// The lots on their map, and the plans that fit them.
import {capital} from '../phrase';
import type {Lot} from '../../answers';
import type {Texts} from '../phrase';

const states: Record<Lot['status'], string> = {
    free: 'disponible',
    held: 'reservado',
    sold: 'vendido',
};

export const site = {
    states,
    walking: 'Cargando los lotes…',
    title: 'Elija su lote y su plano',
    map_says:
        'Toque un lote para verlo. Dibujado según la lista de precios; no es un levantamiento topográfico.',
    take: 'Tomar este lote',
    left_behind: ({names}: Texts<'names'>) => `se quitaría: ${names}`,

    lots: 'Lotes',
    lots_say: ({terms}: Texts<'terms'>) =>
        `El recargo del lote es parte del precio del contrato. Un cambio se calcula con ${terms}.`,
    flood_zone: 'en zona de inundación',
    no_premium: 'sin recargo',
    premium: ({amount}: Texts<'amount'>) => `recargo: ${amount}`,
    plan_does_not_fit: 'su plano no cabe',

    plans: 'Planos y fachadas',
    plans_say: 'Lo que eligió se conserva donde esté disponible.',
    plan: ({
        style,
        square_feet,
        bedrooms,
        baths,
        price,
        note,
    }: Texts<'style' | 'square_feet' | 'bedrooms' | 'baths' | 'price' | 'note'>) =>
        `${capital(style)}, ${square_feet} pies cuadrados, ` +
        `${bedrooms} ${bedrooms === '1' ? 'dormitorio' : 'dormitorios'}, ` +
        `${baths} ${baths === '1' ? 'baño' : 'baños'}. Desde ${price}. ${note}`,
    does_not_fit: ({lot}: Texts<'lot'>) =>
        `Este plano no cabe en el lote ${lot}. Elija primero otro lote.`,
    elevations_of: ({plan}: Texts<'plan'>) => `Fachada del plano ${plan}`,
    plan_taken: ({plan, elevation}: Texts<'plan' | 'elevation'>) =>
        `Plano ${plan}, fachada ${elevation}`,
};
