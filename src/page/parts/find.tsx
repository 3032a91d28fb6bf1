// Finding an option by words of its name, its description or its id, wherever one is.
import {effect, signal} from '@preact/signals';
import {useEffect, useRef} from 'preact/hooks';

import type {Area, Option} from '../answers';
import {brief} from '../figures';
import {say} from '../language';
import {view} from '../place';
import {current, looked_for, tour} from '../state/signals';
import {Barred, can_be_had} from './barred';
import {Icon} from './icon';
import {OptionCards} from './option_card';
import {Name} from './name';

import './find.css';

/// Whether there is a place to write it.
const writing = signal(false);

/// In small letters without accents.
function folded(text: string): string {
    return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

export function words_in(text: string): string[] {
    return folded(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}

/// Each asked word begins one of these.
export function all_begin(asked: string[], words: string[]): boolean {
    return asked.every((one) => words.some((word) => word.startsWith(one)));
}

interface Found {
    area: Area;
    options: Option[];
}

/// By area, in the order of the tour; those whose names hold the words, or where there are none,
/// those that say them anywhere.
export function found_in(areas: Area[], asked: string): Found[] {
    const words = words_in(asked);
    if (words.length === 0) return [];
    const with_words = (told: (option: Option) => string) =>
        areas
            .map((area) => ({
                area,
                options: area.options.filter((option) => all_begin(words, words_in(told(option)))),
            }))
            .filter((one) => one.options.length > 0);
    const names = ({name, id, forms}: Option) =>
        [name, id, ...forms.map((form) => form.name)].join(' ');
    const by_name = with_words(names);
    if (by_name.length > 0) return by_name;
    return with_words((option) =>
        [names(option), option.text, option.note, ...option.forms.map((form) => form.note)].join(
            ' ',
        ),
    );
}

function leave(): void {
    looked_for.value = '';
    writing.value = false;
}

/// What was looked for with one buyer is nothing to the next.
effect(() => {
    if (current.value || looked_for.peek()) leave();
});

/// Opens the place to write what is looked for, in the tour.
export function FindButton() {
    return (
        <button
            class="find-button"
            aria-label={say.tour.find}
            aria-expanded={writing.value && view.value === 'tour'}
            onClick={() => {
                const shown = writing.value && view.value === 'tour';
                view.value = 'tour';
                writing.value = !shown;
                looked_for.value = '';
                window.scrollTo(0, 0);
            }}
        >
            <Icon of="find" />
        </button>
    );
}

function Field() {
    const field = useRef<HTMLInputElement>(null);
    useEffect(() => field.current?.focus(), []);
    return (
        <search class="find-option">
            <input
                ref={field}
                type="search"
                aria-label={say.tour.find}
                placeholder={say.tour.find_example}
                autocomplete="off"
                spellcheck={false}
                value={looked_for.value}
                onInput={(event) => {
                    looked_for.value = event.currentTarget.value;
                }}
                onKeyDown={(event) => {
                    if (event.key === 'Escape') leave();
                }}
            />
            <button class="step" onClick={leave}>
                {say.common.close}
            </button>
        </search>
    );
}

export function FindField() {
    return writing.value ? <Field /> : null;
}

export function FoundOptions() {
    const {all_areas, areas} = tour.value!;
    if (areas.length < all_areas.length) return null; // not all is told yet
    const found = found_in(areas, looked_for.value);
    const count = found.reduce((sum, one) => sum + one.options.length, 0);
    return (
        <div class="area">
            <p class="found-count" role="status">
                {say.tour.found({count})}
            </p>
            {found
                .filter(({options}) => options.some(can_be_had))
                .map(({area, options}) => (
                    <section key={area.id} class="group" aria-label={brief(area.name)}>
                        <h3>
                            <Name of={area.name} />
                        </h3>
                        <OptionCards options={options.filter(can_be_had)} />
                    </section>
                ))}
            <Barred options={found.flatMap((one) => one.options)} />
        </div>
    );
}
