// Where the price book has moved on: what a buyer does without, and what it comes to then.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const way_on = {
    prices_ended: ({community, on}: Texts<'community' | 'on'>) =>
        `The prices of ${community} ended on ${on}.`,
    prices_began: ({community, on}: Texts<'community' | 'on'>) =>
        `Today's prices of ${community} began on ${on}.`,

    no_longer_sold: ({names, strong}: Parts<'names'> & Marks<'strong'>) =>
        rich`${strong('No longer sold:')} ${names}.`,
    not_available: ({names, strong}: Parts<'names'> & Marks<'strong'>) =>
        rich`${strong('No longer available:')} ${names}.`,
    to_go_on: ({changes, strong}: Parts<'changes'> & Marks<'strong'>) =>
        rich`${strong('To go on:')} ${changes}.`,

    /// Another in the place of what has gone; ids of lots are all that is known of them.
    other_plan: ({plan}: Texts<'plan'>) => `plan ${plan} instead of the earlier one`,
    other_elevation: ({elevation}: Texts<'elevation'>) =>
        `elevation ${elevation} instead of the earlier one`,
    other_lot: ({now, was}: Texts<'now' | 'was'>) => `lot ${now} instead of lot ${was}`,
    other_day: ({now, was}: Texts<'now' | 'was'>) => `prices as of ${now} instead of ${was}`,
    newest_rates: ({was}: Texts<'was'>) => `the newest rates instead of those from ${was}`,
    unknown_name: ({id}: Texts<'id'>) => `“${id}”`,

    before_this: 'Before this',
    last_seen: 'Last seen',
    if_you_go_on: 'If you go on',
    figures_of: ({
        loan,
        terms,
        estimate,
        seen,
    }: Texts<'loan' | 'terms' | 'estimate'> & {seen: string | null}) =>
        `${loan}: ${terms}. ${estimate}${seen ? ` Last seen: as of ${seen}.` : ''}`,
    figures_refused: ({why, estimate, seen}: Texts<'why' | 'estimate'> & {seen: string | null}) =>
        `${why}. ${estimate}${seen ? ` Last seen: as of ${seen}.` : ''}`,

    change_and_go_on: 'Make the change and go on',
    leave_out: ({count}: {count: number}) =>
        count > 1 ? 'Leave them out and go on' : 'Leave it out and go on',
    left_out: ({names}: Texts<'names'>) => `Left out: ${names}`,
};
