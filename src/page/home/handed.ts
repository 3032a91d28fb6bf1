// What the opener hands over: what was packed into the file, and a worker that has begun already.

/// Days are written as answers write them; an empty one has no end.
export interface Facts {
    hash: string; ///< of what was packed: the name under which changes are kept
    language: string; ///< of the sheet
    as_of: string; ///< the day of every figure
    rates_end: string; ///< the last day of the rates
    book_end: string; ///< and of the prices
    hand: string; ///< name of the loan that the sheet has in front
}

/// A file of the desk: its text, or bytes in letters.
export type Packed = string | {letters: string; size: number};

/// What a worker begins with.
export interface Beginning {
    wasm: ArrayBuffer;
    files: Record<string, Packed>;
    today: string;
    language: string;
}

export interface Handed {
    facts: Facts;
    files: Record<string, Packed>;
    sheet: string; ///< the document of the engine, of what was sent, under its first loan
    parts: Record<string, ArrayBuffer>; ///< of the program, by their names
    state: Record<string, unknown> | null; ///< what was changed in a copy
    state_id: string; ///< of a copy: others than the first keep their changes apart
    language: string; ///< of the document
    worker: Worker;
    begin: () => Worker; ///< another one
    touched: () => [string, number] | null; ///< what was touched meanwhile: class and place
    parts_text: string; ///< as they stand in the document, for a copy of it
    home_text: string;
    opener_text: string;
}

declare global {
    interface Window {
        quoin_handed?: Handed;
    }
}

export const handed: Handed = window.quoin_handed!;
