// The lots along the street, and the plans that fit them.
import {capital} from '../phrase';
import type {Lot} from '../../answers';
import type {Texts} from '../phrase';

const states: Record<Lot['status'], string> = {free: 'free', held: 'held', sold: 'sold'};

export const site = {
    states,
    walking: 'Walking the street…',
    title: 'Where it stands, and which home',
    street: ({lots}: Texts<'lots'>) => `Lots ${lots}; each is listed below`,
    street_says:
        'Widths and depths behind the house as in the price book, in the order of its list; not a ' +
        'survey.',
    too_small: 'too small',
    left_behind: ({names}: Texts<'names'>) => `would be left behind: ${names}`,

    lots: 'Lots',
    lots_say: ({terms}: Texts<'terms'>) =>
        'The premium is part of the contract price. What moving there changes is figured with ' +
        `${terms}.`,
    flood_zone: 'in the flood zone',
    no_premium: 'no premium',
    premium: ({amount}: Texts<'amount'>) => `premium ${amount}`,
    plan_does_not_fit: 'your plan does not fit',

    plans: 'Plans and elevations',
    plans_say: 'What you have chosen goes along where it still applies.',
    plan: ({
        style,
        square_feet,
        bedrooms,
        baths,
        price,
        note,
    }: Texts<'style' | 'square_feet' | 'bedrooms' | 'baths' | 'price' | 'note'>) =>
        `${capital(style)}, ${square_feet} sq ft, ${bedrooms} bedrooms, ${baths} baths. ` +
        `From ${price}. ${note}`,
    does_not_fit: ({lot}: Texts<'lot'>) => `Does not fit lot ${lot}: choose another lot first.`,
    elevations_of: ({plan}: Texts<'plan'>) => `Elevation of the ${plan}`,
    plan_taken: ({plan, elevation}: Texts<'plan' | 'elevation'>) =>
        `Plan ${plan}, elevation ${elevation}`,
};
