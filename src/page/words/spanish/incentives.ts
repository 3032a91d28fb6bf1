// Told in English so far.
export {incentives} from '../english/incentives';
