// Told in English so far.
export {check} from '../english/check';
