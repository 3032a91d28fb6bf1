// Told in English so far.
export {buyers} from '../english/buyers';
