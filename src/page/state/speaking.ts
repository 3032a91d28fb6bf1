// Another language in hand.
import {batch} from '@preact/signals';

import {cases} from '../engine';
import {language} from '../language';
import type {Language} from '../words/catalogue';

import {failed, refresh} from './asking';
import {change, known, notice} from './signals';

/// The page in another language. What the engine said is asked anew; what was said of the last touch
/// stands in the language of before, and goes.
export function speak(next: Language): void {
    if (language.value === next) return;
    batch(() => {
        language.value = next;
        change.value = null;
        notice.value = '';
    });
    if (!known.value) return;
    void cases().then((heard) => {
        if (language.value === next) known.value = heard;
    }, failed);
    void refresh();
}
