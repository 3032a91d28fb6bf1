// The lots on their map, and the plans that fit them.
import {capital} from '../phrase';
import type {Lot} from '../../answers';
import type {Texts} from '../phrase';

const states: Record<Lot['status'], string> = {
    free: 'available',
    held: 'reserved',
    sold: 'sold',
};

export const site = {
    states,
    walking: 'Loading the lots…',
    title: 'Choose your lot and your plan',
    map_says: 'Touch a lot to see it. Drawn from the price book, not a survey.',
    take: 'Take this lot',
    left_behind: ({names}: Texts<'names'>) => `would be removed: ${names}`,

    lots: 'Lots',
    lots_say: ({terms}: Texts<'terms'>) =>
        `The lot premium is part of the contract price. A move is worked out with ${terms}.`,
    flood_zone: 'in the flood zone',
    no_premium: 'no premium',
    premium: ({amount}: Texts<'amount'>) => `premium ${amount}`,
    plan_does_not_fit: 'your plan does not fit',

    plans: 'Plans and elevations',
    plans_say: 'What you chose goes with you wherever it is available.',
    plan: ({
        style,
        square_feet,
        bedrooms,
        baths,
        price,
        note,
    }: Texts<'style' | 'square_feet' | 'bedrooms' | 'baths' | 'price' | 'note'>) =>
        `${capital(style)}, ${square_feet} sq ft, ` +
        `${bedrooms} ${bedrooms === '1' ? 'bedroom' : 'bedrooms'}, ` +
        `${baths} ${baths === '1' ? 'bath' : 'baths'}. From ${price}. ${note}`,
    does_not_fit: ({lot}: Texts<'lot'>) =>
        `This plan does not fit lot ${lot}. Choose another lot first.`,
    elevations_of: ({plan}: Texts<'plan'>) => `Elevation of the ${plan}`,
    plan_taken: ({plan, elevation}: Texts<'plan' | 'elevation'>) =>
        `Plan ${plan}, elevation ${elevation}`,
};
