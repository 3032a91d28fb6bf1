// What stands beside the sheet at the desk: it may be printed, or sent home.
import {say} from '../language';
import {send_home} from '../parts/send_home';

export function SheetTools() {
    return (
        <button class="step" aria-haspopup="dialog" onClick={send_home}>
            {say.send_home.open}
        </button>
    );
}
