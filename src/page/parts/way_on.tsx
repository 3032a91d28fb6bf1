// The price book has moved on: what a buyer would have to do without, what the home comes to then,
// and one button to go on.
import type {Tour} from '../answers';
import {brief, date, dollars} from '../figures';
import {seen_of} from '../keeping';
import type {Seen} from '../keeping';
import type {Loss, Mending} from '../mending';
import {buyer, go_on, known, tour, undo} from '../store';
import {estimate_words, terms_words} from './terms';

/// The name of an option or incentive: as it was last seen, or as the price book has it now. An id
/// that nothing here knows a name of is put in words.
function name_of(id: string, seen: Seen | null, answer: Tour): string {
    const options = answer.areas.flatMap((area) => area.options);
    const now = [...options, ...answer.incentives].find((one) => one.id === id)?.name;
    return seen?.names[id] ?? now ?? `“${id.replace(/[-:]/g, ' ')}”`;
}

function words_of(loss: Loss, seen: Seen | null, answer: Tour): string {
    if (!loss.left_out) return `${loss.now} in place of ${loss.was}`;
    const name = brief(name_of(loss.left_out, seen, answer));
    return loss.why ? `${name} (${loss.why})` : name;
}

/// Where the days are what has gone: which prices ended or have not begun.
function book_words(): string {
    const book = known.value?.price_books.find((one) => one.id === buyer.value?.inquiry.price_book);
    const as_of: string = buyer.value?.inquiry.as_of ?? '';
    if (!book) return '';
    if (as_of > book.expires) {
        return `The prices of ${book.community} ended on ${date(book.expires)}.`;
    }
    return as_of < book.effective
        ? `The prices of ${book.community} in force now began on ${date(book.effective)}.`
        : '';
}

interface Totals {
    price: string;
    month: string | null;
    closing: string | null;
}

function totals_of({contract_price: price, scenario}: Tour): Totals {
    const month = scenario.available ? scenario.monthly.total : null;
    return {price, month, closing: scenario.available ? scenario.cash.to_close : null};
}

/// The totals of before, as they were last on the screen, beside those without what has gone.
function Both({
    before,
    when,
    since,
    answer,
}: {
    before: Totals | null;
    when: string;
    since?: string;
    answer: Tour;
}) {
    const after = totals_of(answer);
    const row = (name: string, was: string | null | undefined, now: string | null) => (
        <tr>
            <th scope="row">{name}</th>
            {before && <td>{was ? dollars(was) : '–'}</td>}
            <td>{now ? dollars(now) : 'not to be had'}</td>
        </tr>
    );
    return (
        <>
            <table class="before-after">
                <thead>
                    <tr>
                        <td />
                        {before && <th scope="col">{when}</th>}
                        <th scope="col">If you go on</th>
                    </tr>
                </thead>
                <tbody>
                    {row('Contract price', before?.price, after.price)}
                    {row('A month', before?.month, after.month)}
                    {row('Cash to close', before?.closing, after.closing)}
                </tbody>
            </table>
            <p class="facts">
                {answer.scenario.available
                    ? `${brief(answer.scenario.terms.name)}: ${terms_words(answer.scenario.terms)}. `
                    : `${answer.scenario.refusals.map((one) => one.words).join('; ')}. `}
                {estimate_words(answer.heading)}
                {since && ` Last seen: as of ${date(since)}.`}
            </p>
        </>
    );
}

/// Each once: what was chosen may be on the wish list too.
function once(losses: Loss[]): Loss[] {
    const first = (loss: Loss) =>
        losses.find((one) => one.left_out === loss.left_out && one.why === loss.why);
    return losses.filter((loss) => !loss.left_out || first(loss) === loss);
}

export function WayOn({found}: {found: Mending}) {
    const one = buyer.value!;
    const seen = seen_of(one.key);
    const {answer, losses} = found;
    const say = (some: Loss[]) =>
        once(some)
            .map((loss) => words_of(loss, seen, answer))
            .join('; ');
    const sold = losses.filter((loss) => loss.left_out && !loss.why);
    const barred = losses.filter((loss) => loss.left_out && loss.why);
    const changed = losses.filter((loss) => !loss.left_out);
    const now = tour.value;
    const button =
        changed.length > 0
            ? 'Change that and go on'
            : losses.length > 1
              ? 'Leave them out and go on'
              : 'Leave it out and go on';
    return (
        <div class="message bad way-on" role="alert">
            {book_words() && <p>{book_words()}</p>}
            {sold.length > 0 && (
                <p>
                    <strong>No longer sold:</strong> {say(sold)}.
                </p>
            )}
            {barred.length > 0 && (
                <p>
                    <strong>Not to be had any more:</strong> {say(barred)}.
                </p>
            )}
            {changed.length > 0 && (
                <p>
                    <strong>To go on:</strong> {say(changed)}.
                </p>
            )}
            <Both
                before={now ? totals_of(now) : seen}
                since={now ? undefined : seen?.as_of}
                when={now ? 'Before this' : 'Last seen'}
                answer={answer}
            />
            <p class="way-on-steps">
                <button
                    class="main-button"
                    onClick={() =>
                        go_on(
                            losses.some((loss) => loss.left_out)
                                ? `Left out: ${say([...sold, ...barred])}`
                                : say(changed),
                        )
                    }
                >
                    {button}
                </button>
                {one.past.length > 0 && (
                    <button class="quiet" onClick={undo}>
                        One step back
                    </button>
                )}
            </p>
        </div>
    );
}
