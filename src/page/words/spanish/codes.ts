// Told in English so far.
export {codes} from '../english/codes';
