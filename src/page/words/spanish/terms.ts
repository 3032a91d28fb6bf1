// Told in English so far.
export {terms} from '../english/terms';
