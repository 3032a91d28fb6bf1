// What stands in the way of a home, and what was done to it, in words.
import {gone_words} from '#side/words';

import {say} from '../language';
import {undo} from '../state/changing';
import {closed, gone, has_past, mending, notice, problems, tour} from '../state/signals';
import {bring_back} from '../state/who';
import {Name} from './name';
import {WayOn} from './way_on';

/// What stands in the way, in words, above everything else.
export function Messages() {
    return (
        <div class="messages" aria-live="polite">
            {gone.value && (
                <p class="message bad" role="alert">
                    {gone_words()}
                </p>
            )}
            {notice.value && (
                <p class="message">
                    <span>{notice.value}</span>
                    <button
                        class="quiet"
                        onClick={() => {
                            notice.value = '';
                        }}
                    >
                        {say.common.close}
                    </button>
                </p>
            )}
            {closed.value && (
                <p class="message closed">
                    <span>
                        {say.buyers.closed({
                            name: (
                                <Name of={closed.value.one.inquiry.buyer || say.buyers.unnamed} />
                            ),
                        })}
                    </span>
                    <span class="message-steps">
                        <button class="step" onClick={bring_back}>
                            {say.common.undo}
                        </button>
                        <button
                            class="quiet"
                            onClick={() => {
                                closed.value = null;
                            }}
                        >
                            {say.common.close}
                        </button>
                    </span>
                </p>
            )}
            {mending.value && <WayOn found={mending.value} />}
            {problems.value.length > 0 && !mending.value && (
                <div class="message bad" role="alert">
                    <p>{tour.value ? say.frame.stale : say.frame.no_answer}</p>
                    <ul>
                        {problems.value.slice(0, 6).map((problem, i) => (
                            <li key={i}>{say.frame.problem(problem)}</li>
                        ))}
                    </ul>
                    {has_past.value && (
                        <button class="quiet" onClick={undo}>
                            {say.common.one_step_back}
                        </button>
                    )}
                </div>
            )}
        </div>
    );
}
