// A field that is typed into: committed with Enter or by leaving it.
import {useState} from 'preact/hooks';

import type {Problem} from '../engine';
import {say} from '../language';
import {plain_number} from '../typed';

import './typed_field.css';

/// What stands in a field, and what it hears: the value, or what is being typed in its place until
/// that is committed. A value that comes meanwhile, with an answer or out of another tab, waits.
export function use_typed(value: string, commit: (text: string) => void) {
    const [typed, write] = useState<string | null>(null);
    const leave = (event: {currentTarget: HTMLInputElement}) => {
        write(null);
        commit(event.currentTarget.value);
    };
    return {
        value: typed ?? value,
        onInput: (event: {currentTarget: HTMLInputElement}) => write(event.currentTarget.value),
        onChange: leave,
        // A field that is left as it was found tells of no change, whatever came meanwhile.
        onBlur: typed === null ? undefined : leave,
    };
}

/// A text or number; what is wrong with it stands beside it.
export function Typed({
    value,
    label,
    wrong,
    change,
    mode = 'decimal',
    before,
    after,
    hint,
}: {
    value: string;
    label: string;
    wrong?: Problem;
    change: (value: string, typed: string) => void;
    mode?: 'decimal' | 'text';
    before?: string;
    after?: string;
    hint?: string; ///< of what holds while nothing is typed
}) {
    const field = use_typed(value, (text) => {
        const clean = mode === 'decimal' ? plain_number(text, before, after) : text.trim();
        if (clean !== value) change(clean, text);
    });
    return (
        <span class="typed">
            {before && (
                <span class="unit" aria-hidden="true">
                    {before}
                </span>
            )}
            <input
                inputMode={mode}
                autocomplete="off"
                aria-label={label}
                placeholder={hint}
                aria-invalid={wrong ? 'true' : undefined}
                {...field}
            />
            {after && (
                <span class="unit" aria-hidden="true">
                    {after}
                </span>
            )}
            {wrong && <span class="wrong">{say.common.wrong(wrong)}</span>}
        </span>
    );
}
