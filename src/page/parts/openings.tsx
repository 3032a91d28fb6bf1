// Whom to open: somebody this browser kept, a new buyer, an example, a file.
import {say} from '../language';
import {away, book_of, books_here, facing, known, notice, open, open_new, take_up} from '../store';
import {Name} from './name';
import {brief} from '../figures';

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
    const book = book_of(String(inquiry.price_book ?? ''));
    if (!book) {
        notice.value = say.buyers.file_no_book({file: file.name, books: books_here()});
        return;
    }
    open({...inquiry, price_book: book});
}

/// Names alone: nobody's figures are on the screen before they are asked for.
function Names({done}: {done: () => void}) {
    if (away.value.length === 0 || facing.value) return null;
    return (
        <section>
            <h3>{say.buyers.kept}</h3>
            <ul class="choices">
                {away.value.map((one) => {
                    const here = book_of(one.price_book) !== null;
                    return (
                        <li key={one.key}>
                            <button
                                class="row-button kept-name"
                                disabled={!here}
                                title={one.name}
                                onClick={() => {
                                    take_up(one.key);
                                    done();
                                }}
                            >
                                <span class="cut">{brief(one.name)}</span>
                                {!here && <span class="faint">{say.buyers.kept_no_book(one)}</span>}
                            </button>
                        </li>
                    );
                })}
            </ul>
        </section>
    );
}

/// What is remarked of somebody is said in a dialog, and not where anybody looks first.
export function Openings({done, remarks}: {done: () => void; remarks: boolean}) {
    return (
        <>
            <Names done={done} />
            {known.value?.price_books.map((book) => (
                <section key={book.id}>
                    <h3>
                        <Name of={book.community} />
                    </h3>
                    <ul class="choices">
                        {book.first && (
                            <li>
                                <button
                                    class="row-button"
                                    onClick={() => {
                                        open_new(book.first!);
                                        done();
                                    }}
                                >
                                    <span>{say.buyers.new_one}</span>
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
                                    <span>{brief(one.buyer || one.id)}</span>
                                    {remarks && (
                                        <span class="faint">{one.inquiry.comment ?? one.id}</span>
                                    )}
                                </button>
                            </li>
                        ))}
                    </ul>
                </section>
            ))}
            <FileButton done={done} />
        </>
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
