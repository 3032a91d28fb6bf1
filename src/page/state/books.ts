// The price books that the program has, and what is named in the one in hand.
import {computed} from '@preact/signals';

import {say} from '../language';
import {shown_name} from '../loan_names';

import {buyer, known} from './signals';

/// One of the loans of the buyer in hand, as its name is shown.
export function loan_name(name: string): string {
    const written = buyer.value?.inquiry.scenarios?.find((one: any) => one.name === name);
    return written ? shown_name(name, written) : name;
}

/// The price book that an inquiry file means: by its id, or by the end of its path.
export function book_of(path: string): string | null {
    const books = known.value?.price_books ?? [];
    const plain = path.replace(/^(\.\.?\/)+/, '');
    const found =
        books.find((book) => book.id === path) ??
        books.find((book) => book.id === plain || book.id.endsWith(`/${plain}`));
    return found?.id ?? null;
}

const book_in_hand = computed(() => buyer.value?.inquiry.price_book);

const picture_addresses = computed(() => {
    const books = known.value?.price_books ?? [];
    const book = books.find((one) => one.id === book_in_hand.value);
    return new Map(book?.pictures.map((one) => [one.file, one.address]));
});

/// Where the picture of that name in the buyer's price book is; null where there is none.
export function picture_address(file: string): string | null {
    return picture_addresses.value.get(file) ?? null;
}

export function books_here(): string {
    return (
        (known.value?.price_books ?? []).map((one) => one.community).join(', ') ||
        say.buyers.no_books
    );
}
