// The tour: an area of the home at a time.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const tour = {
    areas: 'Areas of the home',
    areas_short: 'Areas',
    chosen_here: ({price}: Texts<'price'>) => `you chose something here: ${price}`,

    all_chosen: 'What you chose',
    options_come_to: ({price}: Texts<'price'>) => `Options: ${price}`,
    take_all_out: 'Take it all out',
    all_taken_out: 'All options: removed',
    still_open: 'Still to decide',
    decide_before: ({stage}: Texts<'stage'>) => `Before this stage: ${stage.toLowerCase()}`,
    decide_any_time: 'At any time',

    floor_plan: 'Floor plan',
    floors: 'Floors',
    plan_says: 'Touch a room to see what you can choose there.',
    rooms_listed: 'Rooms and sizes',
    drawing: 'Drawing the home…',

    find: 'Find an option',
    find_example: 'deck, quartz, outlet…',
    found: ({count}: {count: number}) =>
        count === 0
            ? 'Nothing by these words. Try one word, or a shorter one.'
            : count === 1
              ? '1 option'
              : `${count} options`,

    home_line: ({
        plan,
        elevation,
        lot,
        stage,
    }: Parts<'plan' | 'elevation' | 'lot'> & {stage: string | null}) =>
        rich`${plan}, elevation ${elevation}, lot ${lot}${stage && `. Construction so far: ${stage}`}`,
    /// Above the two figures of every row.
    price_column: 'price',
    month_column: 'a month',
    next: ({area}: Texts<'area'>) => `Next: ${area}`,

    extra_count: ({count}: {count: number}) => `${count} at extra cost`,
    comes_with: ({plan}: Parts<'plan'>) => rich`Included in the ${plan}`,
    packages: 'Packages',
    upgrades: 'Upgrades',
    choices: 'Choices',
    allowances: 'Allowances',

    requests: 'Requests outside the price book',
    request: ({estimate}: {estimate: string | null}) =>
        `to be confirmed, not in the price${estimate ? `; estimated at ${estimate}` : ''}`,
    barred: 'Not available here',
    model: ({model}: Texts<'model'>) => `What you see in the ${model} model home`,
    model_extra: ({standing, price}: Texts<'standing' | 'price'>) => `${standing}, ${price}`,
    model_partly: ({level}: Texts<'level'>) => `yours: ${level}`,

    welcome: ({strong}: Marks<'strong'>) =>
        rich`${strong('An example, already filled in:')} touch any line.`,
    understood: 'Got it',

    empty: 'Nothing to walk through yet',
    empty_says:
        'The price book lists no included features and no options. The home is its plan, its ' +
        'elevation and its lot. You choose those under Site.',
};
