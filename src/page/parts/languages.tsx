// The choice of the language.
import {language, languages, own_name, say} from '../language';
import {speak} from '../state/speaking';

/// Each by its own name: whoever cannot read the page finds theirs.
export function Languages() {
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
