// The tour: an area of the home at a time.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const tour = {
    areas: 'Areas of the home',
    something_chosen: 'you chose something here',
    home_line: ({
        plan,
        elevation,
        lot,
        stage,
    }: Parts<'plan' | 'elevation' | 'lot'> & {stage: string | null}) =>
        rich`${plan}, elevation ${elevation}, lot ${lot}${stage && `. Construction so far: ${stage}`}`,
    next: ({area}: Texts<'area'>) => `Next: ${area}`,

    comes_with: ({plan}: Parts<'plan'>) => rich`Included in the ${plan}`,
    packages: 'Packages',
    packages_say: 'Several things for one price.',
    upgrades: 'Upgrades',
    upgrades_say: 'Touch an upgrade to add or remove it. The figures show what that changes.',
    choices: 'Choices at no cost',
    choices_say: 'Pick any one.',
    allowances: 'Allowances',
    allowances_say: 'The price already includes a budget for these.',

    requests: 'Requests outside the price book',
    request: ({estimate}: {estimate: string | null}) =>
        `to be confirmed, not in the price${estimate ? `; estimated at ${estimate}` : ''}`,
    barred: 'Not available here',
    model: ({model}: Texts<'model'>) => `What you see in the ${model} model home`,
    model_extra: ({standing, price}: Texts<'standing' | 'price'>) => `${standing}, ${price}`,
    model_partly: ({level}: Texts<'level'>) => `yours: ${level}`,

    welcome: ({strong}: Marks<'strong'>) =>
        rich`${strong('This is an example that is already filled in.')} Walk through its rooms and touch any line. The price, the monthly payment and the cash at the bottom of the page change right away. Undo takes back every touch.`,
    understood: 'Got it',

    empty: 'Nothing to walk through yet',
    empty_says:
        'The price book lists no included features and no options. The home is its plan, its ' +
        'elevation and its lot. You choose those under Site.',
};
