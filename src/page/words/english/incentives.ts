// What the builder gives on a home, and what it is used for.
import type {Texts} from '../phrase';

export const incentives = {
    title: 'What the builder gives',
    says:
        'What it is used for changes every way to pay at once. Where one is tied to a lender, its ' +
        'terms say so; you may choose any lender.',
    not_used: 'not used',
    all_towards: ({use}: Texts<'use'>) => `all towards ${use}`,
    in_parts: 'in parts',
    towards: ({use}: Texts<'use'>) => `towards ${use}`,
    towards_of: ({name, use}: Texts<'name' | 'use'>) => `${name} towards ${use}`,
    left: ({amount}: Texts<'amount'>) => `${amount} of it is not used.`,
    signed_by: ({on}: Texts<'on'>) => `To be signed by ${on}.`,
    closed_by: ({on}: Texts<'on'>) => `To be closed by ${on}.`,
    signed_and_closed_by: ({signed, closed}: Texts<'signed' | 'closed'>) =>
        `To be signed by ${signed}, closed by ${closed}.`,
};
