// What a part of the page is drawn from, kept the same object while it says the same.
import {useRef} from 'preact/hooks';

import {shared} from '../shared';

export function use_shared<T>(value: T): T {
    const before = useRef<T>(value);
    before.current = shared(before.current, value);
    return before.current;
}
