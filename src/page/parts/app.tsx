// The frame: whose home, the views, the bar of figures that is always in sight.
import {useEffect, useState} from 'preact/hooks';

import {given_code} from '../engine';
import {brief, date} from '../figures';
import {today} from '../keeping';
import {
    bring_back,
    buyer,
    closed,
    code_needed,
    enter,
    gone,
    known,
    mending,
    notice,
    problems,
    redo,
    tour,
    undo,
    view,
} from '../store';
import type {View} from '../store';
import {BudgetView} from '../views/budget';
import {CheckView} from '../views/check';
import {LoansView} from '../views/loans';
import {ScheduleView} from '../views/schedule';
import {SheetView} from '../views/sheet';
import {SiteView} from '../views/site';
import {TourView} from '../views/tour';
import {Bar} from './bar';
import {Buyers} from './buyers';
import {Openings} from './openings';
import {WayOn} from './way_on';
import {Name, WholeName} from './name';

const views: {id: View; name: string; says: string}[] = [
    {id: 'tour', name: 'Tour', says: 'room by room'},
    {id: 'loans', name: 'Loans', says: 'ways to pay'},
    {id: 'budget', name: 'Budget', says: 'what it takes'},
    {id: 'site', name: 'Site', says: 'lots and plans'},
    {id: 'schedule', name: 'Schedule', says: 'year by year'},
    {id: 'sheet', name: 'Sheet', says: 'to print'},
    {id: 'check', name: 'Check', says: 'for the lender'},
];

function keys(event: KeyboardEvent): void {
    const typing =
        event.target instanceof HTMLInputElement &&
        event.target.type !== 'radio' &&
        event.target.type !== 'checkbox';
    if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    if (event.shiftKey) redo();
    else undo();
}

function Views() {
    return (
        <nav class="views" aria-label="Views">
            {views.map((one) => (
                <button
                    key={one.id}
                    class="view"
                    aria-current={view.value === one.id ? 'page' : undefined}
                    onClick={() => {
                        view.value = one.id;
                        window.scrollTo(0, 0);
                    }}
                >
                    <span class="view-name">{one.name}</span>
                    <span class="view-says">{one.says}</span>
                </button>
            ))}
        </nav>
    );
}

function Shown() {
    switch (view.value) {
        case 'tour':
            return <TourView />;
        case 'loans':
            return <LoansView />;
        case 'budget':
            return <BudgetView />;
        case 'site':
            return <SiteView />;
        case 'schedule':
            return <ScheduleView />;
        case 'sheet':
            return <SheetView />;
        case 'check':
            return <CheckView />;
    }
}

/// What stands in the way, in words, above everything else.
function Messages() {
    return (
        <div class="messages" aria-live="polite">
            {gone.value && (
                <p class="message bad" role="alert">
                    The quoin program does not answer. Start it again where it was started (quoin
                    serve); this page goes on by itself. Nothing you typed is lost.
                </p>
            )}
            {notice.value && (
                <p class="message">
                    <span>{notice.value}</span>
                    <button
                        class="quiet"
                        onClick={() => {
                            notice.value = '';
                        }}
                    >
                        Close
                    </button>
                </p>
            )}
            {closed.value && (
                <p class="message closed">
                    <span>
                        <Name of={closed.value.one.inquiry.buyer || 'Buyer'} /> is closed and erased
                        from this browser.
                    </span>
                    <span class="message-steps">
                        <button class="step" onClick={bring_back}>
                            Undo
                        </button>
                        <button
                            class="quiet"
                            onClick={() => {
                                closed.value = null;
                            }}
                        >
                            Close
                        </button>
                    </span>
                </p>
            )}
            {mending.value && <WayOn found={mending.value} />}
            {problems.value.length > 0 && !mending.value && (
                <div class="message bad" role="alert">
                    <p>
                        {tour.value
                            ? 'The figures below are of before this change. What is in the way:'
                            : 'This inquiry cannot be answered as it is. What is in the way:'}
                    </p>
                    <ul>
                        {problems.value.slice(0, 6).map((problem, i) => (
                            <li key={i}>
                                {problem.found}.{' '}
                                {problem.expected && `Expected: ${problem.expected}. `}
                                {problem.advice}
                            </li>
                        ))}
                    </ul>
                    {(buyer.value?.past.length ?? 0) > 0 && (
                        <button class="quiet" onClick={undo}>
                            One step back
                        </button>
                    )}
                </div>
            )}
        </div>
    );
}

function Code() {
    const [code, write] = useState('');
    return (
        <main class="alone">
            <h1>Access code</h1>
            <p>
                This program listens beyond its own machine, so it asks for the code it printed when
                it was started.
            </p>
            {given_code() && (
                <p class="wrong" role="alert">
                    The code that was given is not this one. It stands after #code= in the address
                    that the program printed; a new start of the program makes a new one.
                </p>
            )}
            <form
                onSubmit={(event) => {
                    event.preventDefault();
                    enter(code.trim());
                }}
            >
                <label>
                    Code{' '}
                    <input
                        value={code}
                        autocomplete="off"
                        spellcheck={false}
                        onInput={(event) => write(event.currentTarget.value)}
                    />
                </label>
                <button class="main-button">Open</button>
            </form>
        </main>
    );
}

function Nothing() {
    if (gone.value)
        return (
            <main class="alone">
                <Messages />
            </main>
        );
    if (!known.value)
        return (
            <main class="alone">
                <p class="waiting">Opening the price book…</p>
            </main>
        );
    if (known.value.price_books.some((book) => book.first || book.inquiries.length > 0))
        return (
            <main class="alone start">
                <Messages />
                <h1>Whose home?</h1>
                <Openings done={() => window.scrollTo(0, 0)} remarks={false} />
            </main>
        );
    return (
        <main class="alone">
            <h1>No home to show yet</h1>
            <p>
                The folder that quoin serves has no price book that a home can be priced from: no
                free lot that a plan fits, or no rates in force on its days. Start quoin serve
                without a folder to see the examples.
            </p>
            <Messages />
        </main>
    );
}

export function App() {
    useEffect(() => {
        document.addEventListener('keydown', keys);
        return () => document.removeEventListener('keydown', keys);
    }, []);
    const one = buyer.value;
    const home = tour.value?.heading;
    const who = brief(String(one?.inquiry.buyer ?? 'Buyer'));
    document.title = home ? `${who}, ${brief(home.community)} – quoin` : 'quoin';
    if (code_needed.value) return <Code />;
    if (!one) return <Nothing />;
    return (
        <>
            <a class="skip" href="#main">
                To the content
            </a>
            <header class="top">
                <div class="whose">
                    <p class="community">{home ? <Name of={home.community} /> : ' '}</p>
                    <p class="builder">
                        {home
                            ? `${brief(home.builder)}. Price book ${home.price_book_version}`
                            : ' '}
                        {home && home.price_book_expires < today() && (
                            <strong class="refused">
                                {' '}
                                ended on {date(home.price_book_expires)}
                            </strong>
                        )}
                    </p>
                </div>
                <Buyers />
                <Views />
            </header>
            <Messages />
            <main id="main" tabIndex={-1} class={`main in-${view.value}`}>
                {tour.value ? (
                    <Shown />
                ) : (
                    !gone.value && (
                        <p class="waiting">
                            {problems.value.length === 0
                                ? 'Working out the home…'
                                : 'The home comes back here once that is settled.'}
                        </p>
                    )
                )}
            </main>
            <Bar />
            <WholeName />
        </>
    );
}
