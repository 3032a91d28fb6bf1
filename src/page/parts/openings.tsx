// Whom to open: a new buyer, somebody this browser kept, an example, a file.
import {useMemo, useState} from 'preact/hooks';

import {day_of} from '../days';
import type {Cases, Inquiry} from '../engine';
import {brief, short_date} from '../figures';
import type {Kept} from '../kept';
import {say} from '../language';
import {book_of, books_here} from '../state/books';
import {away, buyers, current, facing, known, notice} from '../state/signals';
import {changes_format, take_from_home} from '../state/from_home';
import {all_others, open, take_up} from '../state/who';
import {all_begin, words_in} from './find';
import {Name} from './name';
import {NewBuyer} from './new_buyer';

import './openings.css';

async function load(file: File): Promise<void> {
    let inquiry;
    try {
        inquiry = JSON.parse(await file.text());
        if (typeof inquiry !== 'object' || inquiry === null) throw new Error();
    } catch {
        notice.value = say.buyers.no_file({file: file.name});
        return;
    }
    if (inquiry.format === changes_format) return take_from_home(inquiry);
    const book = book_of(String(inquiry.price_book ?? ''));
    if (!book) {
        notice.value = say.buyers.file_no_book({file: file.name, books: books_here()});
        return;
    }
    open({...inquiry, price_book: book});
}

/// From so many names on there is a field to find one by, and the rest is behind a button.
const many = 8;

/// "Teasel, lot 7, Nov 28": nothing that is a figure of theirs.
function told_of({plan, lot, at, community, price_book}: Kept): string {
    if (book_of(price_book) === null) return say.buyers.kept_no_book({community});
    return say.buyers.kept_line({plan: brief(plan), lot, on: short_date(day_of(new Date(at)))});
}

function KeptRow({one, done}: {one: Kept; done: () => void}) {
    const here = buyers.value.some((each) => each.key === one.key);
    return (
        <li>
            <button
                class="row-button kept-name"
                disabled={book_of(one.price_book) === null}
                title={one.name}
                onClick={() => {
                    take_up(one.key);
                    done();
                }}
            >
                <span class="cut">{brief(one.name)}</span>
                <span class="faint">
                    {told_of(one)}
                    {here && <span class="here"> · {say.buyers.open_here}</span>}
                </span>
            </button>
        </li>
    );
}

/// Names alone: nobody's figures are on the screen before they are asked for. Where they are many,
/// those who are open stand among them, to be found by name.
function Names({done}: {done: () => void}) {
    const [asked, ask] = useState('');
    const [all, show_all] = useState(false);
    // Read anew where the list of those away was: not with every letter.
    const others = useMemo(all_others, [away.value, current.value]);
    const long = others.length >= many;
    const list = long ? others : away.value;
    if (list.length === 0 || facing.value) return null;
    const words = words_in(asked);
    const found = list.filter((one) => all_begin(words, words_in(one.name)));
    const shown = all || words.length > 0 ? found : found.slice(0, many);
    return (
        <section>
            <h3>{say.buyers.kept}</h3>
            {long && (
                <input
                    type="search"
                    class="find-buyer"
                    aria-label={say.buyers.find}
                    placeholder={say.buyers.find}
                    autocomplete="off"
                    spellcheck={false}
                    value={asked}
                    onInput={(event) => ask(event.currentTarget.value)}
                />
            )}
            {long && words.length > 0 && (
                <p class="facts" role="status">
                    {say.buyers.found({count: found.length})}
                </p>
            )}
            <ul class="choices">
                {shown.map((one) => (
                    <KeptRow key={one.key} one={one} done={done} />
                ))}
            </ul>
            {shown.length < found.length && (
                <button type="button" class="step show-all" onClick={() => show_all(true)}>
                    {say.buyers.show_all({count: found.length})}
                </button>
            )}
        </section>
    );
}

type Book = Cases['price_books'][number];

function Examples({book, remarks, done}: {book: Book; remarks: boolean; done: () => void}) {
    if (book.inquiries.length === 0) return null;
    return (
        <section>
            <h3>
                <Name of={book.community} />
            </h3>
            <ul class="choices">
                {book.inquiries.map((one) => (
                    <li key={one.id}>
                        <button
                            class="row-button"
                            onClick={() => {
                                open(one.inquiry);
                                done();
                            }}
                        >
                            <span>{brief(one.buyer || one.id)}</span>
                            {remarks && <span class="faint">{one.inquiry.comment ?? one.id}</span>}
                        </button>
                    </li>
                ))}
            </ul>
        </section>
    );
}

/// What is remarked of somebody is said in a dialog, and not where anybody looks first.
/// `begins`: the bare home of a new buyer, who is asked about then.
export function Openings({
    done,
    remarks,
    begins,
    begin,
}: {
    done: () => void;
    remarks: boolean;
    begins: Inquiry | null;
    begin: (first: Inquiry | null) => void;
}) {
    if (begins) return <NewBuyer first={begins} done={done} back={() => begin(null)} />;
    const books = known.value?.price_books ?? [];
    return (
        <div class="openings">
            <ul class="choices">
                {books.map(
                    (book) =>
                        book.first && (
                            <li key={book.id}>
                                <button class="row-button begin" onClick={() => begin(book.first)}>
                                    <span>{say.buyers.new_one}</span>
                                    <span class="faint">
                                        {books.length > 1 && `${brief(book.community)}. `}
                                        {book.first.comment}
                                    </span>
                                </button>
                            </li>
                        ),
                )}
            </ul>
            <Names done={done} />
            {books.map((book) => (
                <Examples key={book.id} book={book} remarks={remarks} done={done} />
            ))}
            <FileButton done={done} />
        </div>
    );
}

function FileButton({done}: {done: () => void}) {
    return (
        <label class="file-button">
            {say.buyers.open_file}
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
