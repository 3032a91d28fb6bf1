// What an option opens: what it is, until when it is decided, the work it takes, doing it later.
import type {ComponentChildren} from 'preact';

import type {Option} from '../answers';
import {plain, short} from '../figures';
import {say} from '../language';
import {facing} from '../state/signals';
import {wish_for} from '../wishes';
import {Look} from './look';
import {OfficeNote} from './office_note';
import {Stepper, unit_of} from './option_number';
import {in_the_home} from './option_row';
import {Term} from './term';
import {turn_wish} from './wish_list';

import './option_more.css';

function facts_of(option: Option): ComponentChildren[] {
    const facts: ComponentChildren[] = [];
    if (option.quantity && !option.quantity.asked) {
        const count = plain(option.quantity.now);
        facts.push(say.options.counted({count, unit: unit_of(option.quantity)}));
    }
    if (option.agreed) facts.push(say.options.agreed);
    if (option.cutoff)
        facts.push(<Term of="decide_by">{say.options.choose_before({stage: option.cutoff})}</Term>);
    if (option.work.length > 0)
        facts.push(
            say.options.work({
                trades: option.work.map((one) => say.options.trades[one]).join(', '),
            }),
        );
    return facts;
}

/// On the wish list or off it, for what is not in the home.
function WishButton({option}: {option: Option}) {
    if (option.wish === null && (option.picked || !wish_for(option))) return null;
    return (
        <button
            class="wish-button"
            aria-pressed={option.wish !== null}
            onClick={() => turn_wish(option)}
        >
            {option.wish === null
                ? say.wishes.list.add
                : facing.value
                  ? say.wishes.list.take_off_any
                  : say.wishes.list.take_it_off({rank: `${option.wish}`})}
        </button>
    );
}

/// What doing it after the closing is estimated at: of one alone, or of all.
function later_words({later, quantity}: Option): string {
    const {estimate, each, note} = later!;
    const told = {estimate: short(estimate), note};
    if (!each) return say.options.later(told);
    return say.options.later_each({...told, unit: quantity?.unit ?? 'each'});
}

/// Beside its rows, which say what each of them changes.
export function More({option}: {option: Option}) {
    const facts = facts_of(option);
    const home = in_the_home(option);
    const shown = home?.picture ? home : option;
    return (
        <div class={`more ${shown.picture ? 'pictured' : ''}`}>
            {shown.picture && <Look of={shown} large />}
            {option.text && <p class="option-text">{option.text}</p>}
            {option.quantity?.asked && option.picked && <Stepper option={option} />}
            {option.parts.length > 0 && (
                <p class="facts">{say.options.brings({parts: option.parts.join('; ')})}</p>
            )}
            {facts.length > 0 && (
                <p class="facts">{facts.flatMap((one, at) => (at > 0 ? [' · ', one] : [one]))}</p>
            )}
            {option.note && <p class="note">{option.note}</p>}
            <OfficeNote of={option} />
            {option.later && <p class="note">{later_words(option)}</p>}
            <WishButton option={option} />
        </div>
    );
}
