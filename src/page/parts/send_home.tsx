// Send home: one file for the buyer's own phone, with what goes along of the buyer's money ticked.
import {signal} from '@preact/signals';
import {useState} from 'preact/hooks';

import {ask_file, Refused} from '../engine';
import {file_name, hand_over} from '../files';
import {say} from '../language';
import {lost} from '../state/asking';
import {answered, notice} from '../state/signals';
import {Dialog} from './dialog';

const asking = signal(false);

export function send_home(): void {
    asking.value = true;
}

/// What the buyer may let go, and where an inquiry has it.
const privates = {
    score: ['score'],
    income: ['income', 'income_taxes', 'household'],
    debts: ['debts'],
    cash: ['cash'],
};
type Private = keyof typeof privates;

async function make(ticked: Private[]): Promise<void> {
    const inquiry = answered.value!;
    try {
        const file = await ask_file('take-home', inquiry, {with: ticked});
        const name = file_name(inquiry.buyer ?? '', 'html');
        hand_over(file, name);
        notice.value = say.send_home.saved({file: name});
    } catch (error) {
        if (error instanceof Refused) notice.value = error.problems[0]?.found ?? say.frame.refused;
        else lost();
    }
}

/// In the frame, so that it opens from anywhere.
export function SendHome() {
    const [ticked, tick] = useState<Private[]>([]);
    if (!asking.value || !answered.value) return null;
    const words = say.send_home;
    const done = () => {
        asking.value = false;
        tick([]);
    };
    const has = (Object.keys(privates) as Private[]).filter((one) =>
        privates[one].some((member) => answered.value![member] !== undefined),
    );
    return (
        <Dialog title={words.title} done={done}>
            <p>{words.says}</p>
            <p class="note">{words.stays}</p>
            {has.length > 0 && (
                <fieldset class="field">
                    <legend>{words.along}</legend>
                    {has.map((one) => (
                        <label key={one} class="tick-box">
                            <input
                                type="checkbox"
                                checked={ticked.includes(one)}
                                onChange={(event) =>
                                    tick(
                                        event.currentTarget.checked
                                            ? [...ticked, one]
                                            : ticked.filter((other) => other !== one),
                                    )
                                }
                            />
                            <span>{words.privates[one]}</span>
                        </label>
                    ))}
                </fieldset>
            )}
            <button
                class="main-button"
                onClick={() => {
                    void make(ticked);
                    done();
                }}
            >
                {words.make}
            </button>
        </Dialog>
    );
}
