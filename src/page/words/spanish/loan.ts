// Told in English so far.
export {loan} from '../english/loan';
