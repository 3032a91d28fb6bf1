// Which loan the bar's figures are under, all its terms, and the step forward that a small bar lacks.
import {brief} from '../figures';
import {say} from '../language';
import {open_part, sought} from '../opened';
import {go_to_view} from '../place';
import {shown_name} from '../loan_names';
import {redo, take_in_hand} from '../state/changing';
import {buyer, tour} from '../state/signals';
import {Dialog} from './dialog';
import {loan_part} from './loan_card';
import {Explained} from './term';
import {estimate_words, terms_words} from './terms';

/// To the fields of the loan in hand.
function change_it(name: string): void {
    const all: {name: string}[] = buyer.value!.inquiry.scenarios ?? [];
    const part = loan_part(all.findIndex((each) => each.name === name));
    open_part('loans', part);
    go_to_view('loans');
    sought.value = part;
}

export function LoanInHand({done}: {done: () => void}) {
    const one = buyer.value!;
    const {heading, scenario} = tour.value!;
    return (
        <Dialog title={say.frame.in_hand} done={done}>
            <div class="rows" role="radiogroup" aria-label={say.frame.in_hand}>
                {(one.inquiry.scenarios ?? []).map((each: any) => (
                    <label key={each.name} class="row-button loan-choice">
                        <input
                            type="radio"
                            name="loan-in-hand"
                            checked={each.name === scenario.terms.name}
                            onClick={() => {
                                if (each.name !== scenario.terms.name) take_in_hand(each.name);
                                done();
                            }}
                        />
                        <span>{brief(shown_name(each.name, each))}</span>
                    </label>
                ))}
            </div>
            <p class="note">
                <Explained
                    text={say.terms.of_loan({
                        loan: scenario.terms.program_name,
                        terms: terms_words(scenario.terms),
                        estimate: estimate_words(heading),
                    })}
                    terms={['points', 'apr']}
                />
            </p>
            <button
                class="step"
                onClick={() => {
                    done();
                    change_it(scenario.terms.name);
                }}
            >
                {say.frame.change_loan}
            </button>
            {one.future.length > 0 && (
                <button
                    class="step"
                    onClick={() => {
                        redo();
                        done();
                    }}
                >
                    {say.common.one_step_forward}
                </button>
            )}
        </Dialog>
    );
}
