// While no buyer is open at the desk: the access code, whom to open, or why there is no home.
import {useState} from 'preact/hooks';

import type {Inquiry} from '../engine';
import {say} from '../language';
import {TurnedAway} from '../parts/buyers';
import {Languages} from '../parts/languages';
import {Messages} from '../parts/messages';
import {Openings} from '../parts/openings';
import {code_needed, facing, gone, known} from '../state/signals';
import {given_code} from './reach';
import {enter} from './start';

function Code() {
    const [code, write] = useState('');
    return (
        <main class="alone">
            <Languages />
            <h1>{say.frame.code_title}</h1>
            <p>{say.frame.code_asked}</p>
            {given_code() && (
                <p class="wrong" role="alert">
                    {say.frame.code_wrong}
                </p>
            )}
            <form
                onSubmit={(event) => {
                    event.preventDefault();
                    enter(code.trim());
                }}
            >
                <label>
                    {say.frame.code}{' '}
                    <input
                        value={code}
                        autocomplete="off"
                        spellcheck={false}
                        onInput={(event) => write(event.currentTarget.value)}
                    />
                </label>
                <button class="main-button">{say.frame.code_open}</button>
            </form>
        </main>
    );
}

/// Names alone, and the way to a new buyer.
function Begin() {
    const [begins, begin] = useState<Inquiry | null>(null);
    return (
        <>
            <h1>{begins ? say.buyers.new_one : say.frame.whose_home}</h1>
            {facing.value && <TurnedAway />}
            <Openings done={() => undefined} remarks={false} begins={begins} begin={begin} />
        </>
    );
}

function Nothing() {
    if (gone.value)
        return (
            <main class="alone">
                <Languages />
                <Messages />
            </main>
        );
    if (!known.value)
        return (
            <main class="alone">
                <Languages />
                <p class="waiting">{say.frame.opening}</p>
            </main>
        );
    if (known.value.price_books.some((book) => book.first || book.inquiries.length > 0))
        return (
            <main class="alone start">
                <Languages />
                <Messages />
                <Begin />
            </main>
        );
    return (
        <main class="alone">
            <Languages />
            <h1>{say.frame.no_home}</h1>
            <p>{say.frame.no_home_why}</p>
            <Messages />
        </main>
    );
}

export function Nobody() {
    return code_needed.value ? <Code /> : <Nothing />;
}
