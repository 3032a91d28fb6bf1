// The price book has moved on: what a buyer would have to do without, what the home comes to then,
// and one button to go on.
import {seen_of} from '#side/keeping';

import type {Tour} from '../answers';
import {brief, closing_amount, date, dollars} from '../figures';
import type {Seen} from '../kept';
import {say} from '../language';
import type {Loss, Mending} from '../mending';
import {loan_name} from '../state/books';
import {go_on, undo} from '../state/changing';
import {buyer, known, tour} from '../state/signals';
import {strong} from './marks';
import {estimate_words, terms_words} from './terms';

import './way_on.css';

/// The name of an option or incentive: as it was last seen, or as the price book has it now. An id
/// that nothing here knows a name of is put in words.
function name_of(id: string, seen: Seen | null, answer: Tour): string {
    const options = answer.areas.flatMap((area) => area.options);
    const now = [...options, ...answer.incentives].find((one) => one.id === id)?.name;
    return seen?.names[id] ?? now ?? say.way_on.unknown_name({id: id.replace(/[-:]/g, ' ')});
}

function words_of(loss: Loss, seen: Seen | null, answer: Tour): string {
    if (!loss.left_out) return loss.instead;
    const name = brief(name_of(loss.left_out, seen, answer));
    return loss.why ? say.common.because({name, why: loss.why}) : name;
}

/// Where the days are what has gone: which prices ended or have not begun.
function book_words(): string {
    const book = known.value?.price_books.find((one) => one.id === buyer.value?.inquiry.price_book);
    const as_of: string = buyer.value?.inquiry.as_of ?? '';
    if (!book) return '';
    if (as_of > book.expires) {
        return say.way_on.prices_ended({community: book.community, on: date(book.expires)});
    }
    return as_of < book.effective
        ? say.way_on.prices_began({community: book.community, on: date(book.effective)})
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

/// What the totals hang on.
function figures_words({heading, scenario}: Tour, since?: string): string {
    const both = {estimate: estimate_words(heading), seen: since ? date(since) : null};
    if (!scenario.available) {
        const why = scenario.refusals.map((one) => one.words).join('; ');
        return say.way_on.figures_refused({why, ...both});
    }
    const {terms} = scenario;
    return say.way_on.figures_of({
        loan: brief(loan_name(terms.name)),
        terms: terms_words(terms),
        ...both,
    });
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
    const row = (
        name: string,
        was: string | null | undefined,
        now: string | null,
        written: (amount: string) => string = dollars,
    ) => (
        <tr>
            <th scope="row">{name}</th>
            {before && <td>{was ? written(was) : '–'}</td>}
            <td>{now ? written(now) : say.common.not_to_be_had}</td>
        </tr>
    );
    return (
        <>
            <table class="before-after">
                <thead>
                    <tr>
                        <td />
                        {before && <th scope="col">{when}</th>}
                        <th scope="col">{say.way_on.if_you_go_on}</th>
                    </tr>
                </thead>
                <tbody>
                    {row(say.common.contract_price, before?.price, after.price)}
                    {row(say.common.a_month, before?.month, after.month)}
                    {row(say.common.cash_to_close, before?.closing, after.closing, closing_amount)}
                </tbody>
            </table>
            <p class="facts">{figures_words(answer, since)}</p>
        </>
    );
}

/// Each once: what was chosen may be on the wish list too.
function once(losses: Loss[]): Loss[] {
    const first = (loss: Loss) =>
        losses.find((one) => one.left_out === loss.left_out && one.why === loss.why);
    return losses.filter((loss) => !loss.left_out || first(loss) === loss);
}

/// What a home has to do without, by name, each once.
export function losses_words(losses: Loss[], answer: Tour, seen: Seen | null = null): string {
    return once(losses)
        .map((loss) => words_of(loss, seen, answer))
        .join('; ');
}

export function WayOn({found}: {found: Mending}) {
    const one = buyer.value!;
    const seen = seen_of(one.key);
    const {answer, losses} = found;
    const told = (some: Loss[]) => losses_words(some, answer, seen);
    const sold = losses.filter((loss) => loss.left_out && !loss.why);
    const barred = losses.filter((loss) => loss.left_out && loss.why);
    const changed = losses.filter((loss) => !loss.left_out);
    const now = tour.value;
    const button =
        changed.length > 0
            ? say.way_on.change_and_go_on
            : say.way_on.leave_out({count: losses.length});
    return (
        <div class="message bad way-on" role="alert">
            {book_words() && <p>{book_words()}</p>}
            {sold.length > 0 && <p>{say.way_on.no_longer_sold({names: told(sold), strong})}</p>}
            {barred.length > 0 && <p>{say.way_on.not_available({names: told(barred), strong})}</p>}
            {changed.length > 0 && <p>{say.way_on.to_go_on({changes: told(changed), strong})}</p>}
            <Both
                before={now ? totals_of(now) : seen}
                since={now ? undefined : seen?.as_of}
                when={now ? say.way_on.before_this : say.way_on.last_seen}
                answer={answer}
            />
            <p class="way-on-steps">
                <button
                    class="main-button"
                    onClick={() =>
                        go_on(
                            losses.some((loss) => loss.left_out)
                                ? say.way_on.left_out({names: told([...sold, ...barred])})
                                : told(changed),
                        )
                    }
                >
                    {button}
                </button>
                {one.past.length > 0 && (
                    <button class="quiet" onClick={undo}>
                        {say.common.one_step_back}
                    </button>
                )}
            </p>
        </div>
    );
}
