// The tour: an area of the home at a time.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const tour = {
    areas: 'Areas of the home',
    something_chosen: 'something is chosen here',
    home_line: ({
        plan,
        elevation,
        lot,
        stage,
    }: Parts<'plan' | 'elevation' | 'lot'> & {stage: string | null}) =>
        rich`${plan}, elevation ${elevation}, lot ${lot}${stage && `. Built as far as: ${stage}`}`,
    next: ({area}: Texts<'area'>) => `Next: ${area}`,

    comes_with: ({plan}: Parts<'plan'>) => rich`Comes with the ${plan}`,
    packages: 'Packages',
    packages_say: 'One price for several things.',
    upgrades: 'Upgrades',
    upgrades_say: 'Touch to put in or take out. The figures are what that changes.',
    choices: 'Choices at no cost',
    choices_say: 'Pick any one of them.',
    allowances: 'Allowances',
    allowances_say: 'A budget that is in the price.',

    requests: 'Asked for outside the price book',
    request: ({estimate}: {estimate: string | null}) =>
        `to be confirmed, not in the price${estimate ? `; estimated at ${estimate}` : ''}`,
    barred: 'Not to be had here',
    model: ({model}: Texts<'model'>) => `What you see in the furnished ${model}`,
    model_extra: ({standing, price}: Texts<'standing' | 'price'>) => `${standing}, ${price}`,
    model_partly: ({level}: Texts<'level'>) => `yours: ${level}`,

    welcome: ({strong}: Marks<'strong'>) =>
        rich`${strong('This is an example, already filled in.')} Walk through its rooms and touch any line: price, month and cash at the foot of the page follow at once. Undo takes every touch back.`,
    understood: 'Understood',

    empty: 'Nothing to walk through',
    empty_says:
        'The price book lists no included features and no options. The home is its plan, its ' +
        'elevation and its lot: see Site.',
};
