// What a browser keeps of a buyer and of a window, as it is told.
import type {View} from './place';

/// What was last seen of a buyer: the names by which a price book may no longer call things, and
/// what the home came to.
export interface Seen {
    community: string;
    plan?: string; ///< its name
    as_of: string;
    price: string;
    month: string | null;
    closing: string | null;
    scenario: string;
    names: Record<string, string>;
}

/// What a window has open. It holds for the window, and for the day: on a desk where others sit
/// down, nobody finds another's figures.
export interface Sitting {
    keys: string[];
    current: string;
    view: View;
    facing?: boolean; ///< the buyer looks on
    day: string;
}

/// A buyer that is kept, as far as a list of names tells it.
export interface Kept {
    key: string;
    name: string;
    price_book: string;
    community: string; ///< of the price book, as it was last seen
    plan: string; ///< its name, as it was last seen
    lot: string;
    at: number; ///< when something was last done with it, in milliseconds
}
