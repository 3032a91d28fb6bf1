// The buyers that are open, and what can be done with one: name, copy, file, link.
import {useEffect, useRef, useState} from 'preact/hooks';

import {file_name, hand_over} from '../files';
import {copy, to_link} from '../inquiry';
import {buyer, buyers, close, current, notice, open, put_away, show} from '../store';
import {Dialog} from './dialog';
import {Facts} from './facts';
import {Openings} from './openings';
import {brief} from '../figures';

function save(): void {
    const inquiry = buyer.value?.inquiry;
    if (!inquiry) return;
    const text = `${JSON.stringify(inquiry, null, 2)}\n`;
    const name = file_name(inquiry.buyer ?? '', 'json');
    hand_over(new Blob([text], {type: 'application/json'}), name);
    notice.value =
        `Saved as ${name}. The file holds income, debts and cash where the inquiry does: ` +
        'keep it private.';
}

/// How far the address of this page reaches.
function where_it_opens(): string {
    const here = ['localhost', '127.0.0.1', '[::1]'].includes(location.hostname);
    return here
        ? 'It opens on this computer alone, while quoin runs.'
        : `It opens wherever ${location.host} can be reached, while quoin runs there.`;
}

async function share(): Promise<void> {
    const inquiry = buyer.value?.inquiry;
    if (!inquiry) return;
    const link = location.origin + location.pathname + to_link(inquiry);
    try {
        await navigator.clipboard.writeText(link);
        notice.value =
            'A link to this home is on the clipboard: plan, lot and choices alone. No name, ' +
            `income, debts, credit score or cash is in it. ${where_it_opens()}`;
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
        <Dialog title="This buyer" done={done}>
            <Facts done={done} />
            <ul class="choices">
                <li>
                    <button class="row-button" onClick={then(() => open(copy(one.inquiry)))}>
                        <span>Copy to a second one</span>
                        <span class="faint">to try something beside it</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(save)}>
                        <span>Save as a file</span>
                        <span class="faint">the whole inquiry, for the command line too</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => void share())}>
                        <span>Copy a link to the home</span>
                        <span class="faint">
                            plan, lot and choices; no income, debts, credit score or cash
                        </span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => put_away(one.key))}>
                        <span>Put away for now</span>
                        <span class="faint">off the screen; the name stays under Open…</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => close(one.key))}>
                        <span>Close this buyer</span>
                        <span class="faint">erases what this browser kept of it</span>
                    </button>
                </li>
            </ul>
        </Dialog>
    );
}

export function Buyers() {
    const [asks, say] = useState<'' | 'new' | 'menu'>('');
    const tabs = useRef<HTMLDivElement>(null);
    useEffect(() => {
        tabs.current
            ?.querySelector('[aria-current]')
            ?.scrollIntoView({block: 'nearest', inline: 'nearest'});
    }, [current.value]);
    return (
        <div class="buyers">
            <nav class="tabs" aria-label="Buyers" ref={tabs}>
                {buyers.value.map((one) => (
                    <button
                        key={one.key}
                        class="tab"
                        title={one.inquiry.buyer}
                        aria-current={one.key === current.value ? 'true' : undefined}
                        onClick={() => show(one.key)}
                    >
                        {brief(String(one.inquiry.buyer || 'Buyer'))}
                    </button>
                ))}
            </nav>
            <button class="step" onClick={() => say('menu')} aria-haspopup="dialog">
                This buyer…
            </button>
            <button class="step" onClick={() => say('new')} aria-haspopup="dialog">
                Open…
            </button>
            {asks === 'new' && (
                <Dialog title="Open a buyer" done={() => say('')}>
                    <Openings done={() => say('')} remarks />
                </Dialog>
            )}
            {asks === 'menu' && <Menu done={() => say('')} />}
        </div>
    );
}
