// While there is no home on the screen at home: why there is none.
import {say} from '../language';
import {Languages} from '../parts/languages';
import {Messages} from '../parts/messages';
import {gone, problems} from '../state/signals';

export function Nobody() {
    if (!gone.value && problems.value.length === 0) return <p>{say.frame.opening}</p>;
    return (
        <main class="alone">
            <Languages />
            <Messages />
        </main>
    );
}
