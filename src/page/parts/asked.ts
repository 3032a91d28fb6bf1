// A question about the buyer on the screen, asked again whenever its inquiry changes.
import {useEffect, useState} from 'preact/hooks';

import {ask, Refused} from '../engine';
import type {Inquiry, Options, Problem} from '../engine';
import {gone} from '../store';

export interface Asked<T> {
    answer: T | null; ///< the last that came, also while a newer one is under way
    problems: Problem[];
}

export function use_answer<T>(
    question: string,
    inquiry: Inquiry | null,
    options: Options = {},
): Asked<T> {
    const [state, set] = useState<Asked<T>>({answer: null, problems: []});
    const key = JSON.stringify([inquiry, options]);
    useEffect(() => {
        let wanted = inquiry !== null;
        if (!inquiry) return undefined;
        ask<T>(question, inquiry, options).then(
            (answer) => {
                if (wanted) set({answer, problems: []});
            },
            (error) => {
                if (!wanted) return;
                if (error instanceof Refused) set((was) => ({...was, problems: error.problems}));
                else gone.value = true;
            },
        );
        return () => {
            wanted = false;
        };
    }, [question, key, gone.value]);
    return state;
}
