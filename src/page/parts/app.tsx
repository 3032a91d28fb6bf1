// The frame: whose home, the views, the bar of figures that is always in sight.
import {useEffect, useState} from 'preact/hooks';

import {given_code} from '../engine';
import type {Inquiry} from '../engine';
import {brief, short_date} from '../figures';
import {today} from '../keeping';
import {language, languages, own_name, say} from '../language';
import {view} from '../place';
import {redo, undo} from '../state/changing';
import {
    closed,
    code_needed,
    current,
    facing,
    gone,
    has_past,
    heading,
    known,
    mending,
    notice,
    problems,
    somebody,
    tour,
} from '../state/signals';
import {enter, speak} from '../state/start';
import {bring_back} from '../state/who';
import {go_to_view, views} from '../place';
import {BudgetView} from '../views/budget';
import {CheckView} from '../views/check';
import {LoansView} from '../views/loans';
import {ScheduleView} from '../views/schedule';
import {SheetView} from '../views/sheet';
import {SiteView} from '../views/site';
import {TourView} from '../views/tour';
import {Bar} from './bar';
import {Buyers, TurnedAway} from './buyers';
import {FindButton} from './find';
import {Openings} from './openings';
import {WayOn} from './way_on';
import {Name, WholeName} from './name';
import {PaperHead} from './paper_head';
import {TermCard} from './term';

import './app.css';

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
        <nav class="views" aria-label={say.frame.views_label}>
            {views.map((one) => (
                <button
                    key={one}
                    class="view"
                    title={say.frame.views[one].says}
                    aria-current={view.value === one ? 'page' : undefined}
                    onClick={() => go_to_view(one)}
                >
                    <span class="view-name">{say.frame.views[one].name}</span>
                </button>
            ))}
        </nav>
    );
}

/// Each by its own name: whoever cannot read the page finds theirs.
function Languages() {
    return (
        <div class="languages" role="group" aria-label={say.frame.languages_label}>
            {languages.map((one) => (
                <button
                    key={one}
                    class="language"
                    lang={one}
                    aria-pressed={language.value === one}
                    onClick={() => speak(one)}
                >
                    {own_name(one)}
                </button>
            ))}
        </div>
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
                    {say.frame.gone}
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
                        {say.common.close}
                    </button>
                </p>
            )}
            {closed.value && (
                <p class="message closed">
                    <span>
                        {say.buyers.closed({
                            name: (
                                <Name of={closed.value.one.inquiry.buyer || say.buyers.unnamed} />
                            ),
                        })}
                    </span>
                    <span class="message-steps">
                        <button class="step" onClick={bring_back}>
                            {say.common.undo}
                        </button>
                        <button
                            class="quiet"
                            onClick={() => {
                                closed.value = null;
                            }}
                        >
                            {say.common.close}
                        </button>
                    </span>
                </p>
            )}
            {mending.value && <WayOn found={mending.value} />}
            {problems.value.length > 0 && !mending.value && (
                <div class="message bad" role="alert">
                    <p>{tour.value ? say.frame.stale : say.frame.no_answer}</p>
                    <ul>
                        {problems.value.slice(0, 6).map((problem, i) => (
                            <li key={i}>{say.frame.problem(problem)}</li>
                        ))}
                    </ul>
                    {has_past.value && (
                        <button class="quiet" onClick={undo}>
                            {say.common.one_step_back}
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

export function App() {
    useEffect(() => {
        document.addEventListener('keydown', keys);
        return () => document.removeEventListener('keydown', keys);
    }, []);
    const home = heading.value;
    // A title stays in the browser's history, for whoever sits here next: nobody's name is in it.
    document.title = home ? say.frame.title({community: brief(home.community)}) : 'quoin';
    if (code_needed.value) return <Code />;
    if (!somebody.value) return <Nothing />;
    return (
        <>
            <a class="skip" href="#main">
                {say.frame.skip}
            </a>
            <header class="top">
                <div class="whose">
                    <p
                        class="community"
                        title={
                            home
                                ? say.frame.book({
                                      builder: brief(home.builder),
                                      version: home.price_book_version,
                                  })
                                : undefined
                        }
                    >
                        {home ? <Name of={home.community} /> : ' '}
                    </p>
                    {home && home.price_book_expires < today() && (
                        <p class="book-ended refused">
                            {say.frame.book_ended({on: short_date(home.price_book_expires)})}
                        </p>
                    )}
                </div>
                <Buyers />
                <Languages />
                <Views />
                <FindButton />
            </header>
            <Messages />
            <main id="main" tabIndex={-1} class={`main in-${view.value}`}>
                {home && view.value !== 'sheet' && <PaperHead />}
                {home ? (
                    <Shown key={current.value} />
                ) : (
                    !gone.value && (
                        <p class="waiting">
                            {problems.value.length === 0 ? say.frame.working : say.frame.comes_back}
                        </p>
                    )
                )}
            </main>
            <Bar />
            <WholeName />
            <TermCard />
        </>
    );
}
