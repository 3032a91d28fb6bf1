// Told in English so far.
export {later} from '../english/later';
