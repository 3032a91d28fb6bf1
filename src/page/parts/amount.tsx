// A figure as people read it, with the engine's own text beside it for whoever checks it.
import {dollars} from '../figures';

/// `write` shows it, to the dollar perhaps; `data-exact` holds it as the engine told it.
export function Amount({
    of: amount,
    write = dollars,
    figure,
}: {
    of: string;
    write?: (amount: string) => string;
    figure?: string; ///< which member of the answer it is
}) {
    return (
        <span class="amount" data-exact={amount} data-figure={figure}>
            {write(amount)}
        </span>
    );
}
