// The buyers that are open, and what can be done with one: name, copy, file, link.
import {useEffect, useRef, useState} from 'preact/hooks';

import {turn_back, turn_to_buyer} from '../desk/start';
import type {Inquiry} from '../engine';
import {file_name, hand_over} from '../files';
import {copy, to_link} from '../inquiry';
import {say} from '../language';
import {buyer, buyers, current, facing, notice} from '../state/signals';
import {close, open, put_away, show} from '../state/who';
import {Dialog} from './dialog';
import {Facts} from './facts';
import {FromHome} from './from_home';
import {Openings} from './openings';
import {send_home, SendHome} from './send_home';
import {brief} from '../figures';

function save(): void {
    const inquiry = buyer.value?.inquiry;
    if (!inquiry) return;
    const text = `${JSON.stringify(inquiry, null, 2)}\n`;
    const name = file_name(inquiry.buyer ?? '', 'json');
    hand_over(new Blob([text], {type: 'application/json'}), name);
    notice.value = say.buyers.saved({file: name});
}

/// How far the address of this page reaches.
function where_it_opens(): string {
    const here = ['localhost', '127.0.0.1', '[::1]'].includes(location.hostname);
    return here ? say.buyers.link_opens_here : say.buyers.link_opens_at({host: location.host});
}

async function share(): Promise<void> {
    const inquiry = buyer.value?.inquiry;
    if (!inquiry) return;
    const link = location.origin + location.pathname + to_link(inquiry);
    try {
        await navigator.clipboard.writeText(link);
        notice.value = say.buyers.linked({where: where_it_opens()});
    } catch {
        notice.value = `${where_it_opens()} ${link}`;
    }
}

function Menu({done}: {done: () => void}) {
    const one = buyer.value!;
    const then = (what: () => void) => () => {
        what();
        done();
    };
    return (
        <Dialog title={say.buyers.this_one} done={done}>
            <Facts done={done} />
            <ul class="choices">
                <li>
                    <button class="row-button" onClick={then(turn_to_buyer)}>
                        <span>{say.buyers.turn}</span>
                        <span class="faint">{say.buyers.turn_says}</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(send_home)}>
                        <span>{say.send_home.title}</span>
                        <span class="faint">{say.send_home.menu_says}</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => open(copy(one.inquiry)))}>
                        <span>{say.buyers.copy}</span>
                        <span class="faint">{say.buyers.copy_says}</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(save)}>
                        <span>{say.buyers.save}</span>
                        <span class="faint">{say.buyers.save_says}</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => void share())}>
                        <span>{say.buyers.link}</span>
                        <span class="faint">{say.buyers.link_says}</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => put_away(one.key))}>
                        <span>{say.buyers.put_away}</span>
                        <span class="faint">{say.buyers.put_away_says}</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => close(one.key))}>
                        <span>{say.buyers.close}</span>
                        <span class="faint">{say.buyers.close_says}</span>
                    </button>
                </li>
            </ul>
        </Dialog>
    );
}

/// While the buyer looks on: no name, and the way back.
export function TurnedAway() {
    return (
        <div class="buyers">
            <button class="step turn-back" onClick={turn_back}>
                {say.buyers.turn_back}
            </button>
        </div>
    );
}

export function Buyers() {
    return facing.value ? <TurnedAway /> : <AtTheDesk />;
}

function AtTheDesk() {
    const [asks, set] = useState<'' | 'new' | 'menu'>('');
    const [begins, begin] = useState<Inquiry | null>(null);
    const done = () => {
        set('');
        begin(null);
    };
    const tabs = useRef<HTMLDivElement>(null);
    useEffect(() => {
        tabs.current
            ?.querySelector('[aria-current]')
            ?.scrollIntoView({block: 'nearest', inline: 'nearest'});
    }, [current.value]);
    return (
        <div class="buyers">
            <nav class="tabs" aria-label={say.buyers.tabs} ref={tabs}>
                {buyers.value.map((one) => (
                    <button
                        key={one.key}
                        class="tab"
                        title={one.inquiry.buyer}
                        aria-current={one.key === current.value ? 'true' : undefined}
                        onClick={() => show(one.key)}
                    >
                        {brief(String(one.inquiry.buyer || say.buyers.unnamed))}
                    </button>
                ))}
            </nav>
            <button class="step" onClick={() => set('menu')} aria-haspopup="dialog">
                {say.buyers.menu}
            </button>
            <button class="step" onClick={() => set('new')} aria-haspopup="dialog">
                {say.buyers.open}
            </button>
            {asks === 'new' && (
                <Dialog title={begins ? say.buyers.new_one : say.buyers.open_title} done={done}>
                    <Openings done={done} remarks begins={begins} begin={begin} />
                </Dialog>
            )}
            {asks === 'menu' && <Menu done={() => set('')} />}
            <SendHome />
            <FromHome />
        </div>
    );
}
