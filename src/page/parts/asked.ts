// A question about the buyer on the screen, asked again whenever its inquiry or the language
// changes.
import {useLayoutEffect, useState} from 'preact/hooks';

import {cautions_beside} from '../answers';
import type {Caution} from '../answers';
import {ask, Refused} from '../engine';
import type {Inquiry, Options, Problem} from '../engine';
import {language} from '../language';
import {shared} from '../shared';
import {lost} from '../state/asking';
import {gone} from '../state/signals';

export interface Asked<T> {
    answer: T | null; ///< the last that came, also while a newer one is under way
    problems: Problem[];
}

export function use_answer<T>(
    question: string,
    inquiry: Inquiry | null,
    options: Options = {},
    by: (question: string, inquiry: Inquiry, options: Options) => Promise<T> = ask,
): Asked<T> {
    const [state, set] = useState<Asked<T>>({answer: null, problems: []});
    const key = JSON.stringify([inquiry, options]);
    // Asked before the frame is painted, so that the answer comes a frame sooner.
    useLayoutEffect(() => {
        let wanted = inquiry !== null;
        if (!inquiry) return undefined;
        by(question, inquiry, options).then(
            (answer) => {
                if (wanted) set((was) => ({answer: shared(was.answer, answer), problems: []}));
            },
            (error) => {
                if (!wanted) return;
                if (error instanceof Refused) set((was) => ({...was, problems: error.problems}));
                else lost();
            },
        );
        return () => {
            wanted = false;
        };
    }, [question, key, language.value, gone.value]);
    return state;
}

/// The same question for each way to pay by itself, all at once, put together as one answer: several
/// cores share the work, and a way that did not change is not asked about again.
export async function ask_by_scenario<T>(
    question: string,
    inquiry: Inquiry,
    options: Options = {},
): Promise<T> {
    const scenarios: unknown[] = inquiry.scenarios ?? [];
    if (scenarios.length < 2) return ask<T>(question, inquiry, options);
    const answers = await Promise.all(
        scenarios.map((one) => ask(question, {...inquiry, scenarios: [one]}, options)),
    );
    return {
        ...answers[0],
        scenarios: answers.flatMap((one) => one.scenarios),
        cautions: answers.reduce<Caution[]>(
            (said, one) => [...said, ...cautions_beside(one.cautions, said)],
            [],
        ),
    };
}
