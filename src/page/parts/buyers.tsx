// The buyers that are open, and what can be done with one: name, copy, file, link.
import {useEffect, useRef, useState} from 'preact/hooks';

import {file_name, hand_over} from '../files';
import {copy, to_link} from '../inquiry';
import {book_of, buyer, buyers, close, current, known, notice, open, show} from '../store';
import {Dialog} from './dialog';
import {Facts} from './facts';

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

async function load(file: File): Promise<void> {
    try {
        const inquiry = JSON.parse(await file.text());
        const book = book_of(String(inquiry.price_book ?? ''));
        if (!book) {
            notice.value =
                `${file.name} is about the price book ${inquiry.price_book ?? '(none)'}, ` +
                'which is not here.';
            return;
        }
        open({...inquiry, price_book: book});
    } catch {
        notice.value = `${file.name} is not an inquiry file: it holds no JSON that can be read.`;
    }
}

async function share(): Promise<void> {
    const inquiry = buyer.value?.inquiry;
    if (!inquiry) return;
    const link = location.origin + location.pathname + to_link(inquiry);
    try {
        await navigator.clipboard.writeText(link);
        notice.value =
            'A link to this home is on the clipboard: plan, lot and selections alone, no name, ' +
            'income, debts or cash.';
    } catch {
        notice.value = link;
    }
}

function NewBuyer({done}: {done: () => void}) {
    return (
        <Dialog title="Open a buyer" done={done}>
            {known.value?.price_books.map((book) => (
                <section key={book.id}>
                    <h3>{book.community}</h3>
                    <ul class="choices">
                        {book.first && (
                            <li>
                                <button
                                    class="row-button"
                                    onClick={() => {
                                        open(book.first!);
                                        notice.value = book.first!.comment;
                                        done();
                                    }}
                                >
                                    <span>A new buyer</span>
                                    <span class="faint">{book.first.comment}</span>
                                </button>
                            </li>
                        )}
                        {book.inquiries.map((one) => (
                            <li key={one.id}>
                                <button
                                    class="row-button"
                                    onClick={() => {
                                        open(one.inquiry);
                                        done();
                                    }}
                                >
                                    <span>{one.buyer || one.id}</span>
                                    <span class="faint">{one.inquiry.comment ?? one.id}</span>
                                </button>
                            </li>
                        ))}
                    </ul>
                </section>
            ))}
            <FileButton text="Open an inquiry file…" done={done} />
        </Dialog>
    );
}

function FileButton({text, done}: {text: string; done: () => void}) {
    return (
        <label class="file-button">
            {text}
            <input
                type="file"
                accept=".json,application/json"
                onChange={(event) => {
                    const file = event.currentTarget.files?.[0];
                    if (file) void load(file);
                    done();
                }}
            />
        </label>
    );
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
                        <span class="faint">selections alone, nothing private</span>
                    </button>
                </li>
                <li>
                    <button class="row-button" onClick={then(() => close(one.key))}>
                        <span>Close this buyer</span>
                        <span class="faint">forgets what this browser kept of it</span>
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
                        {one.inquiry.buyer || 'Buyer'}
                    </button>
                ))}
            </nav>
            <button class="step" onClick={() => say('menu')} aria-haspopup="dialog">
                This buyer…
            </button>
            <button class="step" onClick={() => say('new')} aria-haspopup="dialog">
                Open…
            </button>
            {asks === 'new' && <NewBuyer done={() => say('')} />}
            {asks === 'menu' && <Menu done={() => say('')} />}
        </div>
    );
}
