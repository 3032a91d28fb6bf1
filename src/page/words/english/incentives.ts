// What the builder gives on a home, and what it is used for.
import type {Texts} from '../phrase';

export const incentives = {
    title: 'Incentives from the builder',
    says:
        'How you use an incentive changes every loan at once. If one is tied to a lender, its ' +
        'terms say so. You may choose any lender.',
    not_used: 'not used',
    all_towards: ({use}: Texts<'use'>) => `all toward ${use}`,
    in_parts: 'in parts',
    towards: ({use}: Texts<'use'>) => `toward ${use}`,
    towards_of: ({name, use}: Texts<'name' | 'use'>) => `${name} toward ${use}`,
    none_used: 'not used on this home',
    given: ({amount, use}: Texts<'amount' | 'use'>) => `${amount} toward ${use}`,
    left: ({amount}: Texts<'amount'>) => `${amount} of it is not used.`,
    signed_by: ({on}: Texts<'on'>) => `Sign the contract by ${on}.`,
    closed_by: ({on}: Texts<'on'>) => `Close by ${on}.`,
    signed_and_closed_by: ({signed, closed}: Texts<'signed' | 'closed'>) =>
        `Sign the contract by ${signed} and close by ${closed}.`,
};
