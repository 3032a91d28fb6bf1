// The frame: whose home, the views, the bar of figures that is always in sight.
import {useEffect} from 'preact/hooks';

import {views} from '#side/views';
import {ended_words} from '#side/words';

import {brief} from '../figures';
import {say} from '../language';
import {go_to_view, view} from '../place';
import {redo, undo} from '../state/changing';
import {code_needed, current, gone, heading, problems, somebody} from '../state/signals';
import {BudgetView} from '../views/budget';
import {CheckView} from '../views/check';
import {LoansView} from '../views/loans';
import {ScheduleView} from '../views/schedule';
import {SheetView} from '../views/sheet';
import {SiteView} from '../views/site';
import {TourView} from '../views/tour';
import {Bar} from './bar';
import {Whose} from '#side/whose';
import {FindButton} from './find';
import {Languages} from './languages';
import {Messages} from './messages';
import {Name, WholeName} from './name';
import {PaperHead} from './paper_head';
import {TermCard} from './term';
import {Nobody} from '#side/nobody';

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

export function App() {
    useEffect(() => {
        document.addEventListener('keydown', keys);
        return () => document.removeEventListener('keydown', keys);
    }, []);
    const home = heading.value;
    const ended = home && ended_words(home);
    // A title stays in the browser's history, for whoever sits here next: nobody's name is in it.
    document.title = home ? say.frame.title({community: brief(home.community)}) : 'quoin';
    if (code_needed.value || !somebody.value) return <Nobody />;
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
                    {ended && <p class="book-ended refused">{ended}</p>}
                </div>
                <Whose />
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
