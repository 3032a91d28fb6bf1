// What came back from home: as it was sent, as they changed it, as of today; what went and came; and a
// buyer of its own for it.
import type {AreaInShort, Tour} from '../answers';
import {brief, dollars, short_date} from '../figures';
import {say} from '../language';
import {from_home, open_beside} from '../state/from_home';
import type {FromHome as Came} from '../state/from_home';
import {Dialog} from './dialog';
import {terms_words} from './terms';
import {losses_words} from './way_on';

import './from_home.css';

function chosen_in(answer: Tour): Map<string, string> {
    const picks = answer.all_areas.flatMap((area: AreaInShort) => area.chosen);
    return new Map(
        picks.map(({option, name, form}) => [
            `${option}:${form}`,
            form ? say.common.with_form({name: brief(name), form: brief(form)}) : brief(name),
        ]),
    );
}

/// Names of what one home has and the other has not.
function beyond(one: Tour, other: Tour): string {
    const there = chosen_in(other);
    return [...chosen_in(one)].flatMap(([key, name]) => (there.has(key) ? [] : [name])).join('; ');
}

function Figures({came}: {came: Came}) {
    const words = say.from_home;
    const all: [string, Tour][] = [
        [words.as_sent({on: short_date(came.sent.heading.as_of)}), came.sent],
        [words.as_changed, came.theirs.answer],
    ];
    if (came.today)
        all.push([
            words.as_of_today({on: short_date(came.today.answer.heading.as_of)}),
            came.today.answer,
        ]);
    const row = (name: string, amount: (one: Tour) => string) => (
        <tr>
            <th scope="row">{name}</th>
            {all.map(([head, one]) => (
                <td key={head}>{amount(one)}</td>
            ))}
        </tr>
    );
    const of_loan = (one: Tour, amount: () => string) =>
        one.scenario.available ? dollars(amount()) : say.common.not_to_be_had;
    return (
        <div class="scroll">
            <table class="came-back">
                <thead>
                    <tr>
                        <td />
                        {all.map(([head]) => (
                            <th key={head} scope="col">
                                {head}
                            </th>
                        ))}
                    </tr>
                </thead>
                <tbody>
                    {row(say.common.contract_price, (one) => dollars(one.contract_price))}
                    {row(say.common.a_month, (one) =>
                        of_loan(one, () => one.scenario.monthly!.total),
                    )}
                    {row(say.common.all_cash_needed, (one) =>
                        of_loan(one, () => one.scenario.cash!.needed),
                    )}
                </tbody>
            </table>
        </div>
    );
}

export function FromHome() {
    const came = from_home.value;
    if (!came) return null;
    const words = say.from_home;
    const last = came.today ?? came.theirs;
    const done = () => {
        from_home.value = null;
    };
    const losses = [...came.theirs.losses, ...(came.today?.losses ?? [])];
    const added = beyond(last.answer, came.sent);
    const gone = beyond(came.sent, last.answer);
    const {scenario, heading} = last.answer;
    return (
        <Dialog title={words.title} done={done}>
            <Figures came={came} />
            {scenario.available && (
                <p class="facts">
                    {say.terms.beside({
                        terms: terms_words(scenario.terms),
                        estimate: say.terms.estimate({
                            as_of: short_date(heading.as_of),
                            rates: short_date(heading.rates_date),
                        }),
                    })}
                </p>
            )}
            {added && <p>{words.added({names: added})}</p>}
            {gone && <p>{words.gone({names: gone})}</p>}
            {losses.length > 0 && (
                <p class="refused">{words.not_sold({names: losses_words(losses, last.answer)})}</p>
            )}
            <button
                class="main-button"
                onClick={() => {
                    open_beside(last);
                    done();
                }}
            >
                {words.open}
            </button>
        </Dialog>
    );
}
