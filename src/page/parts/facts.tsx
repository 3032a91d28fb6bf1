// What an inquiry says of the buyer and the days: names, dates, score, cash; changed all at once.
import {useState} from 'preact/hooks';

import type {Inquiry} from '../engine';
import {copy} from '../inquiry';
import {say} from '../language';
import {act} from '../state/changing';
import {buyer} from '../state/signals';
import {plain_number} from '../typed';

import './facts.css';

interface Fact {
    member: keyof typeof say.buyers.facts;
    type: 'text' | 'date' | 'number' | 'money';
}

const facts: Fact[] = [
    {member: 'buyer', type: 'text'},
    {member: 'as_of', type: 'date'},
    {member: 'contract', type: 'date'},
    {member: 'closing', type: 'date'},
    {member: 'score', type: 'number'},
    {member: 'cash', type: 'money'},
    {member: 'prepared_by', type: 'text'},
    {member: 'originator', type: 'text'},
];

type Texts = Record<string, string>;

/// The inquiry with what was typed in place of what stood there; an emptied fact is left out of it.
function changed(inquiry: Inquiry, stood: Texts, typed: Texts): Inquiry {
    const next = copy(inquiry);
    for (const {member, type} of facts) {
        if (typed[member] === stood[member]) continue;
        const words = typed[member].trim();
        const text = type === 'money' ? plain_number(words, '$') : words;
        if (text === String(inquiry[member] ?? '')) continue;
        const number = type === 'number' && /^\d+$/.test(text);
        if (text === '' && type !== 'text') delete next[member];
        else next[member] = number ? Number(text) : text;
    }
    return next;
}

function texts_of(inquiry: Inquiry): Texts {
    return Object.fromEntries(facts.map(({member}) => [member, String(inquiry[member] ?? '')]));
}

function Input({
    type,
    value,
    write,
}: {
    type: Fact['type'];
    value: string;
    write: (text: string) => void;
}) {
    const typed = (event: Event) => write((event.currentTarget as HTMLInputElement).value);
    if (type === 'date')
        return <input type="date" autocomplete="off" value={value} onInput={typed} />;
    return (
        <input
            type="text"
            inputMode={type === 'text' ? 'text' : 'decimal'}
            autocomplete="off"
            value={value}
            onInput={typed}
        />
    );
}

export function Facts({done}: {done: () => void}) {
    const inquiry = buyer.value!.inquiry;
    const [stood] = useState(texts_of(inquiry));
    const [typed, write] = useState(stood);
    const submit = (event: Event) => {
        event.preventDefault();
        const next = changed(inquiry, stood, typed);
        if (JSON.stringify(next) !== JSON.stringify(inquiry)) {
            void act(next, {what: say.buyers.facts_changed, touch: null, remarks: []}, true);
        }
        done();
    };
    return (
        <form class="facts-form" onSubmit={submit}>
            {facts.map(({member, type}) => (
                <label key={member} class="field">
                    <span>{say.buyers.facts[member]}</span>
                    <Input
                        type={type}
                        value={typed[member]}
                        write={(text) => write({...typed, [member]: text})}
                    />
                </label>
            ))}
            <button class="main-button">{say.buyers.use_facts}</button>
        </form>
    );
}
