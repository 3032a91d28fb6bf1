// Told in English so far.
export {loans} from '../english/loans';
