// In the head of the page at home: what can be done with the file, what was changed in it, and what
// takes long.
import {computed} from '@preact/signals';
import {useState} from 'preact/hooks';

import {Dialog} from '../parts/dialog';
import {buyer} from '../state/signals';
import {changes_of} from '../changes';
import {save_copy} from './copies';
import {handed} from './handed';
import {at_work, stop} from './reach';
import {said} from './say';
import {back_to_sent, forget_changes, sent} from './start';
import {send_changes} from './to_the_desk';

import './whose.css';

const changed = computed(
    () => buyer.value !== null && changes_of(buyer.value.inquiry, sent.value) !== null,
);

function Send({done}: {done: () => void}) {
    const [with_name, set] = useState(false);
    return (
        <li class="send">
            <button
                class="row-button"
                onClick={() => {
                    void send_changes(with_name);
                    done();
                }}
            >
                <span>{said().send}</span>
                <span class="faint">{said().send_says}</span>
            </button>
            <label class="tick-box">
                <input
                    type="checkbox"
                    checked={with_name}
                    onChange={(event) => set(event.currentTarget.checked)}
                />
                <span>{said().send_name}</span>
            </label>
        </li>
    );
}

function Licenses() {
    const [open, set] = useState(false);
    const text = new TextDecoder().decode(handed.parts['licenses.txt']);
    return (
        <details class="more" open={open} onToggle={(event) => set(event.currentTarget.open)}>
            <summary>{said().licenses}</summary>
            <p class="note">{said().licenses_says}</p>
            {open && <pre class="licenses">{text}</pre>}
        </details>
    );
}

function Menu({done}: {done: () => void}) {
    const then = (what: () => void) => () => {
        what();
        done();
    };
    return (
        <Dialog title={said().menu_title} done={done}>
            <ul class="choices">
                <li>
                    <button class="row-button" onClick={then(() => void save_copy())}>
                        <span>{said().copy}</span>
                        <span class="faint">{said().copy_says}</span>
                    </button>
                </li>
                <Send done={done} />
                <li>
                    <button class="row-button" onClick={then(forget_changes)}>
                        <span>{said().forget}</span>
                        <span class="faint">{said().forget_says}</span>
                    </button>
                </li>
            </ul>
            <Licenses />
        </Dialog>
    );
}

function AtWork() {
    const {long} = said();
    const words: Record<string, string> = long;
    return (
        <div class="at-work" role="status">
            <span>{words[at_work.value] ?? long.other}</span>
            <button class="step" title={words[at_work.value]} onClick={stop}>
                {said().stop}
            </button>
        </div>
    );
}

export function Whose() {
    const [open, set] = useState(false);
    return (
        <div class="buyers">
            {at_work.value && <AtWork />}
            {changed.value && (
                <button class="step was-changed" title={said().back} onClick={back_to_sent}>
                    {said().back}
                </button>
            )}
            <button class="step" aria-haspopup="dialog" onClick={() => set(true)}>
                {said().menu}
            </button>
            {open && <Menu done={() => set(false)} />}
        </div>
    );
}
