// Told in English so far.
export {schedule} from '../english/schedule';
